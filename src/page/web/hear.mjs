// SPDX-License-Identifier: MIT
// The step of hearing: a vowel, the note chosen, or the line with a cursor that walks along the sheet.
import { $, el } from "./dom.mjs";
import { t } from "./messages.mjs";
import { answer_of, ask, told } from "./module.mjs";
import { sheet_view } from "./sheet.mjs";
import { request, song_bytes, state } from "./state.mjs";

let context = null, playing = null;

function stop() {
    playing?.source.stop();
    cancelAnimationFrame(playing?.frame);
    playing = null;
    $("stop").disabled = true;
}

/** Plays what the module made; `follow` is told the time within it, at every picture. */
async function play(made, loop, follow) {
    stop();
    context ??= new AudioContext();
    await context.resume();
    const buffer = context.createBuffer(1, made.samples.length, made.rate_hz);
    buffer.copyToChannel(made.samples, 0);
    const source = new AudioBufferSourceNode(context, { buffer, loop });
    source.connect(context.destination);
    const begun = context.currentTime;
    source.start();
    playing = { source };
    $("stop").disabled = false;
    const walk = () => {
        follow((context.currentTime - begun) % buffer.duration);
        if (playing?.source === source) playing.frame = requestAnimationFrame(walk);
    };
    walk();
    source.addEventListener("ended", () => playing?.source === source && stop());
}

function show_list(list) {
    const items = list.map(({ what }) => el("li", {}, what));
    $("heard-list").replaceChildren(...items);
    return (now) => list.forEach(({ start_s, end_s }, i) => items[i].classList.toggle("now", start_s <= now && now < end_s));
}

export function hear_step(page) {
    let line = null, drawn = null;

    async function made(more, bytes = song_bytes()) {
        const { samples, ...answer } = await ask("hear", { ...request(), ...more }, bytes);
        return { ...answer_of(answer), samples };
    }
    const sound = (more, bytes, loop = $("loop").checked) => page.busy(async () => {
        const it = await made(more, bytes);
        window.last_heard = { seconds: it.seconds, samples: it.samples.length, loudness: it.loudness_lufs };
        await play(it, loop, show_list(it.list));
    });
    /** Of the bars chosen; the cursor stands in the note that sounds. */
    async function sound_line() {
        await page.busy(async () => {
            const options = Object.fromEntries(["count_in", "click", "guide", "kept"].map((name) => [name, $(`line-${name}`).checked]));
            const tempo = $("line-tempo").value ? { tempo: Number($("line-tempo").value) } : {};
            const it = await made({ sound: "line", from: $("line-from").value.trim(), to: $("line-to").value.trim(), ...tempo, ...options });
            window.last_heard = { seconds: it.seconds, samples: it.samples.length, loudness: it.loudness_lufs };
            show_list([]);
            await play(it, $("loop").checked, (now) => {
                const at = it.notes.find(({ start_s, end_s }) => start_s <= now && now < end_s);
                line?.cursor(at?.note, at ? (now - at.start_s) / (at.end_s - at.start_s) : 0);
            });
        });
    }
    async function show_line() {
        const plan = await page.steps.plan.ensure();
        $("hear-song").hidden = !plan;
        if (!plan || plan === drawn) return;
        drawn = plan;
        line = sheet_view($("line-sheet"), plan, {
            place_of: page.steps.plan.place_of,
            choose(note) {
                line.mark(note, false);
                page.steps.plan.remember_choice(note);
                show_note();
            },
        });
        show_note();
        await line.drawn;
    }
    function show_note() {
        const note = page.steps.plan.notes()[page.steps.plan.chosen() ?? -1];
        $("hear-note-name").textContent = note ? page.steps.plan.place_of(note) + (note.vowel ? ` · /${note.vowel}/` : "") : t("no_note");
        for (const button of document.querySelectorAll("[data-hear-note]")) button.disabled = !note?.advice;
    }
    const note_sound = (only) => sound({ sound: "note", note: page.steps.plan.chosen(), ...(only === "glide" ? { glide: true } : { only }) });

    $("hear-vowel").addEventListener("click", () => {
        const what = $("hear-what").value;
        const more = what === "glide" ? { glide: true } : what === "faults" ? { faults: true } : { only: what };
        sound({ sound: "vowel", vowel: $("hear-which").value, ...more }, new Uint8Array());
    });
    for (const button of document.querySelectorAll("[data-hear-note]"))
        button.addEventListener("click", () => note_sound(button.dataset.hearNote));
    $("play-line").addEventListener("click", sound_line);
    $("stop").addEventListener("click", stop);
    $("hear-what").append(...["", "tones", "low", "high", "noise", "whisper", "faults", "glide"].map((value) => el("option", { value }, t(`hear_${value || "all"}`))));
    page.note_actions = [(note) => note.advice && el("button", { type: "button", onclick: () => sound({ sound: "note", note: note.note }, undefined, false) }, t("hear"))];
    return {
        hidden: stop,
        stale() { drawn = null; },
        async shown() {
            await page.busy(async () => {
                const picture = await told("ask", { ask: "singer", singer: state.singer });
                const now = $("hear-which").value;
                $("hear-which").replaceChildren(...picture.vowels.map(({ ipa }) => el("option", { value: ipa }, `/${ipa}/`)));
                if (picture.vowels.some(({ ipa }) => ipa === now)) $("hear-which").value = now;
                await show_line();
            });
        },
    };
}
