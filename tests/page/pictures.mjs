// SPDX-License-Identifier: MIT
// Pictures of the page for people to look at: every step, 360, 768 and 1440 px, light, dark, forced colours, large; in
// English, the large ones in German. What is folded away is opened in the narrow ones.
//   sh tests/page/pictures.sh FOLDER [STEP,..] [LOOK,..]
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { done, step, with_browser, with_demo, with_page } from "./browser.mjs";

const [folder, some_steps, some_looks] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const steps = some_steps?.split(",") ?? ["singer", "song", "plan", "hear", "practise", "voices"];
const looks = {
    light: { colorScheme: "light" }, dark: { colorScheme: "dark" },
    forced: { colorScheme: "dark", forcedColors: "active" }, large: { colorScheme: "light", locale: "de-DE", large: true },
};
const drawn = (page) => page.evaluate(() => new Promise((shown) => requestAnimationFrame(() => requestAnimationFrame(shown))));

await with_browser(async (browser) => {
    for (const [look, { large, ...options }] of Object.entries(looks).filter(([name]) => !some_looks || some_looks.split(",").includes(name)))
        for (const width of look === "forced" ? [360, 1440] : [360, 768, 1440])
            await with_page(browser, async (page) => {
                if (large) await page.selectOption("#look", "large");
                await with_demo(page);
                const picture = async (name, fullPage) => {
                    await done(page);
                    await drawn(page);
                    await page.screenshot({ path: join(folder, `${name}-${width}-${look}.png`), fullPage });
                };
                for (const name of steps) {
                    await step(page, name);
                    await picture(name, name !== "plan");
                    if (name === "plan") await page.locator("#watched button").first().click();
                    if (name === "plan") await picture("plan-note", false);
                    if (width !== 360) continue;
                    await page.evaluate((view) => document.querySelectorAll(`#view-${view} details`).forEach((d) => { d.open = true; }), name);
                    await picture(`${name}-whole`, true);
                }
            }, { ...options, viewport: { width, height: 900 } });
});
