// SPDX-License-Identifier: MIT
// The step of the plan: the notes to watch, the sheet to tap, the plan as a list, charts, files, print.
import { append_in_pieces, show_charts } from "./bands.mjs";
import { beside } from "./beside.mjs";
import { $, el, save_file } from "./dom.mjs";
import { t } from "./messages.mjs";
import { ask, sheet_of, told } from "./module.mjs";
import { brief_of, note_panel } from "./note.mjs";
import { draggable, sheet_view } from "./sheet.mjs";
import { remember, request, song_bytes, state } from "./state.mjs";

/** Points that a sheet is laid out in: on a narrow window fewer, so that its type stays readable. */
function sheet_width() {
    const room = $("planned").clientWidth || $("content").clientWidth;
    return Math.min(Math.max(Math.round(room * 0.75), 255), 780);
}

/** "F#4" of a number of MIDI, for the module to read. */
const semitone_name = (n) => ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"][n % 12] + (Math.floor(n / 12) - 1);

const file_name = () => (state.song?.file ?? "range").replace(/\.\w+$/, "");

function place_of(note) {
    return [t("bar_beat", note), note.pitch, note.syllable ? `“${note.syllable}”` : ""].filter(Boolean).join(" · ");
}

function list_item(note) {
    const said = note.advice ? [`${t(note.advice)}: ${brief_of(note)}`, t("heard_as", note), note.why] : [t("no_vowel")];
    return el("li", {}, `${place_of(note)}${note.vowel ? ` · /${note.vowel}/` : ""}. `, said.join(". "));
}

export function plan_step(page) {
    let fresh = false, drawn_for = 0, sheet = null, data = null, listed = null;
    const views = document.querySelectorAll("button[data-view]");
    const panel = note_panel(page, { place_of, stand_on: (note) => sheet.stand_on(note) });
    draggable($("sheet"));
    const besides = beside(page, { choose: (note) => choose(note, true), note: (i) => data.notes[i], place_of });

    let watched = "";
    function show_watched(plan) {
        const now = JSON.stringify(plan.watched.map(({ note }) => plan.notes[note]));
        if (now === watched) return;
        watched = now;
        $("watch-none").hidden = plan.watched.length > 0;
        $("watched").replaceChildren(...plan.watched.map(({ note }) => {
            const it = plan.notes[note];
            return el("li", {}, el("button", { type: "button", "data-note": note, onclick: () => choose(note, true) },
                el("span", {}, place_of(it)),
                el("span", { class: `do ${it.advice}` }, el("span", { class: "ipa" }, it.advice === "modify" ? `/${it.shade}/ ` : ""), brief_of(it))));
        }));
    }
    function choose(note, scroll) {
        panel.show(sheet.notes[note]);
        sheet.mark(note, scroll);
    }
    async function draw_song() {
        const width = sheet_width();
        const plan = await sheet_of({ ...request(), chart: state.view, width, theme: state.theme }, song_bytes());
        drawn_for = width;
        for (const button of views) button.setAttribute("aria-pressed", String(button.dataset.view === state.view));
        data = plan;
        $("plan-head").textContent = [plan.title, plan.composer, plan.singer].filter(Boolean).join(" · ");
        sheet = sheet_view($("sheet"), plan, { place_of, choose, move: (note, by) => move(note, (state.moved?.note === note ? state.moved.semitones : 0) + by) });
        $("moved").hidden = !state.moved;
        $("save-marked").disabled = !!state.moved; // the marks are for the score as it stands
        if (state.moved) $("moved").textContent = t("moved_is", { place: place_of(plan.notes[state.moved.note]) });
        panel.of(plan.notes, choose);
        show_watched(plan);
        $("list").replaceChildren();
        listed = null;
        show_list();
        show_remarks(plan.remarks);
        await sheet.drawn;
    }
    /** Long, and read by few: made when it is opened. */
    function show_list() {
        if (!$("d-list").open || !data || listed === data) return;
        const here = listed = data;
        append_in_pieces($("list"), here.notes.map(list_item), () => listed === here);
    }
    /** To sing from, or why: the note chosen stays chosen, and in sight. */
    async function look_at(view) {
        if (view === state.view) return;
        state.view = view;
        remember();
        const note = $("note").hidden ? null : panel.chosen();
        await page.busy(draw_song);
        if (note !== null) choose(note, true);
        page.steps.hear.stale();
    }
    let moving = false;
    /** One note tried elsewhere: sheet, lane, advice and all follow. While one is drawn, only the last wish is kept. */
    async function move(note, semitones) {
        state.moved = semitones ? { note, semitones: Math.max(-24, Math.min(24, semitones)) } : null;
        if (moving) return;
        moving = true;
        const by_keys = $("sheet").contains(document.activeElement);
        for (let shown; shown !== state.moved || shown === undefined;) {
            shown = state.moved;
            await page.busy(draw_song);
            choose(note, false);
            if (by_keys) sheet.stand_on(note);
        }
        moving = false;
        page.steps.hear.stale();
        besides.stale();
    }
    async function draw_range() {
        const { text, error } = await ask("plan", request());
        if (error) throw error;
        const plan = JSON.parse(text);
        $("plan-head").textContent = `${plan.singer} · ${plan.range.low}..${plan.range.high}`;
        show_remarks(plan.warnings);
        $("d-strips").open = true;
    }
    /** The sheet's data, drawn now if something changed; nothing where there is no song to draw. */
    async function ensure() {
        if (!state.song || state.missing?.length) return null;
        if (!fresh) await draw();
        return data;
    }
    const show_remarks = (remarks) => $("assumed").replaceChildren(...remarks.map(({ text }) => el("li", {}, text)));

    async function charts(into, kind) {
        const drawn = await told("draw", { ...request(), chart: kind, theme: state.theme, paper: "tablet",
                                           ...(kind === "map" && map_pitch ? { map_pitch } : {}) }, song_bytes());
        await show_charts($(into), drawn.pages);
    }
    /** The map follows the slider; what is moved while it is drawn is drawn next. */
    let map_pitch = "", drawing_map = false;
    async function map_at(pitch) {
        map_pitch = pitch;
        $("map-pitch-name").textContent = pitch.replace("#", "♯").replace("b", "♭");
        if (drawing_map || !$("d-map").open) return;
        drawing_map = true;
        for (let drawn = ""; drawn !== map_pitch;) {
            drawn = map_pitch;
            await page.busy(() => charts("map", "map"));
        }
        drawing_map = false;
    }
    async function draw() {
        const has_range = !state.song && state.range.range;
        $("plan-none").hidden = !!(state.song || has_range);
        $("planned").hidden = !(state.song || has_range);
        if (!state.song && !has_range) return;
        if (state.missing?.length && state.song) return page.go("song");
        $("of-song").hidden = $("save-marked").hidden = !state.song;
        try {
            await (state.song ? draw_song() : draw_range());
            fresh = true;
            for (const [details, into, kind] of [["d-strips", "strips", "vowels"], ["d-map", "map", "map"]]) {
                $(into).replaceChildren();
                if ($(details).open) await charts(into, kind);
            }
        } catch (error) {
            $("planned").hidden = true;
            throw error;
        }
    }
    async function save(form, name, type, call = "plan", more = {}) {
        await page.busy(async () => {
            const { text, error } = await ask(call, { ...request(), form, ...more }, song_bytes());
            if (error) throw error;
            save_file(name, text, type);
        });
    }

    for (const [details, into, kind] of [["d-strips", "strips", "vowels"], ["d-map", "map", "map"]])
        $(details).addEventListener("toggle", () => {
            if ($(details).open && fresh && !$(into).childElementCount) page.busy(() => charts(into, kind));
        });
    $("map-pitch").addEventListener("input", ({ target }) => map_at(semitone_name(Number(target.value))));
    $("d-list").addEventListener("toggle", show_list);
    for (const button of views) button.addEventListener("click", () => look_at(button.dataset.view));
    $("save-json").addEventListener("click", () => save("json", `${file_name()}.json`, "application/json"));
    $("save-csv").addEventListener("click", () => save("csv", `${file_name()}.csv`, "text/csv"));
    $("save-marked").addEventListener("click", () => save("", `${file_name()}-marked.musicxml`, "application/vnd.recordare.musicxml+xml", "ask", { ask: "marked" }));
    $("print").addEventListener("click", () => page.busy(async () => {
        const drawn = await told("draw", { ...request(), theme: "paper", paper: "a4" }, song_bytes());
        await show_charts($("paper"), drawn.pages);
        print();
    }));
    let waiting = 0;
    addEventListener("resize", () => {
        clearTimeout(waiting);
        waiting = setTimeout(() => {
            if (fresh && state.song && !$("view-plan").hidden && sheet_width() !== drawn_for) page.busy(draw_song);
        }, 250);
    });
    return {
        stale() { fresh = false; besides.stale(); },
        async shown() { if (!fresh) await page.busy(draw); },
        /** The note chosen, for the steps that follow. */
        chosen: () => panel.chosen(),
        choose: (note) => choose(note, true),
        notes: () => (state.song && sheet?.notes) || [],
        remember_choice: panel.remember,
        ensure, place_of, move,
        /** Drawn again, the same note chosen. */
        async again(note) {
            await page.busy(draw);
            if (sheet?.notes[note]) choose(note, false);
        },
    };
}
