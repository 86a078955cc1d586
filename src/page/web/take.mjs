// SPDX-License-Identifier: MIT
// A guided measurement: vowel by vowel into the microphone, each with its light; what is good goes into the profile.
// Or a recording made elsewhere, in one piece.
import { $, el } from "./dom.mjs";
import { t } from "./messages.mjs";
import { listening_worker, microphone_trouble, open_microphone } from "./microphone.mjs";
import { answer_of } from "./module.mjs";
import { day_of } from "./repeats.mjs";
import { state } from "./state.mjs";

const pause_after = 0.35, longest = 8; // seconds: what ends a take, and when one is cut off
const today = () => day_of(new Date());

export function guided_take(page, use_profile) {
    let microphone = null, ask = null, list = [], at = 0, lights = [], began = 0, ended = 0, steady = false, busy = false;

    const into = () => ({ date: today(), name: $("typed-name").value.trim() || t("default_name") });
    const resonances = (tract) => [1, 2].map((k) => (tract[`fR${k}_hz`] ? `fR${k} ${tract[`fR${k}_hz`]} ± ${tract[`fR${k}_sd_hz`]} Hz` : "")).filter(Boolean).join(", ");
    const what_to_try = ({ quality }) => quality.findings.map((f) => `${f.says}: ${f.try}`).join(". ");

    function light(i, kind, says) {
        lights[i].className = `light ${kind}`;
        lights[i].lastChild.textContent = says;
    }
    async function next(i) {
        at = i;
        began = ended = 0;
        steady = false;
        if (at === list.length) return finish();
        answer_of(await ask("practise", { singer: state.singer, vowel: list[at] }));
        await ask("take", { fresh: at === 0 });
        light(at, "waits", t("light_say"));
        $("take-now").textContent = t("take_say", { vowel: list[at] });
    }
    /** One reading of the microphone: the light follows what is heard. */
    function heard({ text, error }) {
        if (error || !microphone || busy || at === list.length) return;
        const now = JSON.parse(text);
        if (now.sounds) {
            began ||= now.at_s;
            ended = 0;
            if (now.refused) light(at, "again", now.refused);
            else if (now.steady) light(at, "steady", t("light_steady"));
            else if (!steady) light(at, "heard", t("light_heard"));
            steady ||= !!now.steady;
        } else if (began) ended ||= now.at_s;
        const enough = ended && now.at_s - ended > pause_after && ended - began > 0.15;
        if (enough || (began && now.at_s - began > longest)) judge();
    }
    async function judge() {
        busy = true;
        try {
            const [taken] = answer_of(await ask("taken", { singer: state.singer, vowels: list[at], repeat: 1, file: t("take"), rate_hz: microphone.device_rate })).takes;
            if (taken.refused) await again(taken.refused);
            else {
                light(at, "good", [resonances(taken.tract), what_to_try(taken)].filter(Boolean).join(". "));
                await next(at + 1);
            }
        } catch (error) {
            if (microphone) await again(error.wrong ?? String(error)); // two sounds, or none that stands out
        }
        busy = false;
    }
    async function again(why) {
        await next(at);
        light(at, "again", t("again_please", { why }));
    }
    async function finish() {
        $("take-now").textContent = "";
        await page.busy(async () => {
            const { measured, profile } = answer_of(await ask("measure_kept", { singer: state.singer, vowels: list.join(" "), file: t("take"), rate_hz: microphone.device_rate, into: into() }));
            await taken(measured, profile);
        });
        await stop();
    }
    async function taken(measured, profile) {
        await use_profile({ profile, file: state.singer.profile ? state.singer.file : "profile.yaml" });
        $("take-done").textContent = t("take_done", { n: measured.vowels.length, date: today() });
    }
    async function start() {
        const vowels = $("take-vowels").value.split(/[\s,]+/).filter(Boolean);
        list = Array.from({ length: Number($("take-rounds").value) }, () => vowels).flat();
        lights = list.map((vowel) => el("li", { class: "light" }, el("b", {}, `/${vowel}/`), " ", el("span", {})));
        $("take-lights").replaceChildren(...lights);
        $("take-done").textContent = "";
        try {
            ask = await listening_worker(heard);
            await next(0);
            microphone = await open_microphone(ask);
        } catch (error) {
            $("take-now").textContent = "";
            $("take-lights").replaceChildren();
            return page.busy(() => { throw microphone_trouble(error); });
        }
        $("take-start").hidden = true;
        $("take-stop").hidden = false;
    }
    async function stop() {
        const was = microphone;
        microphone = null;
        $("take-start").hidden = false;
        $("take-stop").hidden = true;
        $("take-now").textContent = "";
        await was?.stop();
    }
    /** A recording of the same list, said from the first to the last. */
    async function recording(file) {
        await page.busy(async () => {
            // The browser decodes, and brings it to the rate of measuring.
            const sound = await new OfflineAudioContext(1, 1, 16000).decodeAudioData(await file.arrayBuffer())
                .catch(() => { throw { wrong: t("no_sound"), remedy: "", file: file.name }; });
            ask ??= await listening_worker(heard);
            const { measured, profile } = answer_of(await ask("measure", { singer: state.singer, vowels: $("take-vowels").value, file: file.name, rate_hz: 44100, into: into() }, sound.getChannelData(0)));
            $("take-lights").replaceChildren(...measured.takes.map((one) => el("li", { class: `light ${one.refused ? "again" : "good"}` }, el("b", {}, `/${one.vowel}/`), " ",
                one.refused ? t("again_please", { why: one.refused }) : [resonances(one.tract), what_to_try(one)].filter(Boolean).join(". "))));
            await taken(measured, profile);
        });
    }
    $("take-start").addEventListener("click", start);
    $("take-stop").addEventListener("click", stop);
    $("open-recording").addEventListener("change", async ({ target }) => {
        if (target.files[0]) await recording(target.files[0]);
        target.value = "";
    });
    return { stop };
}
