// SPDX-License-Identifier: MIT
// For everybody: rules of accessibility (axe), narrow windows, the size of what is touched, forced colours.
import assert from "node:assert/strict";
import { join } from "node:path";
import { test } from "node:test";
import { axe_source, done, open_song, root, step, with_browser, with_demo, with_page } from "./browser.mjs";

const steps = ["singer", "song", "plan", "hear", "practise", "voices"];

async function findings(page) {
    await page.evaluate(axe_source);
    const { violations } = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
}

const passage = (page) => open_song(page, join(root, "tests/data/profiles/rising_fifth.yaml"));
// Rules of colours and of widths hold for a short song as for a long one; the long one is looked at once, where it is tightest.
for (const [colorScheme, width, with_song, locale] of [["light", 360, with_demo, "en-GB"], ["light", 1024, passage, "en-GB"], ["dark", 360, passage, "de-DE"], ["dark", 1024, passage, "en-GB"]])
    test(`axe finds nothing, ${colorScheme}, ${width} px, ${locale}`, () => with_browser((browser) => with_page(browser, async (page) => {
        await with_song(page);
        for (const name of steps) {
            await step(page, name);
            await page.evaluate((view) => document.querySelectorAll(`#view-${view} details`).forEach((d) => { d.open = true; }), name);
            await done(page);
            if (name === "plan") await page.locator('#sheet rect[role="button"]').first().press("Enter");
            assert.deepEqual(await findings(page), [], name);
            // Nothing is wider than the window; what is touched is 44 px high (WCAG 2.2, 2.5.5).
            assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), width, `${name} at ${width} px`);
            const small = await page.evaluate(() => [...document.querySelectorAll("main button, main select, main a, main summary, main .button, main input:not([type=file], [type=checkbox], [type=range]), nav a, #note button")]
                .filter((e) => e.checkVisibility()).map((e) => [e.outerHTML.slice(0, 80), e.getBoundingClientRect()])
                .filter(([, box]) => box.height < 43.5 || box.width < 43.5).map(([html, box]) => `${html} ${box.width}x${box.height}`));
            assert.deepEqual(small, [], name);
        }
    }, { colorScheme, locale, viewport: { width, height: 800 }, bypassCSP: true }))); // axe is put into the page

test("in large print, in German, nothing is wider than a phone", () => with_browser((browser) => with_page(browser, async (page) => {
    await page.selectOption("#look", "large");
    await passage(page);
    for (const name of steps) {
        await step(page, name);
        await page.evaluate((view) => document.querySelectorAll(`#view-${view} details`).forEach((d) => { d.open = true; }), name);
        await done(page);
        if (name === "plan") await page.locator('#sheet rect[role="button"]').first().press("Enter");
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 360, name);
        const cut = await page.evaluate(() => [...document.querySelectorAll("main button, main select, main input, main summary, nav a")].filter((e) => e.checkVisibility() && !e.closest(".wide") && e.getBoundingClientRect().right > 360).map((e) => e.outerHTML.slice(0, 80)));
        assert.deepEqual(cut, [], name);
    }
}, { locale: "de-DE", viewport: { width: 360, height: 800 } })));

test("with forced colours the step shown, the view chosen and the note tapped are told apart", () => with_browser((browser) => with_page(browser, async (page) => {
    await passage(page);
    await step(page, "plan");
    await page.locator('#sheet rect[role="button"]').nth(1).press("Enter");
    const looks = (selector) => page.locator(selector).first().evaluate((one) => ["fill", "stroke", "borderStyle", "fontWeight", "backgroundColor"].map((name) => getComputedStyle(one)[name]).join());
    assert.notEqual(await looks("#sheet rect.chosen"), await looks("#sheet rect:not(.chosen)"));
    assert.notEqual(await looks('[data-view="pencil"]'), await looks('[data-view="sheet"]'));
    assert.notEqual(await looks("nav a[aria-current] .head"), await looks("nav a:not([aria-current]) .head"));
    assert.deepEqual(await findings(page), []);
}, { forcedColors: "active", bypassCSP: true })));
