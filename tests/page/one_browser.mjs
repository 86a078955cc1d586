// SPDX-License-Identifier: MIT
// Starts one browser for all tests that ask for nothing special, and runs a command beside it.
//   node one_browser.mjs COMMAND ..
import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import { join } from "node:path";

const { chromium } = createRequire(join(process.env.VOWELWAY_NODE_MODULES, "x.js"))("playwright-core");
const server = await chromium.launchServer({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
const [command, ...args] = process.argv.slice(2);
const run = spawn(command, args, { stdio: "inherit", env: { ...process.env, VOWELWAY_BROWSER: server.wsEndpoint() } });
run.on("close", async (code) => {
    await server.close();
    process.exit(code ?? 1);
});
