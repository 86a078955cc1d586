// SPDX-License-Identifier: MIT
// A score as the door wants it: compressed MusicXML is unpacked here. (MusicXML 4.0, "Compressed .MXL files":
// META-INF/container.xml names the score.)
import { unzipSync } from "fflate";

const largest = 64 << 20; // bytes, as the program's own bound

export function score_of(name, bytes) {
    if (!(bytes[0] === 0x50 && bytes[1] === 0x4b)) return { file: name, bytes };
    const members = unzipSync(bytes, { filter: ({ originalSize }) => originalSize <= largest });
    const container = members["META-INF/container.xml"];
    const text = container && new TextDecoder().decode(container);
    const root = text && new DOMParser().parseFromString(text, "text/xml").querySelector("rootfile")?.getAttribute("full-path");
    const member = root && members[root];
    if (!member) throw { wrong: "is no compressed score", remedy: "choose a .mxl, .musicxml, .xml or .yaml file", file: name };
    return { file: name.replace(/\.mxl$/i, "") + ".musicxml", bytes: member };
}
