// SPDX-License-Identifier: MIT
// The microphone, fed with sounds of known resonances: what is shown agrees with `measure`; sung notes are refused.
import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { fed_with, in_a_room } from "./sounds.mjs";
import { done, native, scratch, step, with_browser, with_page } from "./browser.mjs";

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
const hertz = (text) => Number(text.match(/\((\d+) Hz\)/)?.[1]);

for (const vowel of ["a", "e"])
    test(`a whispered /${vowel}/ is read as measure reads it, and is a hit`, async () => {
        const file = `whisper_${vowel}.wav`;
        native(["hear", "--singer", "baritone", "--vowel", vowel, "--only", "whisper", "--seconds", "4", "-o", file]);
        in_a_room(file);
        const [measured] = JSON.parse(native(["measure", file, "--vowels", vowel, "--voice", "baritone", "--as", "json"])).vowels;
        await with_browser((browser) => with_page(browser, async (page) => {
            await practising(page, vowel);
            // What is read on the screen, each time it is written anew.
            await page.evaluate(() => {
                window.readings = [];
                const [low, high] = ["low-now", "high-now"].map((id) => document.getElementById(id));
                new MutationObserver(() => window.readings.push([low.textContent, high.textContent])).observe(high, { childList: true, characterData: true, subtree: true });
            });
            await page.waitForFunction(() => window.readings.length >= 15 && /there/.test(document.getElementById("hits").textContent) && /there/.test(document.getElementById("consistency").textContent));
            const readings = (await page.evaluate(() => window.readings)).map((both) => both.map(hertz)).filter((both) => both.every(Number.isFinite));
            assert.ok(readings.length > 8, `${readings.length} readings`);
            const [low, high] = [0, 1].map((k) => readings.map((both) => both[k]));
            const middle = (all) => all.sort((a, b) => a - b)[all.length >> 1];
            console.log(`/${vowel}/ measure fR1 ${measured.tract.fR1_hz} fR2 ${measured.tract.fR2_hz}, page ${middle(low)} and ${middle(high)}`);
            assert.ok(Math.abs(middle(low) - measured.tract.fR1_hz) < 0.06 * measured.tract.fR1_hz, `fR1 ${middle(low)}, measure ${measured.tract.fR1_hz}`);
            assert.ok(Math.abs(middle(high) - measured.tract.fR2_hz) < 0.05 * measured.tract.fR2_hz, `fR2 ${middle(high)}, measure ${measured.tract.fR2_hz}`);
            assert.match(await page.textContent("#hits"), /there: fR1/, "held near the aim, it is a hit");
            assert.match(await page.textContent("#consistency"), /there; fR1/);
            const { ms, pictures } = await page.evaluate(() => window.latency);
            console.log(`latency ${ms.toFixed(0)} ms, ${pictures} pictures`);
            assert.ok(pictures > 0);
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

test("today stands against the seven days before", () => with_browser((browser) => with_page(browser, async (page) => {
    const day = (back) => new Date(Date.now() - back * 864e5).toLocaleDateString("sv");
    const one = (back, low, high, hit) => ({ date: day(back), singer: "Average mezzo", aim: "/a/", hit, fR1_off_cents: low, fR2_off_cents: high });
    const kept = [one(20, 900, 900, false), one(3, 100, -50, false), one(2, 200, 50, false), one(0, 10, 0, true), one(0, 30, 40, true), one(0, -10, 20, false)];
    await page.evaluate((all) => localStorage.setItem("vowelway-practice", JSON.stringify(all)), kept);
    await step(page, "practise");
    await page.waitForSelector("#consistency tbody tr");
    const cells = await page.locator("#consistency tbody tr").first().locator("th, td").allTextContents();
    // By hand: means 10 and 20, deviations 20 and 20 of three; 150 and 0, 70.7 and 70.7 of two; the twentieth day back is too old.
    assert.deepEqual(cells, ["/a/", "3 times, 2 there; fR1 10 ± 20 c, fR2 20 ± 20 c", "2 times, 0 there; fR1 150 ± 71 c, fR2 0 ± 71 c"]);
})));

test("without a microphone the page says so", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "practise");
    await page.click("#listen");
    await page.waitForSelector("#trouble .error");
    assert.match(await page.textContent("#trouble"), /microphone/);
})));
