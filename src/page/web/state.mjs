// SPDX-License-Identifier: MIT
// What the person chose, kept in this browser alone. Where the browser keeps nothing, the page still works.
const key = "vowelway";

export const state = {
    singer: { voice: "mezzo" }, // or {profile, file}
    song: null,                 // {file, bytes}
    range: { range: "", vowels: "i e a o u" },
    part: "", verse: "", transpose: "", language: "", technique: "classical",
    words: {},                  // a word -> its vowels, as typed
    words_text: "",             // the word list that came with a lesson
    tongue: "", look: "",       // language and theme of the page; empty: as the device says
};

const kept = ["singer", "range", "technique", "words", "tongue", "look"];

export function remember() {
    try {
        localStorage.setItem(key, JSON.stringify(Object.fromEntries(kept.map((name) => [name, state[name]]))));
    } catch { /* private windows keep nothing */ }
}

export function recall() {
    try {
        const said = JSON.parse(localStorage.getItem(key) ?? "{}");
        for (const name of kept) if (name in said) state[name] = said[name];
    } catch { /* nothing kept */ }
}

/** The word list as the program reads it: that of a lesson, and what was corrected here. */
export function words_file() {
    const lines = Object.entries(state.words).filter(([, ipa]) => ipa.trim());
    if (!lines.length) return state.words_text;
    return (state.words_text || "vowelway: 1\nwords:\n") + lines.map(([word, ipa]) => `  ${JSON.stringify(word)}: ${JSON.stringify(ipa)}\n`).join("");
}

/** The request that every question about the song shares. */
export function request() {
    const out = { singer: state.singer, technique: state.technique };
    if (state.song) {
        out.file = state.song.file;
        if (state.part) out.part = state.part;
        if (state.verse) out.verse = Number(state.verse);
        if (state.transpose !== "") out.transpose = Number(state.transpose);
        if (state.language) out.language = state.language;
        const words = words_file();
        if (words) out.words = words;
    } else {
        if (state.range.range) out.range = state.range.range;
        if (state.range.vowels) out.vowels = state.range.vowels;
    }
    return out;
}
export const song_bytes = () => state.song?.bytes ?? new Uint8Array();
