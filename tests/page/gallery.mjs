// SPDX-License-Identifier: MIT
// Makes the pictures in docs/page and the words beside them:  sh tests/page/gallery.sh
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root, with_browser } from "./browser.mjs";
import { in_scene, scenes } from "./scenes.mjs";

const folder = join(root, "docs/page");
mkdirSync(folder, { recursive: true });
await with_browser(async (browser) => {
    for (const scene of scenes)
        await in_scene(browser, scene, async (page, words) => {
            await page.screenshot({ path: join(folder, `${scene.name}.png`) });
            writeFileSync(join(folder, `${scene.name}.txt`), words);
        });
});
