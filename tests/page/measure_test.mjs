// SPDX-License-Identifier: MIT
// Measuring one's own voice: vowel by vowel into the microphone, or from a recording; what the profile then holds is what
// `measure` finds in the same sound.
import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { fed_with, in_a_room, whispered } from "./sounds.mjs";
import { done, native, saved, scratch, step, with_browser, with_page } from "./browser.mjs";

const measured = (file, vowels) => JSON.parse(native(["measure", file, "--vowels", vowels, "--voice", "baritone", "--as", "json"])).vowels;
async function open_measuring(page) {
    await step(page, "singer");
    await page.selectOption("#voice", "baritone");
    await page.click("#use-average");
    await done(page);
    await page.click("#d-take summary");
}
/** The profile saved from the page, read by the program. */
async function profile_of(page) {
    const { text } = await saved(page, "#save-profile");
    writeFileSync(join(scratch, "mine.yaml"), text);
    return JSON.parse(native(["profile", "show", "mine.yaml", "--as", "json"]));
}
const value = (profile, vowel, k) => profile.vowels.find(({ ipa }) => ipa === vowel).resonances.find(({ number }) => number === k).hz;

test("a guided take: each vowel has its light, and the profile what measure finds", { timeout: 600000 }, async () => {
    native(["hear", "--singer", "baritone", "--vowel", "a", "--only", "whisper", "--seconds", "1.5", "-o", "guided.wav"]);
    in_a_room("guided.wav");
    const [found] = measured("guided.wav", "a");
    await with_browser((browser) => with_page(browser, async (page) => {
        await open_measuring(page);
        await page.fill("#take-vowels", "a");
        await page.selectOption("#take-rounds", "2");
        await page.evaluate(() => {
            window.lights = new Set();
            new MutationObserver(() => document.querySelectorAll("#take-lights li").forEach((li) => window.lights.add(li.className)))
                .observe(document.getElementById("take-lights"), { subtree: true, childList: true, attributes: true });
        });
        await page.click("#take-start");
        await page.waitForFunction(() => document.getElementById("take-now").textContent === "/a/ now");
        await page.waitForFunction(() => document.getElementById("take-done").textContent, null, { timeout: 300000 });
        const lights = await page.evaluate(() => [...window.lights]);
        for (const kind of ["waits", "heard", "steady", "good"]) assert.ok(lights.includes(`light ${kind}`), `${kind} in ${lights}`);
        assert.match(await page.textContent("#who"), /My voice/);
        const profile = await profile_of(page);
        console.log(`guided: fR1 ${value(profile, "a", 1)} (measure ${found.tract.fR1_hz}), fR2 ${value(profile, "a", 2)} (${found.tract.fR2_hz})`);
        assert.ok(Math.abs(value(profile, "a", 1) - found.tract.fR1_hz) < 15);
        assert.ok(Math.abs(value(profile, "a", 2) - found.tract.fR2_hz) < 25);
    }), fed_with("guided.wav"));
});

test("a sound that shows no resonance is asked for again", { timeout: 300000 }, async () => {
    writeFileSync(join(scratch, "c5.yaml"), "vowelway: 1\npassage: One note\nnotes:\n  - {pitch: C5, duration: 2 s, vowel: a}\n");
    native(["hear", "c5.yaml", "--singer", "baritone", "--measure", "1", "--only", "kept", "--seconds", "1.5", "--vibrato", "0", "-o", "sung.wav"]);
    in_a_room("sung.wav");
    await with_browser((browser) => with_page(browser, async (page) => {
        await open_measuring(page);
        await page.fill("#take-vowels", "a");
        await page.click("#take-start");
        await page.waitForFunction(() => /again, please/.test(document.getElementById("take-lights").textContent));
        assert.match(await page.textContent("#take-lights"), /sung at 5\d\d Hz/);
        await page.click("#take-stop");
        assert.match(await page.textContent("#who"), /baritone/i, "the singer stays who it was");
    }), fed_with("sung.wav"));
});

test("a recording goes into the profile as measure reads it, twice into its history", () => {
    whispered("list.wav", "baritone", ["i", "e", "a"], 1.5);
    const found = measured("list.wav", "i e a");
    return with_browser((browser) => with_page(browser, async (page) => {
        await open_measuring(page);
        await page.fill("#take-vowels", "i e a");
        for (const times of [1, 2]) {
            await page.setInputFiles("#open-recording", join(scratch, "list.wav"));
            await page.waitForFunction(() => document.getElementById("take-done").textContent || document.querySelector("#trouble .error"));
            await done(page);
            assert.equal(await page.locator("#trouble .error").count(), 0, await page.textContent("#trouble"));
            const profile = await profile_of(page);
            // The browser's own filter brings the sound to the rate of measuring: a few hertz.
            const pairs = found.flatMap(({ vowel, tract }) => [1, 2].map((k) => [`/${vowel}/ fR${k}`, value(profile, vowel, k), tract[`fR${k}_hz`], tract[`fR${k}_sd_hz`]]));
            console.log(pairs.map(([what, ours, theirs]) => `${what} ${ours} (measure ${theirs})`).join(", "));
            for (const [what, ours, theirs, sd] of pairs) assert.ok(Math.abs(ours - theirs) < Math.max(3, sd / 4), `${what}: ${ours}, ${theirs} ± ${sd}`);
            const { history } = JSON.parse(native(["profile", "history", "mine.yaml", "--as", "json"]));
            assert.equal(history.length, 3 * times);
            await page.evaluate(() => { document.getElementById("take-done").textContent = ""; });
        }
        // What is no sound is said.
        writeFileSync(join(scratch, "no_sound.wav"), "words");
        await page.setInputFiles("#open-recording", join(scratch, "no_sound.wav"));
        await page.waitForSelector("#trouble .error");
        assert.match(await page.textContent("#trouble"), /no_sound\.wav/);
    }));
});
