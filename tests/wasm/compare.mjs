// SPDX-License-Identifier: MIT
// The module and the native program say the same: plans byte for byte, measurements of the same samples too.
//   node compare.mjs PROGRAM PRONOUNCE FOLDER_OF_THE_MODULE SCRATCH
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const [program, pronouncer, folder, scratch] = process.argv.slice(2);
const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../..");
const { open_door } = await import(pathToFileURL(join(folder, "door.mjs")));
// A text is half its size wide a letter: enough to set a page, the same everywhere.
const measure_text = (text, { size }) => {
    const advance = [...text].length * size / 2;
    return { advance, left: 0, right: advance, above: 0.7 * size, below: 0.2 * size };
};
// The words' sounds come from the synthesiser of the native program; each is asked for once.
const known = new Map();
function pronounce(word, language) {
    const key = `${language} ${word}`;
    if (!known.has(key)) {
        const run = spawnSync(pronouncer, [language, word], { encoding: "utf8" });
        if (run.status !== 0) throw new Error(`${pronouncer} ${key}: ${run.status}`);
        known.set(key, run.stdout);
    }
    return known.get(key);
}
const bytes_of_module = readFileSync(join(folder, "vowelway.wasm"));
const door = await open_door(bytes_of_module, { measure_text, pronounce });

let failures = 0;
function report(name, same, detail = "") {
    console.log(`${same ? "equal" : "DIFFERS"}  ${name}  ${detail}`);
    if (!same) ++failures;
}

function native(args) {
    const started = process.hrtime.bigint();
    const run = spawnSync(program, args, { cwd: scratch, encoding: "utf8", maxBuffer: 1 << 28 });
    const ms = Number(process.hrtime.bigint() - started) / 1e6;
    if (run.status !== 0) throw new Error(`${program} ${args.join(" ")}: ${run.status}\n${run.stderr}`);
    return { text: run.stdout, ms };
}

function timed(work) {
    const started = process.hrtime.bigint();
    const answer = work();
    return { ...answer, ms: Number(process.hrtime.bigint() - started) / 1e6 };
}

function compare(name, args, work) {
    work(); // so that no time below is that of the synthesiser or of the compiler of the module
    const ours = native(args), theirs = timed(work);
    if (theirs.error) return report(name, false, JSON.stringify(theirs.error));
    if (ours.text !== theirs.text) {
        writeFileSync(join(scratch, `${basename(name)}.native.json`), ours.text);
        writeFileSync(join(scratch, `${basename(name)}.module.json`), theirs.text);
    }
    report(name, ours.text === theirs.text && ours.text.length > 100,
           `${ours.text.length} bytes, native ${ours.ms.toFixed(0)} ms with its start, module ${theirs.ms.toFixed(0)} ms`);
}

// A compressed score is unpacked for both.
function unpacked(file) {
    const run = spawnSync("unzip", ["-p", file, "*.xml", "-x", "META-INF/*"], { maxBuffer: 1 << 28 });
    if (run.status !== 0) throw new Error(`unzip ${file}: ${run.stderr}`);
    const name = basename(file, ".mxl") + ".musicxml";
    writeFileSync(join(scratch, name), run.stdout);
    return name;
}

for (const { score, singer, ...request } of JSON.parse(readFileSync(join(here, "songs.json")))) {
    const file = unpacked(join(root, score));
    const args = ["plan", file, "--as", "json", "--singer"];
    if (singer.endsWith(".yaml")) {
        args.push(join(root, singer));
        request.singer = { profile: readFileSync(join(root, singer), "utf8"), file: singer };
    } else {
        args.push(singer);
        request.singer = { voice: singer };
    }
    for (const key of ["technique", "language", "transpose"])
        if (key in request) args.push(`--${key}`, String(request[key]));
    compare(file, args, () => door.plan({ ...request, file }, readFileSync(join(scratch, file))));
}

// 16 bits, one channel, 16 kHz: the sample divided by 2^15, in the native decoder and here.
function samples(file) {
    const bytes = readFileSync(file);
    const at = bytes.indexOf("data") + 8;
    const out = new Float32Array(bytes.readUInt32LE(at - 4) / 2);
    for (let i = 0; i < out.length; ++i) out[i] = bytes.readInt16LE(at + 2 * i) / 32768;
    return out;
}
const demo = "charts/demo/ottavio_brandt.yaml";
for (const [vowel, known, singer] of [
    ["a", ["--voice", "baritone"], { voice: "baritone" }],
    ["i", ["--singer", join(root, demo)], { profile: readFileSync(join(root, demo), "utf8"), file: demo }]]) {
    const file = join(root, `tests/data/measuring/espeak_fi_${vowel}.wav`);
    compare(basename(file), ["measure", file, "--vowels", vowel, ...known, "--as", "json"], () =>
        door.measure({ file, vowels: vowel, rate_hz: 16000, singer }, samples(file)));
}

// Charts are set with the measurer given; what is drawn comes from the plan.
const request = { singer: { profile: readFileSync(join(root, "charts/demo/ottavio_brandt.yaml"), "utf8") }, file: "giusto_amor.musicxml" };
const score = readFileSync(join(scratch, "giusto_amor.musicxml"));
const pages = JSON.parse(door.draw(request, score).text ?? '{"pages": []}').pages;
report("charts of giusto_amor", pages.length >= 2 && pages.every(page => {
    writeFileSync(join(scratch, "page.svg"), page);
    return spawnSync("xmllint", ["--noout", join(scratch, "page.svg")]).status === 0;
}) && pages[0].includes("Ottavio Brandt"), `${pages.length} pages, ${pages.join("").length} characters`);
const unmeasured = (await open_door(bytes_of_module, { pronounce })).draw(request, score);
const mute = (await open_door(bytes_of_module, { measure_text })).plan(request, score);
report("no synthesiser", mute.error?.outcome === 3 && /pronounced/.test(mute.error.wrong), mute.error?.wrong);
report("no way to measure a text", unmeasured.error?.outcome === 3, unmeasured.error?.wrong);

const packed = door.plan({ ...request, file: "song.mxl" }, readFileSync(join(root, "charts/demo/giusto_amor.mxl")));
report("a score still compressed", packed.error?.outcome === 3 && packed.error.file === "song.mxl", packed.error?.wrong);

// What is wrong comes back as a value with its place, as the program prints it.
const wrong = door.plan({ singer: { profile: "vowelway: 1\nsinger: x\nvoice: tenor\nvowles: {}\n", file: "me.yaml" } });
report("a key of a profile misspelled", wrong.error?.outcome === 3 && wrong.error.file === "me.yaml" && wrong.error.line === 4,
       wrong.error?.wrong);
const broken = door.plan({ singer: { voice: "tenor" }, file: "s.xml" }, new TextEncoder().encode("<score-partwise>"));
report("a score cut short", broken.error?.outcome === 3 && broken.error.file === "s.xml", broken.error?.wrong);

process.exit(failures ? 1 : 0);
