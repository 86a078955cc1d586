// SPDX-License-Identifier: MIT
// A lesson made by `vowelway page`: the page opens with the song and the singer, words and all.
import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { done, native, page_folder, root, saved, scratch, step, with_browser, with_page } from "./browser.mjs";

const head = (page) => page.textContent("#plan-head");

test("a lesson holds song, singer and settings, and plans as the program does", () => {
    const song = join(root, "tests/data/scores/lieder/brahms_magdalena.mxl"), singer = join(root, "charts/demo/serafina_quill.yaml");
    const how = [song, "--singer", singer, "--technique", "choral", "--verse", "1"];
    native(["page", ...how, "--page", page_folder, "-o", "lesson.html"]);
    return with_browser((browser) => with_page(browser, async (page) => {
        // The plan is there without a question asked.
        await page.waitForSelector("#view-plan:not([hidden]) #sheet svg.spots rect");
        assert.match(await head(page), /Serafina Quill/);
        assert.equal(await page.locator("#trouble .error").count(), 0);
        // German words: the synthesiser's answers came along.
        assert.equal((await saved(page, "#save-json")).text, native(["plan", ...how, "--as", "json"]));
    }, { url: pathToFileURL(join(scratch, "lesson.html")).href }));
});

test("a lesson leaves the student's own voice alone, and remembers what was corrected in it", () => {
    const song = join(root, "charts/demo/giusto_amor.mxl");
    writeFileSync(join(scratch, "teacher.yaml"), "vowelway: 1\nwords:\n  giusto: dʒusto\n  amor: a o\n");
    native(["page", song, "--singer", "baritone", "--words", "teacher.yaml", "--a4", "430", "--draws", "7", "--page", page_folder, "-o", "own.html"]);
    const lesson = pathToFileURL(join(scratch, "own.html")).href;
    return with_browser((browser) => with_page(browser, async (page, context) => {
        await step(page, "singer");
        await page.selectOption("#voice", "soprano");
        await page.click("#use-average");
        await done(page);
        const student = await context.newPage();
        await student.goto(lesson);
        await student.waitForSelector("html[data-ready]", { state: "attached" });
        await student.waitForSelector("#sheet svg.spots rect");
        assert.match(await head(student), /baritone/i);
        // The word list of the teacher holds, tuning and draws too; a word corrected by the student wins over it.
        const how = ["plan", song, "--singer", "baritone", "--a4", "430", "--draws", "7", "--as", "json"];
        assert.equal((await saved(student, "#save-json")).text, native([...how, "--words", "teacher.yaml"]));
        await step(student, "song");
        await student.click('#view-song summary:has-text("Words corrected")');
        await student.fill("#new-word", "amor");
        await student.fill("#new-vowels", "a ɔ");
        await student.click("#add-word");
        await done(student);
        writeFileSync(join(scratch, "both.yaml"), "vowelway: 1\nwords:\n  giusto: dʒusto\n  amor: a ɔ\n");
        await step(student, "plan");
        assert.equal((await saved(student, "#save-json")).text, native([...how, "--words", "both.yaml"]));
        await student.reload();
        await student.waitForSelector("#sheet svg.spots rect");
        assert.equal((await saved(student, "#save-json")).text, native([...how, "--words", "both.yaml"]));
        await page.reload();
        await page.waitForSelector("html[data-ready]", { state: "attached" });
        await step(page, "singer");
        assert.match(await page.textContent("#who"), /soprano/i);
    }));
});
