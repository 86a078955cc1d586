// SPDX-License-Identifier: MIT
// The page from its parts: one file that holds everything, and the same as a folder for a static host.
//   node build.mjs SOURCES MODULE_FOLDER FONTS_FOLDER NODE_MODULES OUT
import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join, resolve } from "node:path";
import { gzipSync } from "node:zlib";

const [sources, module_folder, fonts_folder, node_modules, out] = process.argv.slice(2).map((path) => resolve(path));
const esbuild = createRequire(join(node_modules, "x.js"))("esbuild");
const root = join(sources, "../../..");

/** The inks of a theme as properties of the style sheet: the file is the charts' own. */
function inks(theme) {
    const lines = readFileSync(join(root, "profiles/themes", `${theme}.yaml`), "utf8").matchAll(/^ {2}(\w+): "(#\w{6})"/gm);
    return [...lines].map(([, name, colour]) => `--${name.replace("_", "-")}:${colour}`).join(";");
}
const style_source = `:root{color-scheme:light;${inks("paper")}}` +
    `:root[data-theme=night]{color-scheme:dark;${inks("night")}}` + readFileSync(join(sources, "style.css"), "utf8");
const style = esbuild.transformSync(style_source, { loader: "css", minify: true }).code;

async function bundled(entry) {
    const built = await esbuild.build({
        entryPoints: [join(sources, entry)], bundle: true, minify: true, format: "iife", write: false, target: "es2022",
        nodePaths: [node_modules], charset: "utf8", legalComments: "inline",
        alias: { "vowelway-door": join(module_folder, "door.mjs") },
    });
    return built.outputFiles[0].text;
}
const scripts = { main: await bundled("main.mjs"), "worker.js": await bundled("work.mjs"), "listener.js": await bundled("listener.mjs") };
const files = {
    "vowelway.wasm.gz": gzipSync(readFileSync(join(module_folder, "vowelway.wasm")), { level: 9 }),
    ...Object.fromEntries(["text", "text_bold", "text_italic", "music"].map((name) => [`${name}.woff2`, readFileSync(join(fonts_folder, `${name}.woff2`))])),
    "giusto_amor_said.json": readFileSync(join(sources, "giusto_amor_said.json")),
    "giusto_amor.mxl": readFileSync(join(root, "charts/demo/giusto_amor.mxl")),
};

// The browser is told what may run and that nothing may be fetched but from where the page came.
const hash = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
const policy = (rules) => `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; base-uri 'none'; form-action 'none'; ${rules}">`;
const html = readFileSync(join(sources, "index.html"), "utf8");
const fill = (parts) => html.replace(/<!--(\w+)-->/g, (_, name) => parts[name] ?? "");

const one = fill({
    policy: policy(`script-src ${hash(scripts.main)} 'wasm-unsafe-eval' blob: data:; worker-src blob: data:; style-src ${hash(style)}; img-src data: blob:; media-src blob: data:`),
    style: `<style>${style}</style>`,
    script: `<script>${scripts.main}</script>`,
    assets: [...Object.entries(files), ...["worker.js", "listener.js"].map((name) => [name, Buffer.from(scripts[name])])]
        .map(([name, bytes]) => `<script type="text/plain" id="asset-${name}">${Buffer.from(bytes).toString("base64")}</script>`).join("\n") +
        '\n<script type="application/json" id="lesson"></script>',
});
const folder_policy = "script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; connect-src 'self'; style-src 'self'; img-src 'self' data: blob:; media-src blob:; manifest-src 'self'";
const index = fill({
    policy: policy(folder_policy),
    style: '<link rel="stylesheet" href="style.css"><link rel="manifest" href="manifest.webmanifest"><link rel="icon" href="icon.svg">',
    script: '<script src="main.js"></script>',
    assets: '<script type="application/json" id="lesson"></script>',
}).replace('<html lang="en">', '<html lang="en" data-folder="yes">');

rmSync(out, { recursive: true, force: true });
mkdirSync(join(out, "folder"), { recursive: true });
writeFileSync(join(out, "vowelway.html"), one);
const folder = { "index.html": index, "main.js": scripts.main, "worker.js": scripts["worker.js"], "listener.js": scripts["listener.js"], "style.css": style, ...files };
for (const name of ["icon.svg", "manifest.webmanifest"]) folder[name] = readFileSync(join(sources, name));
// The age of the folder is what is in it: a changed file is a new cache.
const age = createHash("sha256").update(Object.values(folder).map((bytes) => createHash("sha256").update(bytes).digest("hex")).join()).digest("hex").slice(0, 16);
folder["sw.js"] = readFileSync(join(sources, "sw.js"), "utf8").replace("AGE", age).replace("[/*files*/]", JSON.stringify(["./", ...Object.keys(folder)]));
for (const [name, bytes] of Object.entries(folder)) writeFileSync(join(out, "folder", name), bytes);
// A program of its own under a licence of its own, loaded only when a person asks for it; the page is whole without.
const synthesiser = join(node_modules, "../../synthesiser/node_modules/espeak-ng");
mkdirSync(join(out, "folder/synthesiser"));
for (const name of ["dist/espeak-ng.js", "dist/espeak-ng.wasm", "LICENSE", "README.md"])
    copyFileSync(join(synthesiser, name), join(out, "folder/synthesiser", basename(name)));
for (const [what, bytes] of [["vowelway.html", one.length], ["worker.js", scripts["worker.js"].length], ["main.js", scripts.main.length]]) console.log(`${what} ${Math.round(bytes / 1000)} kB`);
