// SPDX-License-Identifier: MIT
// What is heard: the program's sounds, a list that follows them, a cursor that walks.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { done, native, root, scratch, step, with_browser, with_demo, with_page } from "./browser.mjs";

const song = join(root, "charts/demo/giusto_amor.mxl"), singer = join(root, "charts/demo/serafina_quill.yaml");

/** Seconds of a WAV file of the program. */
function length_of(args) {
    native(["hear", ...args, "-o", "heard.wav"]);
    const bytes = readFileSync(join(scratch, "heard.wav")), data = bytes.indexOf("data");
    return bytes.readUInt32LE(data + 4) / bytes.readUInt32LE(28); // bytes, bytes a second
}
const heard = (page) => page.evaluate(() => window.last_heard);
async function played(page, click) {
    await page.evaluate(() => { window.last_heard = null; });
    await click();
    await page.waitForFunction(() => window.last_heard && !document.getElementById("stop").disabled);
    return heard(page);
}
const near = (ours, theirs, what) => assert.ok(Math.abs(ours - theirs) < 0.01, `${what}: ${ours} s, ${theirs} s`);

test("a vowel, a note and a line sound as long as the program's, and are followed", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await step(page, "hear");
    await page.selectOption("#hear-which", "a");
    for (const [what, args] of [["", []], ["whisper", ["--only", "whisper"]], ["glide", ["--glide"]]]) {
        await page.selectOption("#hear-what", what);
        const { seconds, loudness } = await played(page, () => page.click("#hear-vowel"));
        near(seconds, length_of(["--singer", singer, "--vowel", "a", ...args]), `vowel ${what}`);
        assert.ok(loudness < -15 && loudness > -40, `${loudness} LUFS`);
        await page.click("#stop");
        assert.ok(await page.isDisabled("#stop"));
    }
    // The list says what is heard, and where it is now.
    await page.selectOption("#hear-what", "");
    await played(page, () => page.click("#hear-vowel"));
    const first = await page.textContent("#heard-list li.now");
    await page.waitForFunction((before) => document.querySelector("#heard-list li.now")?.textContent !== before, first);
    await page.click("#stop");

    await page.locator('#line-sheet rect[role="button"]').nth(5).click();
    const { seconds } = await played(page, () => page.click('[data-hear-note="kept"]'));
    assert.ok(seconds > 1.5 && seconds < 4, `${seconds} s`);
    await page.click("#stop");

    await page.fill("#line-from", "2");
    await page.fill("#line-to", "3");
    await page.fill("#line-tempo", "90");
    const line = await played(page, () => page.click("#play-line"));
    near(line.seconds, length_of([song, "--singer", singer, "--from", "2", "--to", "3", "--tempo", "90"]), "line");
    const at = () => page.getAttribute("#line-sheet .cursor", "d");
    await page.waitForFunction(() => document.querySelector("#line-sheet .cursor").getAttribute("d"));
    const was = await at();
    await page.waitForFunction((before) => document.querySelector("#line-sheet .cursor").getAttribute("d") !== before, was);
    await step(page, "song"); // leaving the step ends the sound
    await step(page, "hear");
    assert.ok(await page.isDisabled("#stop"));
    await done(page);
})));

test("bars are heard over and over, at the tempo asked for, without a click where they begin again", () => with_browser((browser) => with_page(browser, async (page) => {
    await with_demo(page);
    await page.evaluate(() => {
        const Source = window.AudioBufferSourceNode; // what the page hands to the sound card
        window.AudioBufferSourceNode = class extends Source {
            constructor(context, options) {
                super(context, options);
                window.given = options;
            }
        };
    });
    await step(page, "hear");
    await page.check("#loop");
    await page.fill("#line-from", "2");
    await page.fill("#line-to", "2");
    const seconds = [];
    for (const tempo of [120, 240]) {
        await page.fill("#line-tempo", String(tempo));
        seconds.push((await played(page, () => page.click("#play-line"))).seconds);
        near(seconds.at(-1), length_of([song, "--singer", singer, "--from", "2", "--to", "2", "--tempo", String(tempo), "--overwrite"]), `tempo ${tempo}`);
    }
    // A bar of four quarter notes: two seconds, and one; what rings on after it is the same.
    assert.ok(Math.abs(seconds[0] - seconds[1] - 1) < 0.02, `${seconds}`);
    const { loop, joint, within, peak } = await page.evaluate(() => {
        const { loop, buffer } = window.given, data = buffer.getChannelData(0);
        let within = 0, peak = 0;
        for (let i = 1; i < data.length; ++i) {
            within = Math.max(within, Math.abs(data[i] - data[i - 1]));
            peak = Math.max(peak, Math.abs(data[i]));
        }
        return { loop, joint: Math.abs(data[0] - data.at(-1)), within, peak };
    });
    assert.equal(loop, true);
    assert.ok(peak > 0.01 && joint < within / 10, `from the end to the beginning ${joint}, within ${within}`);
    // The cursor comes back to where it began, and the sound goes on.
    await page.waitForFunction(() => {
        const now = Number(document.querySelector("#line-sheet .cursor").getAttribute("d")?.match(/M([\d.]+)/)?.[1] ?? 0);
        if (now > 0 && window.was > now + 5) window.returned = (window.returned ?? 0) + 1;
        if (now > 0) window.was = now;
        return window.returned >= 2;
    });
    assert.ok(!(await page.isDisabled("#stop")));
    await page.click("#stop");
    assert.ok(await page.isDisabled("#stop"));
})));
