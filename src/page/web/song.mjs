// SPDX-License-Identifier: MIT
// The step of the song: a score, a range, or typed notes; how it is read; the words that nobody has told.
import { $, el, save_file } from "./dom.mjs";
import { semitones, t } from "./messages.mjs";
import { tell_said, told } from "./module.mjs";
import { score_of } from "./score_file.mjs";
import { request, song_bytes, state, words_file } from "./state.mjs";

const sample = `title: Rising fifths
tempo: 66
time: 4/4
language: la
a- F4 2
mi- C5 2
rest
ci F5 3
`;

function transpositions() {
    const named = { "": "octave_fits", 0: "octave_written", 12: "octave_up", "-12": "octave_down" };
    const name = (n) => (named[n] ? t(named[n]) : semitones(Number(n)));
    const all = new Set(["", 0, 12, -12, ...[1, 2, 3, 4, 5, 6, 7].flatMap((n) => [n, -n]), state.transpose].map(String));
    return [...all].map((n) => el("option", { value: n }, name(n)));
}

export function song_step(page, asset) {
    /** Word rows: what was corrected, each to be changed or emptied. */
    function show_words() {
        $("word-rows").replaceChildren(...Object.entries(state.words).map(([word, ipa]) =>
            el("label", {}, el("span", {}, word), el("input", {
                value: ipa, lang: "und", "aria-label": t("vowels_of", { word }),
                onchange: ({ target }) => set_words({ [word]: target.value }),
            }))));
        $("save-words").disabled = !words_file();
    }
    async function set_words(more) {
        Object.assign(state.words, more);
        for (const [word, ipa] of Object.entries(state.words)) if (!ipa.trim()) delete state.words[word];
        show_words();
        page.changed();
        await look();
    }
    function show_unknown(unknown) {
        $("unknown").hidden = !unknown.length;
        $("unknown-rows").replaceChildren(...unknown.map(({ word, language }) =>
            el("label", {}, el("span", {}, word), el("input", { "data-word": word, "data-language": language, autocomplete: "off", autocapitalize: "off", "aria-label": t("vowels_of", { word }) }))));
    }
    /** What was typed; of a word left empty the vowels are guessed from its letters. */
    async function use_words() {
        const boxes = [...document.querySelectorAll("#unknown-rows input")];
        const empty = new Set(boxes.filter((box) => !box.value.trim()).map((box) => box.dataset.word));
        await tell_said(Object.fromEntries(state.missing.filter(({ word }) => empty.has(word))
            .flatMap(({ language, asks }) => asks.map((word) => [`${language} ${word}`, ""]))));
        await set_words(Object.fromEntries(boxes.map((box) => [box.dataset.word, box.value])));
    }
    /** What the score lets one choose: its parts, and the verses of the one chosen. */
    function show_choices({ parts, part: sung }) {
        const known = new Set(["", ...parts.map(({ part }) => part)]), own = known.has(state.part) ? [] : [state.part]; // a lesson names its part
        const chosen = parts.find(({ part, name }) => (state.part ? part === state.part : name === sung)) ?? (state.part ? undefined : parts.find(({ verses }) => verses)); // a line of a part has a name of its own
        $("part").replaceChildren(el("option", { value: "" }, t("part_fits")), ...parts.map(({ part, name }) => el("option", { value: part }, name)), ...own.map((name) => el("option", { value: name }, name)));
        const verses = Math.max(chosen?.verses ?? 0, Number(state.verse) || 0);
        $("verse").replaceChildren(el("option", { value: "" }, t("verse_first")), ...Array.from({ length: Math.max(0, verses - 1) }, (_, i) => el("option", { value: i + 2 }, t("one_verse", { verse: i + 2 }))), el("option", { value: "all" }, t("verse_all")));
        $("part").value = state.part;
        $("verse").value = state.verse === "1" ? "" : state.verse;
        $("of-part").hidden = parts.length < 2 && !own.length;
        $("of-verse").hidden = !parts.length;
    }
    /** Reads the song and says what it is. */
    async function look() {
        if (!state.song) return;
        await page.busy(async () => {
            $("song-is").textContent = "";
            const song = await told("ask", { ...request(), ask: "song" }, song_bytes());
            state.missing = song.unknown;
            $("song-is").textContent = t("song_is", { ...song, title: song.title || t("no_title"), verse: song.verse === "all" ? t("all_verses") : t("one_verse", { verse: song.verse || "–" }), language: song.language_name || "–" });
            show_choices(song);
            show_unknown(song.unknown);
        });
    }
    /** Lets the synthesiser, a program beside the page, say the words; some ask for more words in turn. */
    async function let_say() {
        for (let i = 0; i < 4 && state.missing.length; ++i) {
            await page.busy(async () => {
                const folder = new URL("synthesiser/", document.baseURI).href;
                const words = state.missing.flatMap(({ language, asks }) => asks.map((word) => ({ word, language })));
                await tell_said(await told("say", { folder, words }));
            });
            await look();
        }
        page.changed();
    }
    async function take(name, bytes) {
        await page.busy(async () => {
            state.song = score_of(name, bytes);
            state.moved = null;
            for (const field of ["part", "verse", "transpose", "language"]) state[field] = "";
            show_fields();
            page.changed();
        });
        await look();
    }
    function show_fields() {
        $("transpose").replaceChildren(...transpositions());
        for (const field of ["transpose", "language", "technique"]) $(field).value = state[field];
    }
    const take_file = async (file) => file && take(file.name, new Uint8Array(await file.arrayBuffer()));

    $("technique").append(...page.choices.techniques.map((name) => el("option", { value: name }, t(name))));
    $("language").append(el("option", { value: "" }, t("recognised")), ...page.choices.languages.map(({ tag, name }) => el("option", { value: tag }, name)));
    for (const field of ["part", "verse", "transpose", "language", "technique"])
        $(field).addEventListener("change", async () => {
            state[field] = $(field).value.trim();
            state.moved = null;
            page.changed();
            await look();
        });
    $("open-song").addEventListener("change", async ({ target }) => {
        await take_file(target.files[0]);
        target.value = "";
    });
    for (const name of ["dragover", "dragleave", "drop"])
        addEventListener(name, (event) => { // anywhere: beside the box a browser would open the file itself
            if (!event.dataTransfer?.types.includes("Files")) return;
            event.preventDefault();
            $("drop").classList.toggle("over", name === "dragover");
            if (name !== "drop") return;
            page.go("song");
            take_file(event.dataTransfer.files[0]);
        });
    $("demo").addEventListener("click", async () => {
        await tell_said(JSON.parse(new TextDecoder().decode(await asset("giusto_amor_said.json"))));
        await take("giusto_amor.mxl", await asset("giusto_amor.mxl"));
    });
    $("use-words").addEventListener("click", use_words);
    $("synthesiser").hidden = !document.documentElement.dataset.folder;
    $("load-synthesiser").addEventListener("click", let_say);
    $("add-word").addEventListener("click", async () => {
        const word = $("new-word").value.trim();
        if (word) await set_words({ [word]: $("new-vowels").value });
        $("new-word").value = $("new-vowels").value = "";
    });
    $("save-words").addEventListener("click", () => save_file("words.yaml", words_file(), "application/yaml"));
    $("use-range").addEventListener("click", () => {
        state.range = { range: $("range").value.trim(), vowels: $("range-vowels").value.trim() };
        state.song = null;
        $("song-is").textContent = "";
        show_unknown([]);
        page.changed();
        page.go("plan");
    });
    $("use-notes").addEventListener("click", () => take("typed.song", new TextEncoder().encode($("notes-text").value)));
    $("range").value = state.range.range;
    $("range-vowels").value = state.range.vowels;
    $("notes-text").value = sample;
    show_fields();
    show_choices({ parts: [] });
    show_words();
    return {
        take, look, set_words,
        /** In another key: asked for beside the plan. */
        async transpose(by) {
            state.transpose = by;
            show_fields();
            page.changed();
            await look();
        },
    };
}
