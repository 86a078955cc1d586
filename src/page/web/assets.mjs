// SPDX-License-Identifier: MIT
// What the page brings with it: inside the one file as text, or beside it in the folder.
const inside = (name) => document.getElementById(`asset-${name}`);

function from_base64(text) {
    if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text); // 2025; much quicker
    const all = atob(text), out = new Uint8Array(all.length);
    for (let i = 0; i < all.length; ++i) out[i] = all.charCodeAt(i);
    return out;
}

/** The bytes of an asset. */
export async function asset(name) {
    const element = inside(name);
    if (element) return from_base64(element.textContent.trim());
    const answer = await fetch(name);
    if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
    return new Uint8Array(await answer.arrayBuffer());
}

const text_inside = (name) => new TextDecoder().decode(from_base64(inside(name).textContent.trim()));

/** Where the worker comes from. */
export function worker_url() {
    if (!inside("worker.js")) return "worker.js";
    return URL.createObjectURL(new Blob([text_inside("worker.js")], { type: "text/javascript" }));
}

/** Where a script of the audio thread comes from; of a file on the disk the browser takes it as data alone. */
export function script_url(name) {
    if (!inside(name)) return name;
    return `data:text/javascript;base64,${inside(name).textContent.trim()}`;
}

/** A module packed by gzip, unpacked and compiled by the browser as it comes. */
export function compiled(bytes) {
    const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
    return WebAssembly.compileStreaming(new Response(stream, { headers: { "Content-Type": "application/wasm" } }));
}

/** A song and a singer that came with the page (vowelway page), or nothing. */
export function lesson() {
    const element = document.getElementById("lesson");
    if (!element || !element.textContent.trim()) return null;
    const given = JSON.parse(element.textContent);
    return { ...given, bytes: from_base64(given.song.base64) };
}
