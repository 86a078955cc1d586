// SPDX-License-Identifier: MIT
// For everybody: rules of accessibility (axe), narrow windows, the size of what is touched, forced colours.
import assert from "node:assert/strict";
import { join } from "node:path";
import { test } from "node:test";
import { axe_source, done, step, with_browser, with_demo, with_page } from "./browser.mjs";

const steps = ["singer", "song", "plan", "hear", "practise", "voices"];

async function findings(page) {
    await page.evaluate(axe_source);
    const { violations } = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
}

for (const colorScheme of ["light", "dark"])
    for (const width of [360, 1024])
        test(`axe finds nothing, ${colorScheme}, ${width} px`, () => with_browser((browser) => with_page(browser, async (page) => {
            await with_demo(page);
            for (const name of steps) {
                await step(page, name);
                await page.evaluate((view) => document.querySelectorAll(`#view-${view} details`).forEach((d) => { d.open = true; }), name);
                await done(page);
                if (name === "plan") await page.locator("#watched button").first().click();
                assert.deepEqual(await findings(page), [], name);
                // Nothing is wider than the window; what is touched is 44 px high (WCAG 2.2, 2.5.5).
                assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), width, `${name} at ${width} px`);
                const small = await page.evaluate(() => [...document.querySelectorAll("main button, main select, main a, main summary, main .button, main input:not([type=file], [type=checkbox], [type=range]), nav a, #note button")]
                    .filter((e) => e.checkVisibility()).map((e) => [e.outerHTML.slice(0, 80), e.getBoundingClientRect()])
                    .filter(([, box]) => box.height < 43.5 || box.width < 43.5).map(([html, box]) => `${html} ${box.width}x${box.height}`));
                assert.deepEqual(small, [], name);
            }
        }, { colorScheme, viewport: { width, height: 800 }, bypassCSP: true }))); // axe is put into the page

test("with forced colours the steps are still told apart", () => with_browser((browser) => with_page(browser, async (page) => {
    assert.equal(await page.getAttribute('nav a[data-step="singer"]', "aria-current"), "step");
    assert.deepEqual(await findings(page), []);
}, { forcedColors: "active", bypassCSP: true })));
