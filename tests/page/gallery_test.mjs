// SPDX-License-Identifier: MIT
// The pictures in docs/page still show what the page shows: compared by their words, which stand beside them.
import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { root, with_browser } from "./browser.mjs";
import { in_scene, scenes } from "./scenes.mjs";

const told = readFileSync(join(root, "docs/page.md"), "utf8");
for (const scene of scenes)
    test(`the picture ${scene.name} is not stale`, () => with_browser((browser) => in_scene(browser, scene, (page, words) => {
        assert.ok(told.includes(`page/${scene.name}.png`) && existsSync(join(root, `docs/page/${scene.name}.png`)), "it is shown");
        assert.equal(words, readFileSync(join(root, `docs/page/${scene.name}.txt`), "utf8"), "sh tests/page/gallery.sh makes it anew");
    })));
