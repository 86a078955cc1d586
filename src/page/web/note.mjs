// SPDX-License-Identifier: MIT
// The note chosen: what to do, why, and everything that decided.
import { $, el, svg_of } from "./dom.mjs";
import { t } from "./messages.mjs";
import { told } from "./module.mjs";
import { request, song_bytes, state } from "./state.mjs";

export function note_panel(page, { place_of }) {
    let notes = [], choose = () => {}, at = null;

    async function reasons(note) {
        await page.busy(async () => {
            const said = await told("ask", { ...request(), ask: "note", note: note.note, theme: state.theme, paper: "tablet" }, song_bytes());
            $("reasons-chart").replaceChildren(svg_of(said.svg));
            $("reasons-text").textContent = said.text;
            $("reasons").showModal();
        });
    }
    function words(note) {
        if (!note.advice) return [el("p", {}, t("no_vowel"))];
        return [
            el("p", { class: `do ${note.advice}` }, `${t(note.advice)}: `, el("b", {}, note.advice === "modify" ? `/${note.shade}/ ` : ""), note.brief),
            el("p", {}, note.why),
            el("p", { class: "soft" }, [t("heard_as", note), note.advice === "modify" ? t("heard_if_kept", { heard: note.heard_kept }) : "", note.happens].filter(Boolean).join(" · ")),
        ];
    }
    function show(note) {
        at = note.note;
        const step = (by, key, sign) => el("button", { type: "button", "aria-label": t(key), disabled: !notes[at + by], onclick: () => choose(at + by, true) }, sign);
        $("note").replaceChildren(el("div", {},
            el("div", { class: "row" },
                el("h3", {}, place_of(note), note.vowel ? ` · /${note.vowel}/` : ""),
                step(-1, "previous_note", "←"), step(1, "next_note", "→"),
                el("button", { type: "button", onclick: () => { $("note").hidden = true; } }, t("close"))),
            ...words(note),
            el("div", { class: "row" },
                note.advice ? el("button", { type: "button", id: "all-reasons", onclick: () => reasons(note) }, t("all_reasons")) : null,
                ...(page.note_actions ?? []).map((action) => action(note)).filter(Boolean))));
        $("note").hidden = false;
    }
    $("close-reasons").addEventListener("click", () => $("reasons").close());
    return { show, chosen: () => at, remember(note) { at = note; }, of(all, chooser) { notes = all; choose = chooser; at = null; } };
}
