// SPDX-License-Identifier: MIT
// How large and how quick the page is: figures for docs/page.md, never asserted.
//   sh tests/page/figures.sh PROGRAM
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { native, page_file, page_folder, root, with_browser, with_demo, with_page } from "./browser.mjs";

const say = (what, found) => console.log(`${what.padEnd(64)} ${found}`);
const kB = (bytes) => `${Math.round(bytes / 1000)} kB`;
say("vowelway.html", `${kB(statSync(page_file).size)}, with gzip ${kB(gzipSync(readFileSync(page_file)).length)}`);
for (const name of ["vowelway.wasm.gz", "main.js", "worker.js"]) say(`folder/${name}`, kB(statSync(join(page_folder, "folder", name)).size));

const song = join(root, "charts/demo/giusto_amor.mxl"), singer = join(root, "charts/demo/serafina_quill.yaml");
const timed = (work) => { const began = performance.now(); work(); return performance.now() - began; };

/** The longest tasks of the page's own thread while `work` runs, in milliseconds. */
async function long_tasks(page, work) {
    await page.evaluate(() => { window.tasks = []; window.watching = new PerformanceObserver((list) => window.tasks.push(...list.getEntries().map(({ duration }) => Math.round(duration)))); window.watching.observe({ type: "longtask" }); });
    await work();
    await page.waitForTimeout(300);
    return page.evaluate(() => { window.watching.disconnect(); return window.tasks.sort((a, b) => b - a).slice(0, 6); });
}
async function to_plan(page) {
    const began = performance.now();
    await page.evaluate(() => { location.hash = "plan"; });
    await page.waitForSelector("#sheet svg.spots rect");
    return performance.now() - began;
}

await with_browser(async (browser) => {
    for (const [rate, viewport] of [[1, { width: 1024, height: 800 }], [4, { width: 360, height: 740 }]]) {
        const how = `${viewport.width} px, processor ${rate === 1 ? "as it is" : `slowed ${rate} times`}`;
        await with_page(browser, async (page, context) => {
            await (await context.newCDPSession(page)).send("Emulation.setCPUThrottlingRate", { rate });
            await page.reload();
            await page.waitForSelector("html[data-ready]", { state: "attached" });
            say(`until the page answers, ${how}`, `${Math.round(await page.evaluate(() => window.ready_ms))} ms`);
            await with_demo(page);
            let ms = 0;
            const tasks = await long_tasks(page, async () => { ms = await to_plan(page); });
            say(`the song's plan and sheet (149 notes), ${how}`, `${Math.round(ms)} ms; tasks over 50 ms: ${tasks.join(" ") || "none"}`);
            const taps = await long_tasks(page, async () => {
                await page.locator("#watched button").first().click();
                await page.click("#move-up");
                await page.waitForSelector("#moved-by");
            });
            say(`a note chosen, and moved by a semitone, ${how}`, `tasks over 50 ms: ${taps.join(" ") || "none"}`);
        }, { viewport });
    }
});
const runs = [1, 2, 3].map(() => timed(() => native(["plan", song, "--singer", singer, "--as", "json"]))).sort((a, b) => a - b);
say("the same plan by the native program, with its start", `${Math.round(runs[1])} ms`);
