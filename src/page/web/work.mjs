// SPDX-License-Identifier: MIT
// The worker: the module lives here, so that the page never waits for it. {id, name, request, bytes} in,
// {id, answer} out; the first message brings the module and the fonts. Where it listens, {live} comes unasked.
import { open_door } from "vowelway-door";
import { measured_text } from "./measured_text.mjs";

let door = null;
const said = new Map(); // "it amor" -> its IPA as the synthesiser writes it
let take = null;    // while a take is recorded: its blocks
let kept = [];      // the good takes of a guided measurement

const pronounce = (word, language) => said.get(`${language} ${word}`);

function joined(blocks) {
    const out = new Float32Array(blocks.reduce((sum, block) => sum + block.length, 0));
    blocks.reduce((at, block) => (out.set(block, at), at + block.length), 0);
    return out;
}

const does = {
    async begin({ wasm, fonts, tongue }) {
        for (const { family, bytes, weight, style } of fonts) {
            const face = new FontFace(family, bytes, { weight, style });
            self.fonts.add(await face.load());
        }
        door = await open_door(wasm, { measure_text: measured_text(), pronounce });
        return door.ask({ ask: "say", language: tongue });
    },
    /** What a synthesiser says of words. */
    said(words) {
        for (const [key, ipa] of Object.entries(words)) said.set(key, ipa);
        return { text: "" };
    },
    /** What the synthesiser says of words, each by itself: an empty line between two keeps them apart. */
    async say({ folder, words }) {
        const { default: espeak } = await import(new URL("espeak-ng.js", folder).href);
        const out = {}, voices = { no: "nb", pt: "pt-br", "en-US": "en-us" };
        for (const language of new Set(words.map((one) => one.language))) {
            const list = words.filter((one) => one.language === language).map((one) => one.word);
            const spoken = list.map((word) => word.replace(/[^\p{L}\d']/gu, "") || "-");
            const run = await espeak({
                arguments: ["--phonout", "said", "-q", "--ipa", "-v", voices[language] ?? language, spoken.join("\n\n")],
                locateFile: (name) => new URL(name, folder).href, print() {}, printErr() {},
            });
            const lines = run.FS.readFile("said", { encoding: "utf8" }).trim().split("\n");
            if (lines.length !== list.length) throw new Error("the synthesiser said more or less than it was asked");
            list.forEach((word, i) => { out[`${language} ${word}`] = lines[i].trim(); });
        }
        return { text: JSON.stringify(out) };
    },
    /** Samples arrive at this port from now on. Where the machine is slow, what has waited is read in one go. */
    listen({ port }) {
        let waiting = [];
        const read = () => {
            const samples = joined(waiting.map((one) => one.samples)), { at } = waiting.at(-1);
            waiting = [];
            take?.push(samples);
            self.postMessage({ live: { ...door.live(samples), at } });
        };
        port.onmessage = ({ data }) => {
            if (waiting.push(data) === 1) setTimeout(read);
        };
        return { text: "" };
    },
    /** The sheet, its bands apart and as bytes: the page reads each when it draws it. */
    sheet(request, bytes) {
        const { text, error } = door.ask({ ...request, ask: "sheet" }, bytes);
        if (error) return { error };
        const { bands, ...sheet } = JSON.parse(text), utf8 = new TextEncoder();
        return { sheet: { ...sheet, bands: bands.map((band) => ({ ...band, svg: utf8.encode(band.svg) })) } };
    },
    /** A take begins; `fresh`: those kept before are forgotten. */
    take({ fresh }) {
        if (fresh) kept = [];
        take = [];
        return { text: "" };
    },
    /** Its end: it is measured, and kept if it is good for a number. */
    taken(request) {
        const samples = joined(take ?? []);
        take = null;
        const answer = door.measure(request, samples);
        if (answer.text && JSON.parse(answer.text).takes.every(({ refused }) => !refused)) kept.push(samples);
        return answer;
    },
    /** All good takes as one recording. */
    measure_kept: (request) => door.measure(request, joined(kept)),
};

self.onmessage = async ({ data: { id, name, request, bytes } }) => {
    let answer;
    try {
        answer = await (does[name] ?? door[name])(request, bytes);
    } catch (error) { // a fault of ours: told like any other answer
        answer = { error: { wrong: String(error?.message ?? error), remedy: "", outcome: 1, context: [] } };
    }
    const handed = [answer.samples, ...(answer.sheet?.bands ?? []).map(({ svg }) => svg)].filter(Boolean);
    self.postMessage({ id, answer }, handed.map(({ buffer }) => buffer));
};
