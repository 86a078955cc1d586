// SPDX-License-Identifier: MIT
// A lesson made by `vowelway page`: the page opens with the song and the singer, words and all.
import assert from "node:assert/strict";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { native, page_folder, root, saved, scratch, step, with_browser, with_page } from "./browser.mjs";

test("a lesson holds song, singer and settings, and plans as the program does", () => {
    const song = join(root, "tests/data/scores/lieder/brahms_magdalena.mxl"), singer = join(root, "charts/demo/serafina_quill.yaml");
    const how = [song, "--singer", singer, "--technique", "choral", "--verse", "1"];
    native(["page", ...how, "--page", page_folder, "-o", "lesson.html"]);
    return with_browser((browser) => with_page(browser, async (page) => {
        await step(page, "plan");
        await page.waitForSelector("#sheet svg.spots rect");
        assert.match(await page.textContent("#plan-head"), /Serafina Quill/);
        // German words: the synthesiser's answers came along.
        assert.equal((await saved(page, "#save-json")).text, native(["plan", ...how, "--as", "json"]));
    }, { url: pathToFileURL(join(scratch, "lesson.html")).href }));
});
