// SPDX-License-Identifier: MIT
// The page's side of the workers: questions to the module as promises. One worker plans; another, started when the
// microphone is first used, listens, so that neither waits for the other.
import { asset, compiled, worker_url } from "./assets.mjs";

const faces = [
    { family: "Charis SIL", file: "text.woff2", weight: "400", style: "normal" },
    { family: "Charis SIL", file: "text_bold.woff2", weight: "700", style: "normal" },
    { family: "Charis SIL", file: "text_italic.woff2", weight: "400", style: "italic" },
    { family: "Noto Music", file: "music.woff2", weight: "400", style: "normal" },
];

const workers = [], said = {};
/** What a synthesiser says of words ("it amor": its IPA), for every worker. */
export async function tell_said(words) {
    Object.assign(said, words);
    for (const ask of workers) await ask("said", words);
}

let brought = null;
/** The module, compiled once for all workers, and the fonts, which are given to the page too. */
async function bring() {
    const [packed, ...files] = await Promise.all([asset("vowelway.wasm.gz"), ...faces.map((face) => asset(face.file))]);
    const fonts = faces.map((face, i) => ({ ...face, bytes: files[i] }));
    for (const { family, bytes, weight, style } of fonts)
        document.fonts.add(await new FontFace(family, bytes, { weight, style }).load());
    return { wasm: await compiled(packed), fonts };
}

/** A worker with a module of its own. `heard` is called with what it says unasked. */
export async function started_worker(heard = () => {}) {
    brought ??= bring();
    const { wasm, fonts } = await brought;
    const worker = new Worker(worker_url());
    const waiting = new Map();
    let last = 0;
    worker.onmessage = ({ data }) => {
        if (data.live) return heard(data.live);
        waiting.get(data.id)?.(data.answer);
        waiting.delete(data.id);
    };
    const ask = (name, request, bytes, transfer = []) => new Promise((resolve) => {
        const id = ++last;
        waiting.set(id, resolve);
        worker.postMessage({ id, name, request, bytes }, transfer);
    });
    const begun = await ask("begin", { wasm, fonts, tongue: document.documentElement.lang });
    if (begun.error) throw new Error(begun.error.wrong);
    await ask("said", said);
    workers.push(ask);
    return ask;
}

const planner = started_worker();
planner.catch(() => {}); // told by whoever asks first
export const module_ready = planner;

/** One of the door's functions, or `look`. Answers {text, ..} or {error}. */
export const ask = async (name, request, bytes) => (await planner)(name, request, bytes);

/** The sheet of a plan or its pencil view; throws what is wrong. */
export async function sheet_of(request, bytes) {
    const { sheet, error } = await ask("sheet", request, bytes);
    if (error) throw error;
    return sheet;
}

/** An answer that is JSON; throws what is wrong. */
export function answer_of({ text, error, ...more }) {
    if (error) throw error;
    return { ...JSON.parse(text), ...more };
}
export const told = async (name, request, bytes) => answer_of(await ask(name, request, bytes));
