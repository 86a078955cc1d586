// SPDX-License-Identifier: MIT
// The page in Debian's Firefox, driven over WebDriver BiDi (W3C): it starts, plans a song as the program does, draws both
// views, answers a tap, makes a sound.
import assert from "node:assert/strict";
import { mkdtempSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { native, page_url, root, scratch } from "./browser.mjs";

const puppeteer = createRequire(join(process.env.VOWELWAY_NODE_MODULES, "x.js"))("puppeteer-core");
const song = join(root, "charts/demo/giusto_amor.mxl");

test("Firefox plans, draws, tells and sounds", { timeout: 600000 }, async () => {
    const browser = await puppeteer.launch({ browser: "firefox", executablePath: "/usr/bin/firefox-esr", userDataDir: mkdtempSync(join(scratch, "firefox-")) });
    try {
        const page = await browser.newPage(), faults = [];
        page.setDefaultTimeout(60000);
        page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
        page.on("pageerror", (error) => faults.push(String(error)));
        const step = async (name) => {
            await page.evaluate((to) => { location.hash = to; }, name);
            await page.waitForSelector(`#view-${name}:not([hidden])`);
            await page.waitForFunction(() => document.getElementById("status").textContent === "Ready.");
        };
        const words = () => page.$eval("#sheet .bands", (bands) => bands.textContent);
        await page.goto(page_url);
        await page.waitForSelector("html[data-ready]");
        await step("song");
        await page.click("#demo");
        await page.waitForFunction(() => document.getElementById("song-is").textContent);
        await step("plan");
        // What the button hands over, caught where it is made.
        const json = await page.evaluate(() => new Promise((made) => {
            const make = URL.createObjectURL;
            URL.createObjectURL = (blob) => (blob.text().then(made), make.call(URL, blob));
            document.getElementById("save-json").click();
        }));
        assert.equal(json, native(["plan", song, "--singer", "mezzo", "--as", "json"]));
        await page.$eval("#sheet", (sheet) => sheet.scrollIntoView());
        await page.waitForSelector("#sheet .bands text");
        assert.doesNotMatch(await words(), /fR1/);
        await page.click('[data-view="sheet"]');
        await page.waitForFunction(() => /fR1/.test(document.querySelector("#sheet .bands").textContent));
        await page.evaluate(() => document.querySelector('#sheet rect[data-note="4"]').dispatchEvent(new MouseEvent("click", { bubbles: true })));
        assert.match(await page.$eval("#note h3", (head) => head.textContent), /bar 2/);
        await step("hear");
        await page.click("#hear-vowel");
        await page.waitForFunction(() => window.last_heard?.seconds > 1); // made; where there is no sound card, Firefox plays nothing
        assert.deepEqual(faults, []);
    } finally {
        await browser.close();
    }
});
