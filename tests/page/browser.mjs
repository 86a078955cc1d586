// SPDX-License-Identifier: MIT
// What the tests of the page share: a browser, the page opened in it, and what must hold in every test: no error on
// the console, no request that leaves the device.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { dirname, extname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const { VOWELWAY_PROGRAM, VOWELWAY_PAGE, VOWELWAY_SCRATCH, VOWELWAY_NODE_MODULES } = process.env;
const require = createRequire(join(VOWELWAY_NODE_MODULES, "x.js"));
const { chromium } = require("playwright-core");
export const axe_source = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
export const root = join(dirname(fileURLToPath(import.meta.url)), "../..");
export const page_folder = VOWELWAY_PAGE;
export const page_file = join(page_folder, "vowelway.html");
export const page_url = pathToFileURL(page_file).href;
export const scratch = VOWELWAY_SCRATCH;
export const program = VOWELWAY_PROGRAM;

/** The native program's standard output. */
export function native(args) {
    const run = spawnSync(VOWELWAY_PROGRAM, args, { cwd: scratch, encoding: "utf8", maxBuffer: 1 << 28 });
    assert.equal(run.status, 0, `${args.join(" ")}: ${run.stderr}`);
    return run.stdout;
}

/// The text that the program writes into a file: there no line is broken to fit a width.
export function native_text(args) {
    const file = join(scratch, "native.txt");
    native([...args, "-o", file]);
    return readFileSync(file, "utf8");
}

/** The browser that all tests share (one_browser.mjs); one of its own where it takes `args`. */
export async function with_browser(work, args = []) {
    const shared = process.env.VOWELWAY_BROWSER;
    const browser = shared && !args.length ? await chromium.connect(shared) : await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox", ...args] });
    try {
        await work(browser);
    } finally {
        await browser.close();
    }
}

/** Opens the page and hands it to `work`; then looks at what it said and asked for. */
export async function with_page(browser, work, { url = page_url, ...options } = {}) {
    const context = await browser.newContext({ viewport: { width: 1024, height: 800 }, locale: "en-GB", acceptDownloads: true, ...options });
    const faults = [], asked = [];
    const page = await context.newPage();
    page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
    page.on("pageerror", (error) => faults.push(String(error)));
    page.on("request", (request) => asked.push(request.url()));
    page.setDefaultTimeout(120000); // a machine may be busy; a page that hangs is found all the same
    try {
        await page.goto(url);
        await page.waitForSelector("html[data-ready]", { state: "attached" });
        await work(page, context);
        assert.deepEqual(faults, [], "the console stays silent");
        const origin = new URL(url);
        const outside = asked.filter((address) => !/^(blob|data):/.test(address) && (origin.protocol === "file:" ? address.split("#")[0] !== url.split("#")[0] : new URL(address).origin !== origin.origin));
        assert.deepEqual(outside, [], "nothing is asked of anybody else");
    } finally {
        await context.close();
    }
}

/** Waits until the page has done what it was asked. */
export const done = (page) => page.waitForFunction(() => /^(Ready|Bereit)\.$/.test(document.getElementById("status").textContent));

export async function step(page, name) {
    await page.click(`nav a[data-step="${name}"]`);
    await page.waitForSelector(`#view-${name}:not([hidden])`);
    await done(page);
}

/** Opens a score and waits until it is read. */
export async function open_song(page, file) {
    await step(page, "song");
    await page.setInputFiles("#open-song", file);
    await page.waitForFunction(() => document.getElementById("song-is").textContent || document.querySelector("#trouble .error"));
    await done(page);
}

/** The demo's singer and song. */
export async function with_demo(page) {
    await step(page, "singer");
    await page.setInputFiles("#open-profile", join(root, "charts/demo/serafina_quill.yaml"));
    await done(page);
    await step(page, "song");
    await page.click("#demo");
    await page.waitForFunction(() => document.getElementById("song-is").textContent);
    await done(page);
}

let files_saved = 0;
/** The text of what a button hands over. */
export async function saved(page, button, press = () => page.click(button)) {
    const [download] = await Promise.all([page.waitForEvent("download"), press()]);
    const file = join(scratch, `saved-${process.pid}-${++files_saved}`);
    await download.saveAs(file);
    return { name: download.suggestedFilename(), text: readFileSync(file, "utf8") };
}

const types = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml", ".webmanifest": "application/manifest+json" };
/** The folder as a static host gives it; close() it. */
export async function hosted(folder = join(VOWELWAY_PAGE, "folder")) {
    const server = createServer((request, response) => {
        const path = new URL(request.url, "http://x").pathname;
        const file = join(folder, path === "/" ? "index.html" : path.slice(1));
        if (!existsSync(file)) return response.writeHead(404).end();
        response.writeHead(200, { "Content-Type": types[extname(file)] ?? "application/octet-stream" }).end(readFileSync(file));
    });
    await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
    return { url: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}
