// SPDX-License-Identifier: MIT
// The note chosen: what to do, why, and everything that decided.
import { show_charts } from "./bands.mjs";
import { $, el } from "./dom.mjs";
import { semitones, t } from "./messages.mjs";
import { told } from "./module.mjs";
import { request, song_bytes, state } from "./state.mjs";

/** What to do, in a few words; where the measurement leaves it open, that too. */
export const brief_of = ({ brief, sure }) => [brief, sure ? "" : t("unsure")].filter(Boolean).join("; ");

export function note_panel(page, { place_of, stand_on }) {
    let notes = [], choose = () => {}, at = null;

    async function reasons(note) {
        await page.busy(async () => {
            const said = await told("ask", { ...request(), ask: "note", note: note.note, theme: state.theme, paper: "tablet" }, song_bytes());
            $("reasons-text").textContent = said.text;
            $("reasons-chart").replaceChildren();
            $("reasons").showModal();
            await show_charts($("reasons-chart"), [said.svg]);
        });
    }
    function words(note) {
        if (!note.advice) return [el("p", {}, t("no_vowel"))];
        return [
            el("p", { class: `do ${note.advice}` }, `${t(note.advice)}: `, el("b", {}, note.advice === "modify" ? `/${note.shade}/ ` : ""), brief_of(note)),
            el("p", {}, note.why),
            el("p", { class: "soft" }, [t("heard_as", note), note.advice === "modify" ? t("heard_if_kept", { heard: note.heard_kept }) : "", note.happens].filter(Boolean).join(" · ")),
        ];
    }
    /** Its word, to be corrected where it stands. */
    function word_row(note) {
        if (!note.word) return null;
        const box = el("input", { id: "word-vowels", autocomplete: "off", autocapitalize: "off", lang: "und", value: state.words[note.word] ?? "", "aria-label": t("vowels_of", { word: note.word }) });
        const use = async () => {
            await page.steps.song.set_words({ [note.word]: box.value });
            await page.steps.plan.again(note.note);
        };
        return el("details", { id: "correct-word" }, el("summary", {}, t("correct_word", { word: note.word })),
            el("div", { class: "row" }, box, el("button", { type: "button", onclick: use }, t("use_words"))));
    }
    /** The note tried higher or lower. */
    function moving(note) {
        const now = () => (state.moved?.note === note.note ? state.moved.semitones : 0), by = now();
        const move = (to) => page.steps.plan.move(note.note, to);
        return [
            el("button", { type: "button", id: "move-up", "aria-label": t("move_up"), onclick: () => move(now() + 1) }, "♯ ↑"),
            el("button", { type: "button", id: "move-down", "aria-label": t("move_down"), onclick: () => move(now() - 1) }, "♭ ↓"),
            by ? el("span", { id: "moved-by" }, semitones(by)) : null,
            by ? el("button", { type: "button", id: "move-back", onclick: () => move(0) }, t("move_back")) : null,
        ];
    }
    /** Back to the note on the sheet. */
    function close() {
        $("note").hidden = true;
        stand_on(at);
    }
    function show(note) {
        at = note.note;
        const focused = $("note").contains(document.activeElement) ? document.activeElement.id : "";
        const go = (by, key, sign) => el("button", { type: "button", id: key, "aria-label": t(key), disabled: !notes[at + by], onclick: () => choose(at + by, true) }, sign);
        $("note").replaceChildren(el("div", {},
            el("div", { class: "row head" },
                el("h3", {}, place_of(note), note.vowel ? ` · /${note.vowel}/` : ""),
                el("div", { class: "row" }, go(-1, "previous_note", "←"), go(1, "next_note", "→"),
                    el("button", { type: "button", id: "close-note", "aria-label": t("close"), onclick: close }, "×"))),
            ...words(note),
            word_row(note),
            el("div", { class: "row" }, ...moving(note),
                note.advice ? el("button", { type: "button", id: "all-reasons", onclick: () => reasons(note) }, t("all_reasons")) : null,
                ...(page.note_actions ?? []).map((action) => action(note)).filter(Boolean))));
        $("note").hidden = false;
        if (focused) $(focused)?.focus();
    }
    $("close-reasons").addEventListener("click", () => $("reasons").close());
    addEventListener("keydown", ({ key }) => {
        if (key === "Escape" && !$("note").hidden && !$("reasons").open) close();
    });
    return { show, chosen: () => at, remember(note) { at = note; }, of(all, chooser) { notes = all; choose = chooser; at = null; } };
}
