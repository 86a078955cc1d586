// SPDX-License-Identifier: MIT
// The step of voices compared.
import { show_charts } from "./bands.mjs";
import { $, el } from "./dom.mjs";
import { t } from "./messages.mjs";
import { told } from "./module.mjs";
import { state } from "./state.mjs";

export function voices_step(page) {
    let fresh = false;
    async function compare() {
        const singers = [...document.querySelectorAll("#voice-boxes input:checked")].map(({ value }) =>
            value === "me" ? state.singer : { voice: value });
        const said = await told("ask", { ask: "voices", singers, vowels: $("voices-vowels").value, theme: state.theme, paper: "tablet" });
        $("voices-text").textContent = said.text;
        await show_charts($("voices-chart"), said.pages);
        fresh = true;
    }
    function boxes() {
        const box = (value, name) => el("label", { class: "check" }, el("input", { type: "checkbox", value, checked: true }), el("span", {}, name));
        $("voice-boxes").replaceChildren(
            ...(state.singer.profile ? [box("me", t("default_name"))] : []),
            ...page.choices.voices.map((voice) => box(voice, t(voice))));
    }
    $("compare").addEventListener("click", () => page.busy(compare));
    return {
        stale() { fresh = false; },
        async shown() {
            if (fresh) return;
            boxes();
            await page.busy(compare);
        },
    };
}
