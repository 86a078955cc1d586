// SPDX-License-Identifier: MIT
// What a singer may try: a note elsewhere, a word sung otherwise, another technique, another key, heads on a staff.
import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { done, native, open_song, root, saved, scratch, step, with_browser, with_demo, with_page } from "./browser.mjs";

const song = join(root, "charts/demo/giusto_amor.mxl"), singer = join(root, "charts/demo/serafina_quill.yaml");
const passage = readFileSync(join(root, "tests/data/profiles/rising_fifth.yaml"), "utf8");
const plan_of = async (page) => JSON.parse((await saved(page, "#save-json")).text);
const with_passage = async (page) => {
    await open_song(page, join(root, "tests/data/profiles/rising_fifth.yaml"));
    await step(page, "plan");
    await page.waitForSelector("#sheet svg.spots rect");
};
/** The plan that the program makes of the passage with its second note at another pitch. */
function native_at(pitch) {
    let at = 0;
    writeFileSync(join(scratch, "moved.yaml"), passage.replace(/pitch: [^,}]+/g, (was) => (++at === 2 ? `pitch: ${pitch}` : was)));
    return JSON.parse(native(["plan", "moved.yaml", "--singer", "mezzo", "--as", "json"]));
}
const same = (ours, theirs) => assert.deepEqual(ours.notes.map((note) => note), theirs.notes.map((note) => note));

test("a note moved by buttons, by keys and by dragging has the plan of that pitch", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_passage(page);
    const before = await plan_of(page), pitch = (plan) => plan.notes[1].pitch;
    const rect = page.locator('#sheet rect[data-note="1"]').first();
    await rect.click();
    await page.click("#move-up");
    await page.click("#move-up");
    await page.waitForFunction(() => document.getElementById("moved-by")?.textContent.startsWith("2"));
    await done(page);
    assert.equal(await page.textContent("#moved-by"), "2 semitones up");
    assert.ok(await page.isDisabled("#save-marked"), "no marks for a score that does not stand like that");
    const up = await plan_of(page);
    assert.notEqual(pitch(up), pitch(before));
    same(up, native_at(pitch(up)));
    // The sheet has the head elsewhere: it was drawn anew.
    await page.click("#move-back");
    await done(page);
    same(await plan_of(page), before);
    await rect.focus();
    await page.keyboard.press("Shift+ArrowDown");
    await done(page);
    assert.equal(await page.evaluate(() => document.activeElement.dataset.note), "1", "the keys stay on the note");
    same(await plan_of(page), native_at(pitch(await plan_of(page))));
    await page.click("#move-back");
    await done(page);
    const box = await rect.boundingBox(), x = box.x + box.width / 2, y = box.y + box.height / 2;
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 1; i <= 36; ++i) await page.mouse.move(x, y - i);
    await page.mouse.up();
    await page.waitForFunction(() => document.getElementById("moved-by")?.textContent === "5 semitones up");
    await done(page);
    same(await plan_of(page), native_at(pitch(await plan_of(page))));
}, { viewport: { width: 1024, height: 1400 } })));

test("a word is corrected where it stands", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await step(page, "plan");
    const plan = await plan_of(page);
    const at = plan.notes.findIndex(({ syllable }) => syllable === "A-" || syllable === "a-" || syllable === "a‿a-");
    const note = at < 0 ? 3 : at;
    await page.locator(`#sheet rect[data-note="${note}"]`).first().click();
    await page.click("#correct-word summary");
    const label = await page.getAttribute("#word-vowels", "aria-label");
    const word = label.match(/of (.*)$/)[1];
    await page.fill("#word-vowels", "ɔ ɔ");
    await page.click('#correct-word button:has-text("Use these vowels")');
    await done(page);
    writeFileSync(join(scratch, "one.yaml"), `vowelway: 1\nwords:\n  ${JSON.stringify(word)}: "ɔ ɔ"\n`);
    assert.equal((await saved(page, "#save-json")).text, native(["plan", song, "--singer", singer, "--words", "one.yaml", "--as", "json"]));
})));

/** Seconds sung by advice, from a plan of the program. */
function seconds(plan) {
    const out = { hold: 0, migrate: 0, modify: 0 };
    for (const note of plan.notes) if (note.advice) out[note.advice] += note.duration_s;
    return out;
}
const near = (shown, found, what) => assert.ok(Math.abs(Number.parseFloat(shown) - found) < 0.11, `${what}: ${shown}, ${found}`);

test("another technique beside it: where the two plans of the program part", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await step(page, "plan");
    await page.click("#d-beside summary");
    await page.selectOption("#beside-what", "technique:belt");
    await page.click("#compare-beside");
    await page.waitForSelector("#beside-answer:not([hidden]) svg");
    const plans = ["classical", "belt"].map((technique) => JSON.parse(native(["plan", song, "--singer", singer, "--technique", technique, "--as", "json"])));
    const rows = await page.locator("#beside-times tbody tr").all();
    for (const [i, row] of rows.entries()) {
        const cells = await row.locator("td").allTextContents(), found = seconds(plans[i]);
        ["hold", "migrate", "modify"].forEach((advice, k) => near(cells[k], found[advice], advice));
    }
    const listed = new Set(await page.locator("#beside-notes button").evaluateAll((all) => all.map((one) => Number(one.dataset.note))));
    const differ = plans[0].notes.map((note, i) => [note, plans[1].notes[i], i]).filter(([a, b]) => a.advice !== b.advice).map(([, , i]) => i);
    assert.ok(differ.length > 0);
    for (const i of differ) assert.ok(listed.has(i), `note ${i} is not listed`);
    await page.locator("#beside-notes button").first().click();
    assert.ok(await page.isVisible("#note"));
})));

test("other keys: the seconds of the program's plans, and a key that is taken", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await step(page, "plan");
    await page.click("#d-keys summary");
    await page.click("#try-keys");
    await page.waitForSelector("#keys-answer:not([hidden]) tbody tr");
    for (const by of [-3, 2]) {
        const found = seconds(JSON.parse(native(["plan", song, "--singer", singer, "--transpose", String(by), "--as", "json"])));
        const cells = await page.locator(`#keys-table tr:has(button[data-transpose="${by}"]) td`).allTextContents();
        ["hold", "migrate", "modify"].forEach((advice, k) => near(cells[k + 1], found[advice], `${by}: ${advice}`));
    }
    await page.click('#keys-table button[data-transpose="-3"]');
    await done(page);
    assert.equal((await saved(page, "#save-json")).text, native(["plan", song, "--singer", singer, "--transpose", "-3", "--as", "json"]));
})));

test("resonances are put on the staff as note heads", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "singer");
    await page.selectOption("#voice", "tenor");
    await done(page);
    await page.click("#typed summary");
    await page.focus('#typed-rows input[data-vowel="a"][data-number="1"]');
    const staff = page.locator("#typed-staff svg");
    await staff.waitFor();
    await staff.scrollIntoViewIfNeeded();
    // The line of F5 is the highest of the lower staff: 38 steps above C0 (4 lines above E4, 30).
    const tap = async (step) => {
        await staff.scrollIntoViewIfNeeded();
        const box = await staff.boundingBox();
        await page.mouse.click(box.x + box.width / 2, box.y + (60 - step) * 5 * box.height / ((60 - 21) * 5 + 8));
    };
    await tap(38);
    assert.equal(await page.inputValue('#typed-rows input[data-vowel="a"][data-number="1"]'), "F5");
    await page.click("#staff-sharp");
    assert.equal(await page.inputValue('#typed-rows input[data-vowel="a"][data-number="1"]'), "F♯5");
    await page.focus('#typed-rows input[data-vowel="a"][data-number="2"]');
    await tap(44); // E6, the lowest line of the upper staff
    assert.equal(await page.inputValue('#typed-rows input[data-vowel="a"][data-number="2"]'), "E6");
    await page.click("#use-typed");
    await done(page);
    const row = await page.textContent('#resonances tr:has(th:text-is("a"))');
    // F♯5 and E6 in equal temperament (ISO 16): 440 x 2^(9/12), 440 x 2^(19/12).
    const told = (name, semitones) => `${name} ${Number((440 * 2 ** (semitones / 12)).toFixed(1))} `;
    assert.ok(row.includes(told("F♯5", 9)) && row.includes(told("E6", 19)), row);
    assert.doesNotMatch(row, /[+−]\d+ c/, "no cents unless asked for");
})));
