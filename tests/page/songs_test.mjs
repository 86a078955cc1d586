// SPDX-License-Identifier: MIT
// Twenty songs: the plan in the page is the native program's, byte for byte.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { done, native, open_song, root, saved, scratch, step, with_browser, with_page } from "./browser.mjs";

const folder = (name) => readdirSync(join(root, name)).filter((file) => /\.(mxl|xml|musicxml)$/.test(file)).sort().map((file) => join(root, name, file));
const songs = [join(root, "charts/demo/giusto_amor.mxl"), ...folder("tests/data/scores/lieder"),
               ...folder("tests/data/scores/suite").filter((file) => /\/61|\/46|\/42|\/24|\/21|\/12|\/01/.test(file))].slice(0, 24);
const voices = ["soprano", "tenor", "mezzo", "baritone"], techniques = ["classical", "belt", "choral"];

test("the plans of twenty songs", { timeout: 600000 }, () => with_browser((browser) => with_page(browser, async (page) => {
    let equal = 0;
    for (const [i, song] of songs.entries()) {
        const voice = voices[i % voices.length], technique = techniques[i % techniques.length];
        await step(page, "singer");
        await page.selectOption("#voice", voice);
        await page.click("#use-average");
        await done(page);
        await open_song(page, song);
        if (await page.locator("#trouble .error").count()) continue; // a score without words; the native program refuses it too
        await page.selectOption("#technique", technique);
        await done(page);
        // Words that only the synthesiser knows are told, here and to the native program.
        const args = ["plan", song, "--singer", voice, "--technique", technique, "--as", "json"];
        if (await page.locator("#unknown:not([hidden])").count()) {
            for (const box of await page.locator("#unknown-rows input").all()) {
                const word = await box.getAttribute("data-word");
                await box.fill(spawnSync(process.env.VOWELWAY_PRONOUNCE, [await box.getAttribute("data-language"), word], { encoding: "utf8" }).stdout.trim());
            }
            await page.click("#use-words");
            await page.waitForSelector("#unknown", { state: "hidden" });
            await done(page);
        }
        const words = await page.evaluate(() => JSON.parse(localStorage.getItem("vowelway")).words);
        if (Object.keys(words).length) {
            writeFileSync(join(scratch, "told.yaml"), "vowelway: 1\nwords:\n" + Object.entries(words).map(([word, ipa]) => `  ${JSON.stringify(word)}: ${JSON.stringify(ipa)}\n`).join(""));
            args.push("--words", "told.yaml");
        }
        await step(page, "plan");
        assert.equal((await saved(page, "#save-json")).text, native(args), song);
        ++equal;
    }
    assert.ok(equal >= 20, `${equal} songs`);
})));
