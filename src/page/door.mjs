// SPDX-License-Identifier: MIT
// The module as a few functions: values in, text out. What is wrong comes back as a value, never as an exception.
import load_vowelway from "./vowelway.mjs";

/**
 * Opens the module from the bytes of vowelway.wasm, or from what WebAssembly.compile made of them. What a page may bring:
 * measure_text(text, {family, size, bold, italic}) answers {advance, left, right, above, below} in points, for charts;
 * pronounce(word, language) answers IPA as espeak-ng writes it, or nothing.
 */
export async function open_door(wasm, { measure_text, pronounce } = {}) {
    const instantiateWasm = (imports, done) => {
        WebAssembly.instantiate(wasm, imports).then((instance) => done(instance, wasm));
        return {}; // comes later
    };
    const module = await load_vowelway({ ...(wasm instanceof WebAssembly.Module ? { instantiateWasm } : { wasmBinary: wasm }), measure_text, pronounce });
    const utf8 = new TextEncoder();

    function call(name, request, bytes, count) {
        const words = utf8.encode(JSON.stringify(request));
        const at = module._malloc(words.length + 8 + bytes.length);
        const bytes_at = (at + words.length + 7) & ~7; // samples are read as floats
        module.HEAPU8.set(words, at);
        module.HEAPU8.set(bytes, bytes_at);
        const outcome = module[name](at, words.length, bytes_at, count);
        module._free(at);
        const from = module._vowelway_answer();
        const text = new TextDecoder().decode(module.HEAPU8.slice(from, from + module._vowelway_answer_size()));
        return outcome === 0 ? { text } : { error: { ...JSON.parse(text), outcome } };
    }

    return {
        /** The plan of a score: its bytes, MusicXML or a passage in YAML; none for a range. */
        plan: (request, score = new Uint8Array()) => call("_vowelway_plan", request, score, score.length),
        /** Its charts, {"pages": [SVG, ..]}, as a text. */
        draw: (request, score = new Uint8Array()) => call("_vowelway_draw", request, score, score.length),
        /** Everything else by the name in `request.ask` (README.md), as a text. */
        ask: (request, bytes = new Uint8Array()) => call("_vowelway_ask", request, bytes, bytes.length),
        /** Sound: {text, samples}, a Float32Array of one channel at the rate that the text tells. */
        hear(request, score = new Uint8Array()) {
            const said = call("_vowelway_hear", request, score, score.length);
            if (said.error) return said;
            const from = module._vowelway_samples() >> 2;
            return { ...said, samples: module.HEAPF32.slice(from, from + module._vowelway_samples_size()) };
        },
        /** Practising: the aim of a vowel or a note; then `live` with samples at 16 kHz as they come. */
        practise: (request, score = new Uint8Array()) => call("_vowelway_practise", request, score, score.length),
        live: (samples) =>
            call("_vowelway_live", {}, new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength), samples.length),
        /** The measurement of a recording: a Float32Array of one channel at 16 kHz. */
        measure: (request, samples) =>
            call("_vowelway_measure", request,
                 new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength), samples.length),
    };
}
