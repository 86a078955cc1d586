// SPDX-License-Identifier: MIT
// What a singer does with the page: a voice, a song, the plan, a note, the files; by keys and by touch.
import assert from "node:assert/strict";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { done, hosted, native, native_text, open_song, root, saved, scratch, step, with_browser, with_demo, with_page } from "./browser.mjs";

const song = join(root, "charts/demo/giusto_amor.mxl"), singer = join(root, "charts/demo/serafina_quill.yaml");

test("a song and a profile become the native program's plan", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "singer");
    await page.setInputFiles("#open-profile", singer);
    await page.waitForFunction(() => document.getElementById("who").textContent.includes("Serafina Quill"));
    await step(page, "song");
    await page.click("#demo"); // the same file, with what the synthesiser says of its words
    await page.waitForFunction(() => document.getElementById("song-is").textContent);
    await done(page);
    assert.match(await page.textContent("#song-is"), /Poesia di Metastasio.*Italian; 149 notes/);
    await step(page, "plan");
    await page.waitForSelector("#sheet svg.spots rect");
    const json = await saved(page, "#save-json");
    assert.equal(json.name, "giusto_amor.json");
    assert.equal(json.text, native(["plan", song, "--singer", singer, "--as", "json"]));
    const csv = await saved(page, "#save-csv");
    assert.equal(csv.text, native(["plan", song, "--singer", singer, "--as", "csv"]));

    const plan = JSON.parse(json.text);
    await page.click("#d-list summary");
    await page.waitForFunction((count) => document.querySelectorAll("#list li").length === count, plan.notes.length);
    // The notes to watch jump to their note, which says why, in the plan's own words.
    const first = page.locator("#watched button").first();
    const index = Number(await first.getAttribute("data-note"));
    await first.click();
    assert.match(await page.textContent("#note"), new RegExp(plan.notes[index].why.slice(0, 30).replace(/[.*+?^${}()|[\]\\]/g, "\\$&")));
    assert.equal(await page.locator(`#sheet rect.chosen`).first().getAttribute("data-note"), String(index));
    // All reasons: the explanation of the native program, word for word.
    await page.click("#all-reasons");
    await page.waitForSelector("#reasons[open] svg");
    const { measure, beat } = plan.notes[index];
    assert.equal(await page.textContent("#reasons-text"), native_text(["explain", song, "--singer", singer, "--measure", measure, "--beat", String(beat)]));
    await page.click("#close-reasons");

    // The marked score says what the native one says.
    const marked = await saved(page, "#save-marked");
    assert.equal(marked.name, "giusto_amor-marked.musicxml");
    native(["plan", song, "--singer", singer, "-o", join(scratch, "marked.musicxml")]);
    assert.equal(marked.text, readFileSync(join(scratch, "marked.musicxml"), "utf8"));
})));

test("the plan opens on the line to sing from; the sheet says why", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await step(page, "plan");
    const words = () => page.locator("#sheet .bands").evaluate((bands) => [...bands.querySelectorAll("text")].map((text) => text.textContent).join(" "));
    // The program's own pencil view of the same plan says what is pencilled over the first line; of resonances it says nothing.
    native(["plan", song, "--singer", singer, "--chart", "pencil", "-o", "pencil.svg", "--overwrite"]);
    assert.match(readFileSync(join(scratch, "pencil-1.svg"), "utf8"), /lips a little open/);
    assert.match(await words(), /lips a little open/);
    assert.doesNotMatch(await words(), /fR1|heard/);
    assert.equal(await page.getAttribute('[data-view="pencil"]', "aria-pressed"), "true");
    const rects = page.locator('#sheet rect[role="button"]'), notes = await rects.count();
    await rects.nth(4).click();
    const said = await page.textContent("#note h3");
    await page.click('[data-view="sheet"]');
    await done(page);
    assert.match(await words(), /fR1/);
    assert.equal(await rects.count(), notes, "the same notes can be tapped");
    assert.equal(await page.textContent("#note h3"), said, "the note stays chosen");
    assert.equal(await page.locator("#sheet rect.chosen").first().getAttribute("data-note"), "4");
})));

test("of a long sheet only what is near the window is drawn, the rest when it comes near", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await step(page, "plan");
    const drawn = () => page.evaluate(() => [...document.querySelectorAll("#sheet .bands > div")].map((band) => !!band.querySelector("svg")));
    const bands = await drawn();
    assert.ok(bands.length > 10 && bands.filter(Boolean).length < bands.length / 2, `${bands}`);
    assert.ok(!bands.at(-1));
    await page.locator("#sheet").evaluate((sheet) => scrollBy(0, sheet.getBoundingClientRect().bottom - innerHeight));
    await page.waitForSelector("#sheet .bands > div:last-child svg");
}, { viewport: { width: 360, height: 740 } })));

test("a score dropped anywhere on the page is the song; it is printed as the program draws it", () => with_browser((browser) => with_page(browser, async (page) => {
    const bytes = [...readFileSync(song)];
    await page.evaluate((all) => {
        const data = new DataTransfer();
        data.items.add(new File([new Uint8Array(all)], "dropped.mxl"));
        for (const name of ["dragover", "drop"]) document.querySelector("footer").dispatchEvent(new DragEvent(name, { dataTransfer: data, bubbles: true, cancelable: true }));
    }, bytes);
    await page.waitForFunction(() => document.getElementById("song-is").textContent.includes("149"));
    await done(page);
    await with_demo(page); // its words are told
    await step(page, "plan");
    await page.evaluate(() => { window.print = () => { window.printed = document.querySelectorAll("#paper svg").length; }; });
    await page.click("#print");
    await page.waitForFunction(() => window.printed);
    native(["plan", song, "--singer", singer, "-o", "pages.svg", "--overwrite"]);
    assert.equal(await page.evaluate(() => window.printed), readdirSync(scratch).filter((name) => /^pages(-\d+)?\.svg$/.test(name)).length);
    // On paper stands the plan alone.
    await page.emulateMedia({ media: "print" });
    assert.ok(await page.isHidden("main") && await page.isVisible("#paper svg"));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    assert.ok(pdf.length > 20000);
})));

test("part and verse are chosen from those of the score; all verses are planned as they are sung", () => with_browser((browser) => with_page(browser, async (page) => {
    const one = readFileSync(join(root, "tests/data/scores/own/verses_and_jumps.musicxml"), "utf8");
    const second = one.match(/<part id="P1">[^]*<\/part>/)[0].replace("P1", "P2").replace(/<lyric number="2">.*?<\/lyric>/g, "");
    const score = join(scratch, "two_parts.musicxml");
    writeFileSync(score, one.replace("</part-list>", '<score-part id="P2"><part-name>Alto</part-name></score-part></part-list>').replace("</score-partwise>", `${second}</score-partwise>`));
    await open_song(page, score);
    const options = (id) => page.locator(`#${id} option`).evaluateAll((all) => all.map(({ value }) => value));
    const choose = async (id, value) => {
        await page.selectOption(`#${id}`, value);
        await page.waitForFunction(() => document.getElementById("song-is").textContent);
        await done(page);
    };
    await choose("language", "la"); // by rules, whatever the words
    assert.deepEqual(await options("part"), ["", "1", "2"]);
    assert.deepEqual(await options("verse"), ["", "2", "all"]);
    await choose("part", "2");
    assert.deepEqual(await options("verse"), ["", "all"], "the alto has one verse");
    assert.match(await page.textContent("#song-is"), /Alto, verse 1/);
    await choose("part", "1");
    await choose("verse", "all");
    assert.match(await page.textContent("#song-is"), /Voice, all verses, Latin; 12 notes/);
    await step(page, "plan");
    const how = ["--singer", "mezzo", "--part", "1", "--language", "la", "--as", "json"];
    assert.equal((await saved(page, "#save-json")).text, native(["plan", score, ...how, "--verse", "all"]));
    await step(page, "song");
    await choose("verse", "2");
    await step(page, "plan");
    assert.equal((await saved(page, "#save-json")).text, native(["plan", score, ...how, "--verse", "2"]));
    // Of one part that three lines share, each can be chosen.
    await step(page, "song");
    await open_song(page, join(root, "tests/data/scores/parts/massenet_choeur_des_pastorales.mxl"));
    assert.deepEqual(await options("part"), ["", "1.1", "1.2", "1.3"]);
})));

test("the sheet is walked with the keys, and a tap tells why", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "song");
    await page.click("#demo");
    await page.waitForFunction(() => document.getElementById("song-is").textContent);
    await step(page, "plan");
    await page.locator('#sheet rect[tabindex="0"]').focus();
    for (let i = 0; i < 3; ++i) await page.keyboard.press("ArrowRight");
    const note = await page.evaluate(() => document.activeElement.dataset.note);
    assert.equal(note, "3");
    await page.keyboard.press("Enter");
    const said = await page.textContent("#note h3");
    assert.ok(said.length > 5);
    await page.locator('#sheet rect[role="button"]').nth(7).click();
    assert.notEqual(await page.textContent("#note h3"), said);
})));

test("typed resonances are kept in the browser, and told as the program tells them", () => with_browser((browser) => with_page(browser, async (page, context) => {
    await step(page, "singer");
    await page.selectOption("#voice", "tenor");
    await done(page);
    await page.click("#typed summary");
    await page.fill("#typed-name", "Nobody: \"quoted\"");
    await page.fill('input[data-vowel="i"][data-number="1"]', "300 Hz ± 15");
    await page.fill('input[data-vowel="i"][data-number="2"]', "C#7");
    await page.fill('input[data-vowel="a"][data-number="1"]', "640");
    await page.fill('input[data-vowel="a"][data-number="2"]', "1180");
    await page.click("#use-typed");
    await page.waitForFunction(() => document.getElementById("who").textContent.includes("quoted"));
    const profile = await saved(page, "#save-profile");
    writeFileSync(join(scratch, "typed.yaml"), profile.text);
    const told = JSON.parse(native(["profile", "show", "typed.yaml", "--as", "json"]));
    assert.equal(told.singer, 'Nobody: "quoted"');
    for (const { ipa, resonances } of told.vowels) {
        const row = await page.textContent(`#resonances tr:has(th:text-is("${ipa}"))`);
        for (const r of resonances.slice(0, 2)) assert.ok(row.includes(`${r.hz} ± ${r.sd_hz} Hz`), row);
    }
    const again = await context.newPage(); // as when the browser is opened the next day
    await again.goto(page.url().split("#")[0]);
    await again.waitForFunction(() => document.getElementById("who").textContent.includes("quoted"));
})));

test("what is wrong is said with its place, and what can be done", () => with_browser((browser) => with_page(browser, async (page) => {
    writeFileSync(join(scratch, "bad.yaml"), "vowelway: 1\nsinger: x\nvoice: tenor\nvowles: {}\n");
    await step(page, "singer");
    await page.setInputFiles("#open-profile", join(scratch, "bad.yaml"));
    await page.waitForSelector("#trouble .error");
    assert.match(await page.textContent("#trouble"), /bad\.yaml, 4:\d+: .*vowles/);
    writeFileSync(join(scratch, "broken.musicxml"), "<score-partwise>");
    await open_song(page, join(scratch, "broken.musicxml"));
    assert.match(await page.textContent("#trouble"), /broken\.musicxml/);
})));

test("words that nobody has told are asked for, and what is typed is planned", () => with_browser((browser) => with_page(browser, async (page) => {
    writeFileSync(join(scratch, "german.yaml"), `vowelway: 1
passage: Two words
language: de
notes:
  - {pitch: A4, duration: 1 s, syllable: "kü-"}
  - {pitch: C5, duration: 1 s, syllable: "le"}
  - {pitch: A4, duration: 1 s, syllable: "Nacht"}
`);
    await open_song(page, join(scratch, "german.yaml"));
    const boxes = page.locator("#unknown-rows input");
    const asked = await boxes.evaluateAll((all) => all.map((box) => box.dataset.word));
    assert.deepEqual(asked.sort(), ["küle", "nacht"]);
    await page.fill('#unknown-rows input[data-word="küle"]', "y ə");
    await page.fill('#unknown-rows input[data-word="nacht"]', "a");
    await page.click("#use-words");
    await page.waitForSelector("#unknown", { state: "hidden" });
    await step(page, "plan");
    const { text } = await saved(page, "#save-json");
    assert.deepEqual(JSON.parse(text).notes.map(({ ipa }) => ipa), ["y", "ə", "a"]);
    await step(page, "song");
    await page.click('#view-song summary:has-text("Words corrected")');
    writeFileSync(join(scratch, "words.yaml"), (await saved(page, "#save-words")).text);
    assert.equal(text, native(["plan", "german.yaml", "--singer", "mezzo", "--words", "words.yaml", "--as", "json"]));
})));

test("a range, its strips and the map of resonances", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "song");
    await page.click('summary:has-text("Or a range")');
    await page.fill("#range", "A3..C5");
    await page.click("#use-range");
    await page.waitForSelector("#strips svg");
    await done(page);
    assert.equal((await saved(page, "#save-json")).text, native(["plan", "--range", "A3..C5", "--singer", "mezzo", "--vowels", "i e a o u", "--as", "json"]));
    // The map follows the slider: the same words as the program's map of that note.
    await page.click("#d-map summary");
    await page.waitForSelector("#map svg");
    const words = () => page.$$eval("#map svg text", (all) => all.map((one) => one.textContent).join("\n"));
    const before = await words();
    await page.locator("#map-pitch").fill("66");
    assert.equal(await page.textContent("#map-pitch-name"), "F♯4");
    await page.waitForFunction((was) => [...document.querySelectorAll("#map svg text")].map((one) => one.textContent).join("\n") !== was, before);
    await done(page);
    assert.match(await words(), /F♯4/);
})));

test("a song typed as syllables and pitches is planned", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "song");
    await page.click('summary:has-text("Or type notes")');
    const typed = await page.inputValue("#notes-text");
    await page.click("#use-notes");
    await page.waitForFunction(() => document.getElementById("song-is").textContent.includes("Rising fifths"));
    await done(page);
    await step(page, "plan");
    await page.waitForSelector("#sheet svg");
    await done(page);
    writeFileSync(join(scratch, "typed.song"), typed);
    assert.equal((await saved(page, "#save-json")).text, native(["plan", "typed.song", "--singer", "mezzo", "--as", "json"]));
})));

test("voices are compared as the program compares them", () => with_browser((browser) => with_page(browser, async (page) => {
    await step(page, "voices");
    await page.waitForSelector("#voices-chart svg");
    assert.equal(await page.textContent("#voices-text"), native_text(["compare", "--voices", "--vowels", "i e a o u"]));
})));

test("the page in German says every word in German", () => with_browser((browser) => with_page(browser, async (page) => {
    assert.equal(await page.textContent("#h-singer"), "Stimme");
    const empty = await page.evaluate(() => [...document.querySelectorAll("[data-t]")].filter((e) => !e.textContent.trim()).map((e) => e.dataset.t));
    assert.deepEqual(empty, []);
    // What the module says is what the program says in German.
    await with_demo(page);
    await step(page, "plan");
    const { text } = await saved(page, "#save-json");
    assert.equal(text, native(["plan", song, "--singer", singer, "--say", "de", "--as", "json"]));
    assert.notEqual(text, native(["plan", song, "--singer", singer, "--as", "json"]));
    assert.match(await page.locator("#sheet .bands").evaluate((bands) => bands.textContent), /Lippen/);
}, { locale: "de-DE" })));

test("from a host the page goes on without a connection", () => with_browser(async (browser) => {
    const host = await hosted();
    await with_page(browser, async (page, context) => {
        await page.evaluate(() => navigator.serviceWorker.ready);
        host.close();
        await context.setOffline(true);
        await page.reload();
        await page.waitForSelector("html[data-ready]", { state: "attached" });
        await step(page, "song");
        await page.click("#demo");
        await page.waitForFunction(() => document.getElementById("song-is").textContent);
        await step(page, "plan");
        await page.waitForSelector("#sheet svg.spots rect");
    }, { url: host.url });
}));

test("the synthesiser, loaded when asked for, says the words as the native one does", () => with_browser(async (browser) => {
    const host = await hosted();
    await with_page(browser, async (page) => {
        const german = join(root, "tests/data/scores/lieder/brahms_magdalena.mxl");
        await open_song(page, german);
        await page.click("#load-synthesiser");
        await page.waitForSelector("#unknown", { state: "hidden", timeout: 120000 });
        await done(page);
        await step(page, "plan");
        const vowels = (text) => JSON.parse(text).notes.map(({ ipa }) => ipa).join(" ");
        assert.equal(vowels((await saved(page, "#save-json")).text), vowels(native(["plan", german, "--singer", "mezzo", "--as", "json"])));
    }, { url: host.url });
    host.close();
}));
