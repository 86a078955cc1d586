// SPDX-License-Identifier: MIT
// Beside the plan: the same song in another technique or for an average voice, and in other keys.
import { show_charts } from "./bands.mjs";
import { $, el } from "./dom.mjs";
import { semitones, t } from "./messages.mjs";
import { told } from "./module.mjs";
import { request, song_bytes, state } from "./state.mjs";

const advice = ["hold", "migrate", "modify"];
const head = (...names) => el("thead", {}, el("tr", {}, ...names.map((name) => (name ? el("th", { scope: "col" }, name) : el("td")))));

export function beside(page, { choose, note, place_of }) {
    const does = (one) => `${t(one.advice)}${one.advice === "modify" ? ` /${one.shade}/ ${one.brief}` : ""}`;

    async function compare() {
        const [kind, name] = $("beside-what").value.split(":");
        const other = kind === "voice" ? { singer: { voice: name } } : { technique: name };
        const said = await told("ask", { ...request(), ask: "beside", other, theme: state.theme, paper: "tablet" }, song_bytes());
        $("beside-times").replaceChildren(head(t("seconds_of"), ...advice.map((one) => t(one))),
            el("tbody", {}, ...said.names.map((who, i) => el("tr", {}, el("th", { scope: "row" }, who), ...advice.map((one) => el("td", {}, String(said.times[i][one])))))));
        $("beside-says").textContent = said.notes.length ? t("they_part", { seconds: said.parting_s }) : t("they_agree");
        $("beside-notes").replaceChildren(...said.notes.map((one) => el("li", {}, el("button", { type: "button", "data-note": one.note, onclick: () => choose(one.note) },
            el("span", {}, `${place_of(note(one.note))}${one.sure ? "" : " ?"}`),
            el("span", {}, `A: ${does(one.first)}`, el("br"), `B: ${does(one.second)}`)))));
        $("beside-answer").hidden = false;
        await show_charts($("beside-chart"), said.pages);
    }
    async function keys() {
        const said = await told("ask", { ...request(), ask: "keys" }, song_bytes());
        const here = (key) => key.by === 0;
        const name = ({ by }) => (by === 0 ? t("this_key") : semitones(by));
        $("keys-table").replaceChildren(head(t("key"), t("low_high"), ...advice.map((one) => t(one)), t("key_against"), ""),
            el("tbody", {}, ...said.keys.map((key) => el("tr", { class: here(key) ? "now" : null },
                el("th", { scope: "row" }, name(key), ...(key.by === said.proposed ? [el("br"), t("key_proposed")] : [])), el("td", {}, `${key.low}–${key.high}`),
                ...advice.map((one) => el("td", {}, `${key.seconds[one]} s`)),
                el("td", {}, key.against.slice(0, 2).join(", ")),
                el("td", {}, here(key) ? null : el("button", { type: "button", "data-transpose": key.transpose, onclick: () => take(key) }, t("take_key")))))));
        $("keys-answer").hidden = false;
    }
    async function take(key) {
        state.moved = null;
        await page.steps.song.transpose(String(key.transpose));
        await page.steps.plan.shown();
    }
    function offer() {
        const others = [
            ...page.choices.techniques.filter((name) => name !== state.technique).map((name) => [`technique:${name}`, t(name)]),
            ...page.choices.voices.filter((name) => name !== state.singer.voice).map((name) => [`voice:${name}`, t("average_of", { voice: t(name) })]),
        ];
        $("beside-what").replaceChildren(...others.map(([value, name]) => el("option", { value }, name)));
    }
    $("d-beside").addEventListener("toggle", offer);
    $("compare-beside").addEventListener("click", () => page.busy(compare));
    $("try-keys").addEventListener("click", () => page.busy(keys));
    return {
        /** The plan has changed: what stood beside it is old. */
        stale() {
            $("beside-answer").hidden = $("keys-answer").hidden = true;
            offer();
        },
    };
}
