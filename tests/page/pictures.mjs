// SPDX-License-Identifier: MIT
// Pictures of the page for people to look at: 360, 768 and 1440 px, light and dark.
//   sh tests/page/pictures.sh FOLDER
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { step, with_browser, with_demo, with_page } from "./browser.mjs";

const folder = process.argv[2];
mkdirSync(folder, { recursive: true });
const steps = process.argv[3]?.split(",") ?? ["singer", "song", "plan", "hear", "practise", "voices"];
await with_browser(async (browser) => {
    for (const colorScheme of ["light", "dark"])
        for (const width of [360, 768, 1440])
            await with_page(browser, async (page) => {
                await with_demo(page);
                for (const name of steps) {
                    if (!(await page.locator(`nav a[data-step="${name}"]`).count())) continue;
                    await step(page, name);
                    if (name === "plan") await page.locator("#watched button").first().click();
                    await page.waitForTimeout(300);
                    await page.screenshot({ path: join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: name !== "plan" });
                    if (name === "plan") await page.screenshot({ path: join(folder, `${name}-whole-${width}-${colorScheme}.png`), fullPage: true });
                }
            }, { colorScheme, viewport: { width, height: 900 } });
});
