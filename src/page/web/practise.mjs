// SPDX-License-Identifier: MIT
// The step of practising: whisper or creak a vowel, and see its two resonances walk toward where they should be.
import { $, el, error_box, save_file } from "./dom.mjs";
import { great_staff } from "./great_staff.mjs";
import { t } from "./messages.mjs";
import { listening_worker, microphone_trouble, open_microphone } from "./microphone.mjs";
import { answer_of, told } from "./module.mjs";
import { day_of, recall_repeats, remember_repeat } from "./repeats.mjs";
import { pitch_words, request, song_bytes, state } from "./state.mjs";

export function practise_step(page) {
    let microphone = null, ask = null, aims = [], at = 0, reading = null, waiting_for_next = 0, held = null, kept_since = -1, singer_name = "";
    const staff = great_staff($("staff"));

    /** What may be practised: the notes to watch, then every vowel the singer has. */
    async function find_aims() {
        const plan = await page.steps.plan.ensure();
        const picture = await told("ask", { ask: "singer", singer: state.singer });
        singer_name = picture.singer;
        aims = [
            ...(plan?.watched ?? []).map(({ note }) => ({ ask: { note }, name: `${page.steps.plan.place_of(plan.notes[note])} · /${plan.notes[note].shade}/` })),
            ...picture.vowels.map(({ ipa }) => ({ ask: { vowel: ipa }, name: `/${ipa}/` })),
        ];
        $("aim").replaceChildren(...aims.map(({ name }, i) => el("option", { value: i }, name)));
        at = Math.min(at, aims.length - 1);
        $("aim").value = at;
    }
    async function aim_at(i) {
        at = i;
        $("aim").value = at;
        ask = await listening_worker(heard);
        const aim = answer_of(await ask("practise", { ...request(), ...aims[at].ask }, song_bytes()));
        reading = null;
        staff.aim(aim);
        $("aim-words").textContent = t("aim_is", { vowel: aim.vowel, low: pitch_words(aim.fR1), high: pitch_words(aim.fR2) });
        for (const id of ["said", "low-now", "high-now", "steady-now", "balance-now"]) $(id).textContent = "";
        $("tries").replaceChildren();
    }
    /** One reading, some sixty a second. */
    function heard({ text, error, at: sounded }) {
        if (error || !microphone) return;
        reading = JSON.parse(text);
        reading.sounded = sounded;
        if (reading.steady) held = reading;
        else if (!reading.sounds && held) {
            keep(held, false);
            held = null;
        }
    }
    function words(now) {
        const one = (r) => (r ? t("now_at", { pitch: pitch_words(r), hz: r.hz }) : "");
        $("said").textContent = now.refused ?? (now.hit ? t("hit") : now.sounds ? t(`heard_${now.probe ?? "something"}`) : t("listening"));
        $("low-now").textContent = one(now.fR1);
        $("high-now").textContent = one(now.fR2);
        $("steady-now").textContent = now.fR1 ? t("steady_is", { low: now.fR1.steady_cents, high: now.fR2.steady_cents }) : "";
        $("balance-now").textContent = now.balance_db === undefined ? "" : t("balance_is", { db: now.balance_db });
        const tries = (now.findings ?? []).map((finding) => `${finding.says}: ${finding.try}`);
        if (tries.join() !== [...$("tries").children].map((li) => li.textContent).join())
            $("tries").replaceChildren(...tries.map((text) => el("li", {}, text)));
    }
    let shown_at = 0, worded = 0;
    function picture(time) {
        if (!microphone) return;
        requestAnimationFrame(picture);
        if (!reading || reading.at_s === shown_at) return;
        shown_at = reading.at_s;
        staff.move(reading);
        // From the sound's last sample to this picture: for the figures, and for whoever wonders.
        window.latency = { ms: 1000 * (microphone.context.currentTime - reading.sounded), pictures: (window.latency?.pictures ?? 0) + 1 };
        if (time - worded > 150 || reading.hit) {
            worded = time;
            words(reading);
        }
        if (reading.hit && !waiting_for_next) hit();
    }
    /** One vowel held: kept once, with a hit at once, otherwise when the sound has ended. */
    function keep(one, hit) {
        if (kept_since === one.since_s) return;
        kept_since = one.since_s;
        remember_repeat({ singer: singer_name, aim: aims[at].name, hit, fR1_hz: one.fR1.hz, fR2_hz: one.fR2.hz, fR1_off_cents: one.fR1.off_cents, fR2_off_cents: one.fR2.off_cents, probe: one.probe });
        show_repeats().catch(() => {});
    }
    function hit() {
        keep(reading, true);
        if (!$("go-on").checked) return;
        waiting_for_next = setTimeout(() => {
            waiting_for_next = 0;
            if (microphone && at + 1 < aims.length) page.busy(() => aim_at(at + 1));
        }, 1500);
    }
    /** Today against the seven days before it, counted by the module. */
    async function show_repeats() {
        const repeats = recall_repeats().filter((one) => one.singer === singer_name);
        $("practised").hidden = !repeats.length;
        $("hits").replaceChildren(...repeats.slice(-6).reverse().map((one) => el("li", {}, t(one.hit ? "hit_was" : "repeat_was", one))));
        const week = day_of(new Date(Date.now() - 7 * 864e5)), today = day_of(new Date());
        const { aims: rows } = await told("ask", { ask: "practice", today, from: week, repeats });
        $("consistency").hidden = !rows.length;
        const cell = (part) => el("td", {}, part ? t("consistent", { n: part.count, hits: part.hits, ...part }) : "–");
        $("consistency").tBodies[0].replaceChildren(...rows.map((row) => el("tr", {}, el("th", { scope: "row" }, row.aim), cell(row.today), cell(row.before))));
    }
    async function start() {
        try {
            ask = await listening_worker(heard);
            await aim_at(at);
            microphone = await open_microphone(ask);
        } catch (error) {
            $("trouble").replaceChildren(error_box(microphone_trouble(error)));
            return;
        }
        $("mic-told").textContent = microphone.unwilling.length ? t("mic_filters", { filters: microphone.unwilling.join(", ") }) : "";
        $("listen").hidden = true;
        document.querySelector(".readings").hidden = false;
        $("unlisten").hidden = false;
        requestAnimationFrame(picture);
    }
    async function stop() {
        clearTimeout(waiting_for_next);
        waiting_for_next = 0;
        const was = microphone;
        microphone = null;
        $("listen").hidden = false;
        $("unlisten").hidden = true;
        await was?.stop();
    }
    $("listen").addEventListener("click", start);
    $("unlisten").addEventListener("click", stop);
    $("aim").addEventListener("change", () => page.busy(() => aim_at(Number($("aim").value))));
    $("next-aim").addEventListener("click", () => page.busy(() => aim_at((at + 1) % aims.length)));
    $("save-hits").addEventListener("click", () => save_file("practice.json", JSON.stringify(recall_repeats(), null, 1), "application/json"));
    return {
        hidden: stop,
        stale() { aims = []; },
        async shown() {
            await page.busy(async () => {
                if (!aims.length) await find_aims();
                await aim_at(at);
                await show_repeats();
            });
        },
    };
}
