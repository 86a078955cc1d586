// SPDX-License-Identifier: MIT
// What the person chose, kept in this browser alone. Where the browser keeps nothing, the page still works.
const key = "vowelway";
let own_key = key; // a lesson keeps its singer and words apart: they are not the student's own

export const state = {
    singer: { voice: "mezzo" }, // or {profile, file}
    song: null,                 // {file, bytes}
    range: { range: "", vowels: "i e a o u" },
    part: "", verse: "", transpose: "", language: "", technique: "classical",
    words: {},                  // a word -> its vowels, as typed
    words_text: "", draws: "", a4_hz: "", // what came with a lesson besides
    moved: null,                // {note, semitones}: one note tried elsewhere
    view: "pencil",             // of a song: the pencil view, or the sheet that says why
    tongue: "", look: "", cents: false, // language and theme of the page (empty: as the device says); pitches to the cent
};

const of_browser = ["tongue", "look", "cents", "view"], of_singer = ["singer", "range", "technique", "words"];

function stored(name) {
    try {
        return JSON.parse(localStorage.getItem(name) ?? "{}");
    } catch {
        return {}; // nothing kept
    }
}
function store(name, fields) {
    try {
        localStorage.setItem(name, JSON.stringify({ ...stored(name), ...Object.fromEntries(fields.map((field) => [field, state[field]])) }));
    } catch { /* private windows keep nothing */ }
}
function take(from, fields) {
    for (const field of fields) if (field in from) state[field] = from[field];
}

export function remember() {
    store(key, of_browser);
    store(own_key, of_singer);
}

/** What was kept; of a lesson, what came with it and then what was changed in it. */
export function recall(lesson, song) {
    take(stored(key), of_browser);
    if (lesson) {
        own_key = `${key} lesson ${JSON.stringify([lesson.song.file, lesson.song.base64.length, lesson.singer.file ?? lesson.singer.voice, lesson.settings])}`;
        Object.assign(state, lesson.settings, { singer: lesson.singer, song });
    }
    take(stored(own_key), of_singer);
}

/** The words corrected here, as a word list of the program. */
export function words_file() {
    const lines = Object.entries(state.words).filter(([, ipa]) => ipa.trim());
    return lines.length ? `vowelway: 1\nwords:\n${lines.map(([word, ipa]) => `  ${JSON.stringify(word)}: ${JSON.stringify(ipa)}\n`).join("")}` : "";
}

/** The request that every question about the song shares. */
export function request() {
    const out = { singer: state.singer, technique: state.technique };
    if (state.a4_hz) out.a4_hz = state.a4_hz;
    if (state.draws !== "") out.draws = state.draws;
    if (state.song) {
        out.file = state.song.file;
        if (state.part) out.part = state.part;
        if (state.verse) out.verse = state.verse === "all" ? "all" : Number(state.verse);
        if (state.transpose !== "") out.transpose = Number(state.transpose);
        if (state.language) out.language = state.language;
        const words = [state.words_text, words_file()].filter(Boolean);
        if (words.length) out.words = words;
        if (state.moved?.semitones) out.moved = state.moved;
    } else {
        if (state.range.range) out.range = state.range.range;
        if (state.range.vowels) out.vowels = state.range.vowels;
    }
    return out;
}
export const song_bytes = () => state.song?.bytes ?? new Uint8Array();

/** A pitch as people read it; to the cent where they ask for it. */
export const pitch_words = ({ pitch, cents }) => (state.cents && cents ? `${pitch} ${cents > 0 ? "+" : "−"}${Math.abs(cents)} c` : pitch);
