// SPDX-License-Identifier: MIT
// Sounds for the microphone of the tests. (WAV of the program: 16 bits, one channel.)
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { native, scratch } from "./browser.mjs";

/** Chromium's options for a microphone that plays this file over and over. */
export const fed_with = (file) => ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", `--use-file-for-fake-audio-capture=${join(scratch, file)}`];

const parts = (bytes) => ({ data: bytes.indexOf("data") + 8, rate: bytes.readUInt32LE(24) });

/** A quiet room. */
function room(samples) {
    const out = Buffer.alloc(2 * samples);
    for (let i = 0; i < samples; ++i) out.writeInt16LE(((i * 7919) % 13) - 6, 2 * i);
    return out;
}
function write(file, like, sound) {
    const { data } = parts(like);
    const head = Buffer.from(like.subarray(0, data));
    head.writeUInt32LE(data - 8 + sound.length, 4);
    head.writeUInt32LE(sound.length, data - 4);
    writeFileSync(join(scratch, file), Buffer.concat([head, sound]));
}
/** A second of the room before and after: as recordings are made. */
export function in_a_room(file) {
    const bytes = readFileSync(join(scratch, file)), { data, rate } = parts(bytes);
    write(file, bytes, Buffer.concat([room(rate), bytes.subarray(data), room(rate)]));
}
/** The vowels whispered by the program's model of a voice, a second of the room before, between and after. */
export function whispered(file, voice, vowels, seconds) {
    let bytes = null;
    const sounds = vowels.flatMap((vowel) => {
        native(["hear", "--singer", voice, "--vowel", vowel, "--only", "whisper", "--seconds", String(seconds), "-o", "one.wav", "--overwrite"]);
        bytes = readFileSync(join(scratch, "one.wav"));
        return [room(parts(bytes).rate), bytes.subarray(parts(bytes).data)];
    });
    write(file, bytes, Buffer.concat([...sounds, room(parts(bytes).rate)]));
}
