// SPDX-License-Identifier: MIT
// The step of practising: whisper or creak a vowel, and see its two resonances walk toward where they should be.
import { $, el, error_box, save_file } from "./dom.mjs";
import { great_staff } from "./great_staff.mjs";
import { t } from "./messages.mjs";
import { listening_worker, open_microphone } from "./microphone.mjs";
import { answer_of, told } from "./module.mjs";
import { recall_hits, remember_hit } from "./hits.mjs";
import { request, song_bytes, state } from "./state.mjs";

export function practise_step(page) {
    let microphone = null, ask = null, aims = [], at = 0, reading = null, waiting_for_next = 0;
    const staff = great_staff($("staff"));

    /** What may be practised: the notes to watch, then every vowel the singer has. */
    async function find_aims() {
        const plan = await page.steps.plan.ensure();
        const picture = await told("ask", { ask: "singer", singer: state.singer });
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
        ask ??= await listening_worker(heard);
        const aim = answer_of(await ask("practise", { ...request(), ...aims[at].ask }, song_bytes()));
        reading = null;
        staff.aim(aim);
        $("aim-words").textContent = t("aim_is", { vowel: aim.vowel, low: aim.fR1.pitch, high: aim.fR2.pitch });
        for (const id of ["said", "low-now", "high-now", "steady-now", "balance-now"]) $(id).textContent = "";
        $("tries").replaceChildren();
    }
    /** One reading, some sixty a second. */
    function heard({ text, error, at: sounded }) {
        if (error || !microphone) return;
        reading = JSON.parse(text);
        reading.sounded = sounded;
    }
    function words(now) {
        const one = (r) => (r ? t("now_at", r) : "");
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
    function hit() {
        remember_hit({ aim: aims[at].name, fR1_hz: reading.fR1.hz, fR2_hz: reading.fR2.hz, fR1_off_cents: reading.fR1.off_cents, fR2_off_cents: reading.fR2.off_cents, probe: reading.probe });
        show_hits();
        if (!$("go-on").checked) return;
        waiting_for_next = setTimeout(() => {
            waiting_for_next = 0;
            if (microphone && at + 1 < aims.length) page.busy(() => aim_at(at + 1));
        }, 1500);
    }
    function show_hits() {
        const hits = recall_hits();
        $("hits").replaceChildren(...hits.slice(-12).reverse().map((one) => el("li", {}, t("hit_was", one))));
        $("save-hits").disabled = !hits.length;
    }
    async function start() {
        try {
            ask ??= await listening_worker(heard);
            await aim_at(at);
            microphone = await open_microphone(ask);
        } catch (error) {
            const wrong = error.kind === "insecure" ? { wrong: t("mic_insecure"), remedy: t("mic_insecure_do") }
                : error.name === "NotAllowedError" ? { wrong: t("mic_denied"), remedy: t("mic_denied_do") }
                : error.name === "NotFoundError" ? { wrong: t("mic_missing"), remedy: "" } : error;
            $("trouble").replaceChildren(error_box(wrong));
            return;
        }
        $("mic-told").textContent = microphone.unwilling.length ? t("mic_filters", { filters: microphone.unwilling.join(", ") }) : "";
        $("listen").hidden = true;
        $("unlisten").hidden = $("record").hidden = false;
        requestAnimationFrame(picture);
    }
    async function stop() {
        clearTimeout(waiting_for_next);
        waiting_for_next = 0;
        const was = microphone;
        microphone = null;
        $("listen").hidden = false;
        $("unlisten").hidden = $("record").hidden = $("recorded").hidden = true;
        await was?.stop();
    }
    async function record() {
        await ask("take");
        $("record").hidden = true;
        $("recorded").hidden = false;
    }
    async function recorded() {
        $("record").hidden = false;
        $("recorded").hidden = true;
        await page.busy(async () => {
            const measured = answer_of(await ask("taken", { singer: state.singer, vowels: $("take-vowels").value, file: t("take"), rate_hz: microphone.device_rate }));
            show_take(measured);
        });
    }
    function show_take(measured) {
        const resonances = (tract) => [1, 2].map((k) => (tract[`fR${k}_hz`] ? `fR${k} ${tract[`fR${k}_hz`]} ± ${tract[`fR${k}_sd_hz`]} Hz` : "")).filter(Boolean).join(", ");
        $("take-lights").replaceChildren(...measured.takes.map((take) => el("li", { class: take.refused ? "do modify" : "do migrate" },
            `/${take.vowel}/ ${take.refused ? t("again_please", { why: take.refused }) : `${resonances(take.tract)}. ${take.quality.findings.map((f) => `${f.says}: ${f.try}`).join(". ")}`}`)));
        window.last_take = measured;
    }

    $("listen").addEventListener("click", start);
    $("unlisten").addEventListener("click", stop);
    $("record").addEventListener("click", record);
    $("recorded").addEventListener("click", recorded);
    $("aim").addEventListener("change", () => page.busy(() => aim_at(Number($("aim").value))));
    $("next-aim").addEventListener("click", () => page.busy(() => aim_at((at + 1) % aims.length)));
    $("save-hits").addEventListener("click", () => save_file("practice.json", JSON.stringify(recall_hits(), null, 1), "application/json"));
    show_hits();
    return {
        hidden: stop,
        stale() { aims = []; },
        async shown() {
            await page.busy(async () => {
                if (!aims.length) await find_aims();
                await aim_at(at);
            });
        },
    };
}
