// SPDX-License-Identifier: MIT
// By the keyboard alone, in both languages: Tab reaches every control in the order of reading, each shows that it has the
// focus and lies free, nothing holds it fast; Escape leaves what was opened; arrows move what is moved with the pointer.
import assert from "node:assert/strict";
import { join } from "node:path";
import { test } from "node:test";
import { done, open_song, root, with_browser, with_page } from "./browser.mjs";

const steps = ["singer", "song", "plan", "hear", "practise", "voices"];

/** Runs in the page: what can have the focus, in the order of the document; and the one that has it. */
function helpers() {
    window.shown_as = (one) => one.id || one.dataset.step || one.dataset.view || `${one.tagName} ${(one.getAttribute("aria-label") ?? one.textContent).trim().slice(0, 40)}`;
    window.reachable = () => [...document.querySelectorAll("a[href], button:not([disabled]), select, input, textarea, summary, [tabindex='0']")].filter((one) => one.checkVisibility());
    window.focused = () => {
        const one = document.activeElement, face = one.closest(".button") ?? one, box = face.getBoundingClientRect(), style = getComputedStyle(face);
        // Chromium scrolls a focus into sight; then nothing may lie over it.
        const x = box.left + Math.min(box.width, innerWidth) / 2, y = Math.min(Math.max(box.top, 0) + 8, box.bottom - 1);
        const over = document.elementFromPoint(x, y);
        return { body: one === document.body, name: window.shown_as(one), seen: style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) >= 2,
            free: !!over && (face.contains(over) || over.contains(face) || over.closest("label") === one.closest("label") && !!over.closest("label")), closed: one.tagName === "SUMMARY" && !one.parentElement.open };
    };
}
const focused = (page) => page.evaluate(() => window.focused());

/** Tab from the top of the page to its end; what is folded away is opened on the way. */
async function walk(page) {
    await page.locator(".skip").focus(); // the first of all
    const way = [], hidden = [], covered = [];
    for (let i = 0; i < 200; ++i) {
        if (i) await page.keyboard.press("Tab");
        const at = await focused(page);
        if (at.body || at.name === way[0]) break;
        way.push(at.name);
        if (!at.seen) hidden.push(at.name);
        if (!at.free) covered.push(at.name);
        if (at.closed) {
            await page.keyboard.press("Enter");
            // What is drawn when it is opened.
            await page.waitForFunction(() => [...document.activeElement.parentElement.querySelectorAll(".charts")].every((one) => !one.checkVisibility() || one.querySelector("svg")));
            await done(page);
        }
    }
    return { way, hidden, covered };
}
/** Tab until this has the focus. */
async function tab_to(page, selector) {
    for (let i = 0; i < 200; ++i) {
        await page.keyboard.press("Tab");
        if (await page.evaluate((wanted) => document.activeElement.matches(wanted), selector)) return;
    }
    assert.fail(`${selector} is not reached`);
}

for (const locale of ["en-GB", "de-DE"])
    test(`every control is reached with Tab, seen and left, ${locale}`, () => with_browser((browser) => with_page(browser, async (page) => {
        await page.evaluate(helpers);
        await open_song(page, join(root, "tests/data/profiles/rising_fifth.yaml"));
        for (const name of steps) {
            await page.locator(`nav a[data-step="${name}"]`).focus();
            await page.keyboard.press("Enter");
            await page.waitForSelector(`#view-${name}:not([hidden])`);
            await done(page);
            const { way, hidden, covered } = await walk(page);
            assert.deepEqual(way, await page.evaluate(() => window.reachable().map(window.shown_as)), name);
            assert.deepEqual(hidden, [], `${name}: where the focus is, is seen`);
            assert.deepEqual(covered, [], `${name}: nothing lies over the focus`);
            assert.ok(way.length > 12, `${name}: ${way.length}`);
        }
    }, { locale })));

test("from the steps to the reason of a note and back, moving it on the way", () => with_browser((browser) => with_page(browser, async (page) => {
    await page.evaluate(helpers);
    await open_song(page, join(root, "tests/data/profiles/rising_fifth.yaml"));
    await page.locator('nav a[data-step="plan"]').focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector("#sheet svg.spots rect");
    await done(page);
    // Past the steps to what is below them, on the step that is shown.
    await page.evaluate(() => document.activeElement.blur());
    await page.locator(".skip").focus();
    await page.keyboard.press("Enter");
    assert.equal((await focused(page)).name, "content");
    assert.ok(await page.isVisible("#view-plan"));

    const note = () => page.evaluate(() => document.activeElement.dataset.note);
    await tab_to(page, "#sheet rect");
    assert.equal(await note(), "0");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#note:not([hidden])");
    for (const [keys, moved] of [["Shift+ArrowUp", "a semitone up"], ["Shift+ArrowDown", undefined], ["Shift+ArrowDown", "a semitone down"]]) {
        await page.keyboard.press(keys);
        await page.waitForFunction((text) => document.getElementById("moved-by")?.textContent === text, moved);
        await done(page);
        assert.equal(await note(), "1", "the keys stay on the note");
    }
    // Its panel is the next thing after the sheet.
    await page.keyboard.press("Tab");
    assert.ok(await page.evaluate(() => document.getElementById("note").contains(document.activeElement)));
    await tab_to(page, "#all-reasons");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#reasons[open] svg");
    for (let i = 0; i < 8; ++i) {
        await page.keyboard.press("Tab");
        assert.ok(await page.evaluate(() => document.activeElement === document.body || document.getElementById("reasons").contains(document.activeElement)), "a dialog keeps the focus");
    }
    await page.keyboard.press("Escape");
    assert.equal(await page.locator("#reasons[open]").count(), 0);
    assert.equal((await focused(page)).name, "all-reasons", "the focus comes back");
    await page.keyboard.press("Escape");
    assert.ok(await page.isHidden("#note"));
    assert.equal(await note(), "1");
})));

test("the heads of a singer's resonances are moved with the arrow keys", () => with_browser((browser) => with_page(browser, async (page) => {
    await page.evaluate(helpers);
    await page.locator("#typed summary").focus();
    await page.keyboard.press("Enter");
    const box = page.locator('#typed-rows input[data-vowel="a"][data-number="1"]');
    await box.focus();
    await page.keyboard.type("F5");
    const head = () => page.locator("#typed-staff .fR1 .head-now").getAttribute("transform");
    await page.waitForSelector("#typed-staff .fR1 .head-now[visibility=visible]");
    const before = await head();
    await page.keyboard.press("ArrowUp"); // steps of the staff
    await page.keyboard.press("ArrowUp");
    assert.equal(await box.inputValue(), "A5");
    await page.waitForFunction((was) => document.querySelector("#typed-staff .fR1 .head-now").getAttribute("transform") !== was, before);
    for (let i = 0; i < 3; ++i) await page.keyboard.press("ArrowDown");
    assert.equal(await box.inputValue(), "E5");
})));
