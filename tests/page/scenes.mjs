// SPDX-License-Identifier: MIT
// The pictures of the page in docs/page: what is done before each is taken, and the words that then stand there.
import { done, step, with_demo, with_page } from "./browser.mjs";

const phone = { viewport: { width: 360, height: 760 }, deviceScaleFactor: 2 }, laptop = { viewport: { width: 1100, height: 760 } };

async function chosen(page) {
    await with_demo(page);
    await step(page, "plan");
    await page.locator("#watched button").first().click();
}
export const scenes = [
    { name: "plan_phone", ...phone, words: "#view-plan .jumps, #note", act: chosen },
    { name: "moved_laptop", ...laptop, words: "#note, #moved", async act(page) {
        await chosen(page);
        for (let i = 0; i < 3; ++i) await page.click("#move-down");
        await page.waitForFunction(() => document.getElementById("moved-by")?.textContent.startsWith("3"));
        await done(page);
        await page.locator("#sheet rect.chosen").first().evaluate((rect) => scrollBy(0, rect.getBoundingClientRect().top - 90));
    } },
    { name: "singer_phone", ...phone, words: "#typed, #resonances", async act(page) {
        await with_demo(page);
        await step(page, "singer");
        await page.click("#typed summary");
        await page.fill('#typed-rows input[data-vowel="a"][data-number="1"]', "F5");
        await page.fill('#typed-rows input[data-vowel="a"][data-number="2"]', "E6");
        await page.waitForSelector("#typed-staff .head-now[visibility=visible]");
        await page.locator("#typed-staff").evaluate((staff) => staff.scrollIntoView({ block: "end" }));
    } },
    { name: "keys_laptop", ...laptop, colorScheme: "dark", words: "#keys-table", async act(page) {
        await with_demo(page);
        await step(page, "plan");
        await page.click("#d-keys summary");
        await page.click("#try-keys");
        await page.waitForSelector("#keys-answer:not([hidden]) tbody tr");
        await done(page);
        await page.locator("#d-keys").evaluate((keys) => keys.scrollIntoView());
    } },
];

/** Brings a scene onto the page; `use` gets the page and the scene's words. */
export const in_scene = (browser, { act, words, name, ...options }, use) => with_page(browser, async (page) => {
    await act(page);
    const said = await page.locator(words).evaluateAll((all) => all.map((one) => one.innerText.trim()).filter(Boolean).join("\n\n"));
    await use(page, `${said.replace(/[ \t]+/g, " ")}\n`);
}, options);
