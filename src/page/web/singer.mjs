// SPDX-License-Identifier: MIT
// The step of the singer: an average voice, typed resonances, or a profile. The profile is a text in the
// program's own form; the module reads it and says what is wrong.
import { $, el, save_file } from "./dom.mjs";
import { t } from "./messages.mjs";
import { told } from "./module.mjs";
import { pitch_words, state } from "./state.mjs";
import { staff_entry } from "./staff_entry.mjs";
import { guided_take } from "./take.mjs";

const offered = ["i", "e", "ɛ", "a", "ɔ", "o", "u", "y", "ø"]; // rows to type into

function typed_rows(average) {
    const of = new Map(average.vowels.map((vowel) => [vowel.ipa, vowel.resonances]));
    const box = (vowel, k) => {
        const known = of.get(vowel)?.find(({ number }) => number === k);
        return el("td", {},
            el("input", { "data-vowel": vowel, "data-number": k, "data-average": known?.pitch, autocomplete: "off", "aria-label": `/${vowel}/ fR${k}`, placeholder: known ? `${t("average_is")} ${known.pitch}` : null }));
    };
    return offered.map((vowel) => el("tr", {}, el("th", { scope: "row" }, vowel), box(vowel, 1), box(vowel, 2)));
}

/** What was typed, as a profile. Values go in as typed; the module reads them. */
function typed_profile() {
    const value = (vowel, k) => document.querySelector(`#typed-rows input[data-vowel="${vowel}"][data-number="${k}"]`).value.trim();
    const rows = offered.map((vowel) => [vowel, value(vowel, 1), value(vowel, 2)]).filter(([, r1, r2]) => r1 || r2);
    const range = $("typed-range").value.trim();
    return [
        "vowelway: 1",
        `singer: ${JSON.stringify($("typed-name").value.trim() || t("default_name"))}`,
        `voice: ${$("voice").value}`,
        ...(range ? [`range: ${JSON.stringify(range)}`] : []),
        "source: {method: typed}",
        "vowels:",
        ...rows.map(([vowel, r1, r2]) => `  ${vowel}: {fR1: ${JSON.stringify(r1)}, fR2: ${JSON.stringify(r2)}}`),
        "",
    ].join("\n");
}

function resonance_rows(picture) {
    return [
        el("thead", {}, el("tr", {}, ...[t("vowel"), "fR1", "fR2"].map((name) => el("th", { scope: "col" }, name)))),
        el("tbody", {}, ...picture.vowels.map((vowel) => el("tr", {},
            el("th", { scope: "row", class: "ipa" }, vowel.ipa, vowel.estimated ? el("span", { class: "soft" }, ` ${t("estimated")}`) : null),
            ...[1, 2].map((k) => {
                const r = vowel.resonances.find(({ number }) => number === k);
                return r ? el("td", {}, pitch_words(r), " ", el("span", { class: "hertz" }, `${r.hz} ± ${r.sd_hz} Hz`)) : el("td");
            })))),
    ];
}

export function singer_step(page) {
    async function show_singer() {
        const picture = await told("ask", { ask: "singer", singer: state.singer });
        const name = picture.average && page.choices.voices.includes(picture.voice) ? t(picture.voice) : picture.singer;
        $("who").textContent = t("now_sings", { who: name });
        $("resonances").replaceChildren(...resonance_rows(picture));
        $("save-profile").disabled = !state.singer.profile;
        $("profile-text").value = state.singer.profile ?? "";
        return picture;
    }
    /** Takes a singer when the module can read it. */
    async function take(singer) {
        await page.busy(async () => {
            await told("ask", { ask: "singer", singer });
            state.singer = singer;
            page.changed();
            await show_singer();
        });
    }
    async function show_average() {
        const average = await told("ask", { ask: "singer", singer: { voice: $("voice").value } });
        $("typed-rows").replaceChildren(...typed_rows(average));
    }

    $("voice").append(...page.choices.voices.map((voice) => el("option", { value: voice }, t(voice))));
    $("voice").value = state.singer.voice ?? "mezzo";
    $("voice").addEventListener("change", () => page.busy(show_average));
    $("use-average").addEventListener("click", () => take({ voice: $("voice").value }));
    $("use-typed").addEventListener("click", () => take({ profile: typed_profile(), file: "profile.yaml" }));
    $("use-text").addEventListener("click", () => take({ profile: $("profile-text").value, file: "profile.yaml" }));
    $("open-profile").addEventListener("change", async ({ target }) => {
        const [file] = target.files;
        if (file) await take({ profile: await file.text(), file: file.name });
        target.value = "";
    });
    $("save-profile").addEventListener("click", () => save_file(state.singer.file ?? "profile.yaml", state.singer.profile, "application/yaml"));
    staff_entry();
    const measuring = guided_take(page, take);
    let shown = false;
    return {
        take,
        hidden: measuring.stop,
        async shown() {
            if (!shown) await page.busy(show_average);
            shown = true;
            await page.busy(show_singer);
        },
    };
}
