// SPDX-License-Identifier: MIT
// Twenty songs: the plan in the page is the native program's, byte for byte. The words go along in a lesson; of two songs
// they are told by hand. Without draws: that these are equal too, the tests of one song and of a lesson hold.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { readdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { done, native, open_song, page_folder, root, saved, scratch, step, with_browser, with_page } from "./browser.mjs";

const folder = (name) => readdirSync(join(root, name)).filter((file) => /\.(mxl|xml|musicxml)$/.test(file)).sort().map((file) => join(root, name, file));
const songs = [join(root, "charts/demo/giusto_amor.mxl"), ...folder("tests/data/scores/lieder"), ...folder("tests/data/scores/suite").filter((file) => /\/(33i|42a|61)/.test(file)), join(root, "tests/data/profiles/rising_fifth.yaml")];
const voices = ["soprano", "tenor", "mezzo", "baritone"], techniques = ["classical", "belt", "choral"];

test("the plans of twenty songs", { timeout: 600000 }, () => with_browser(async (browser) => {
    const equal = [];
    for (const [i, song] of songs.entries()) {
        const how = [song, "--singer", voices[i % voices.length], "--technique", techniques[i % techniques.length], "--draws", "0"];
        native(["page", ...how, "--page", page_folder, "-o", "song.html"]);
        await with_page(browser, async (page) => {
            // The plan alone, without its sheet: drawing is tried elsewhere.
            const press = () => page.evaluate(() => document.getElementById("save-json").click());
            assert.equal((await saved(page, "", press)).text, native(["plan", ...how, "--as", "json"]), song);
        }, { url: `${pathToFileURL(join(scratch, "song.html")).href}#song` });
        equal.push(basename(song));
    }
    console.log(equal.join(" "));
    assert.ok(equal.length >= 20, `${equal.length} songs`);
}));

for (const file of ["brahms_magdalena", "satie_omnibus"])
    test(`every word of ${file} is asked for as it is written, and taken as told`, () => with_browser((browser) => with_page(browser, async (page) => {
        const song = join(root, `tests/data/scores/lieder/${file}.mxl`);
        await open_song(page, song);
        const boxes = await page.locator("#unknown-rows input").evaluateAll((all) => all.map(({ dataset }) => ({ ...dataset })));
        assert.ok(boxes.length > 10, `${boxes.length} words`);
        const list = [], empty = boxes[1].word, typed = {};
        for (const [i, { word, language }] of boxes.entries()) {
            const ipa = spawnSync(process.env.VOWELWAY_PRONOUNCE, [language, word], { encoding: "utf8" }).stdout.trim();
            if (i === 1 || !ipa) continue; // left empty: guessed from its letters
            typed[word] = ipa;
            list.push(`  ${JSON.stringify(word)}: ${JSON.stringify(ipa)}\n`);
        }
        await page.locator("#unknown-rows input").evaluateAll((all, ipa) => all.forEach((box) => { box.value = ipa[box.dataset.word] ?? ""; }), typed);
        await page.click("#use-words");
        await page.waitForSelector("#unknown", { state: "hidden" });
        await done(page);
        const ours = JSON.parse((await (async () => { await step(page, "plan"); return saved(page, "#save-json"); })()).text);
        writeFileSync(join(scratch, "told.yaml"), `vowelway: 1\nwords:\n${list.join("")}`);
        const theirs = JSON.parse(native(["plan", song, "--singer", "mezzo", "--words", "told.yaml", "--as", "json"]));
        // But for the word left empty, every note has the vowel that the program gives it.
        const differ = theirs.notes.filter((note, i) => note.ipa !== ours.notes[i].ipa).map(({ syllable }) => syllable);
        assert.equal(ours.notes.length, theirs.notes.length);
        assert.ok(differ.every((syllable) => empty.includes(syllable.toLowerCase().replace(/[^\p{L}]/gu, ""))), `${differ} beside ${empty}`);
    })));
