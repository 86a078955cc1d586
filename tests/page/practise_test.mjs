// SPDX-License-Identifier: MIT
// The microphone, fed with sounds of known resonances: what is shown agrees with `measure`; sung notes are refused.
import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { done, native, scratch, step, with_browser, with_page } from "./browser.mjs";

const fed_with = (file) => ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", `--use-file-for-fake-audio-capture=${join(scratch, file)}`];

/** Baritone, average; the vowel to practise chosen; the microphone on. */
async function practising(page, vowel) {
    await step(page, "singer");
    await page.selectOption("#voice", "baritone");
    await page.click("#use-average");
    await done(page);
    await step(page, "practise");
    await page.selectOption("#aim", { label: `/${vowel}/` });
    await done(page);
    await page.uncheck("#go-on");
    await page.click("#listen");
    await page.waitForSelector("#unlisten:not([hidden])");
}
/** A second of a quiet room before and after: as recordings are made. (16 bits, one channel.) */
function in_a_room(file) {
    const bytes = readFileSync(join(scratch, file)), data = bytes.indexOf("data") + 8, rate = bytes.readUInt32LE(24);
    const room = Buffer.alloc(2 * rate);
    for (let i = 0; i < rate; ++i) room.writeInt16LE(((i * 7919) % 13) - 6, 2 * i);
    const sound = Buffer.concat([room, bytes.subarray(data), room]);
    const head = Buffer.from(bytes.subarray(0, data));
    head.writeUInt32LE(data - 8 + sound.length, 4);
    head.writeUInt32LE(sound.length, data - 4);
    writeFileSync(join(scratch, file), Buffer.concat([head, sound]));
}
const hertz = (text) => Number(text.match(/\((\d+) Hz\)/)?.[1]);

for (const vowel of ["a", "e"])
    test(`a whispered /${vowel}/ is read as measure reads it, and is a hit`, async () => {
        const file = `whisper_${vowel}.wav`;
        native(["hear", "--singer", "baritone", "--vowel", vowel, "--only", "whisper", "--seconds", "4", "-o", file]);
        in_a_room(file);
        const [measured] = JSON.parse(native(["measure", file, "--vowels", vowel, "--voice", "baritone", "--as", "json"])).vowels;
        await with_browser((browser) => with_page(browser, async (page) => {
            await practising(page, vowel);
            const low = [], high = [];
            for (let i = 0; i < 40; ++i) {
                await page.waitForTimeout(150);
                const now = [await page.textContent("#low-now"), await page.textContent("#high-now")].map(hertz);
                if (now.every(Number.isFinite)) [low, high].forEach((all, k) => all.push(now[k]));
            }
            assert.ok(low.length > 10, `${low.length} readings`);
            const middle = (all) => all.sort((a, b) => a - b)[all.length >> 1];
            console.log(`/${vowel}/ measure fR1 ${measured.tract.fR1_hz} fR2 ${measured.tract.fR2_hz}, page ${middle(low)} and ${middle(high)}`);
            assert.ok(Math.abs(middle(low) - measured.tract.fR1_hz) < 0.06 * measured.tract.fR1_hz, `fR1 ${middle(low)}, measure ${measured.tract.fR1_hz}`);
            assert.ok(Math.abs(middle(high) - measured.tract.fR2_hz) < 0.05 * measured.tract.fR2_hz, `fR2 ${middle(high)}, measure ${measured.tract.fR2_hz}`);
            assert.ok(await page.locator("#hits li").count() > 0, "held near the aim, it is a hit");
            const { ms, pictures } = await page.evaluate(() => window.latency);
            console.log(`latency ${ms.toFixed(0)} ms, ${pictures} pictures`);
            assert.ok(pictures > 60);
        }), fed_with(file));
    });

test("a sung note above 200 Hz is refused with the reason", async () => {
    writeFileSync(join(scratch, "c4.yaml"), "vowelway: 1\npassage: One note\nnotes:\n  - {pitch: C4, duration: 4 s, vowel: a}\n");
    native(["hear", "c4.yaml", "--singer", "baritone", "--measure", "1", "--only", "kept", "--seconds", "4", "--vibrato", "0", "-o", "c4.wav"]);
    await with_browser((browser) => with_page(browser, async (page) => {
        await practising(page, "a");
        await page.waitForFunction(() => /above 200 Hz/.test(document.getElementById("said").textContent));
        assert.match(await page.textContent("#said"), /sung at 26\d Hz/);
    }), fed_with("c4.wav"));
});

test("a take is measured as the program measures the same sound", async () => {
    native(["hear", "--singer", "baritone", "--vowel", "o", "--only", "whisper", "--seconds", "2", "-o", "take.wav"]);
    const [measured] = JSON.parse(native(["measure", "take.wav", "--vowels", "o", "--voice", "baritone", "--as", "json"])).vowels;
    await with_browser((browser) => with_page(browser, async (page) => {
        await practising(page, "o");
        await page.fill("#take-vowels", "o");
        await page.click("#record");
        await page.waitForTimeout(5000);
        await page.click("#recorded");
        await page.waitForFunction(() => window.last_take || document.querySelector("#trouble .error"));
        const { vowels: [taken] } = await page.evaluate(() => window.last_take);
        assert.ok(Math.abs(taken.tract.fR1_hz - measured.tract.fR1_hz) < 25, `${taken.tract.fR1_hz} ${measured.tract.fR1_hz}`);
        assert.ok(Math.abs(taken.tract.fR2_hz - measured.tract.fR2_hz) < 40, `${taken.tract.fR2_hz} ${measured.tract.fR2_hz}`);
    }), fed_with("take.wav"));
});

test("without a microphone the page says so", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "practise");
    await page.click("#listen");
    await page.waitForSelector("#trouble .error");
    assert.match(await page.textContent("#trouble"), /microphone/);
})));
