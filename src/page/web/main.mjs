// SPDX-License-Identifier: MIT
// The page: one step is shown at a time; what changes in one step is told to the others.
import { asset, lesson } from "./assets.mjs";
import { $, el, error_box } from "./dom.mjs";
import { hear_step } from "./hear.mjs";
import { set_tongue, t } from "./messages.mjs";
import { module_ready, tell_said, told } from "./module.mjs";
import { plan_step } from "./plan.mjs";
import { practise_step } from "./practise.mjs";
import { score_of } from "./score_file.mjs";
import { singer_step } from "./singer.mjs";
import { song_step } from "./song.mjs";
import { recall, remember, state } from "./state.mjs";
import { voices_step } from "./voices.mjs";

const steps = {};
/** What the page is doing; where it only waits for the person, for listeners alone. */
function status(key) {
    $("status").textContent = t(key);
    $("status").classList.toggle("idle", key === "ready");
}

/** What steps share: messages below the staff, and word of changes. */
const page = {
    /** Runs some work, says so, and tells what goes wrong. */
    async busy(work) {
        $("trouble").replaceChildren();
        status("working");
        try {
            return await work();
        } catch (error) {
            $("trouble").replaceChildren(error_box(error));
            if (error instanceof Error) console.error(error); // a fault of ours, no bad input
        } finally {
            status("ready");
        }
    },
    changed() {
        remember();
        for (const step of Object.values(steps)) step.stale?.();
    },
    go(step) {
        location.hash = step;
    },
    steps,
};

function show() {
    const name = location.hash.slice(1);
    const wanted = name in steps ? name : "singer";
    for (const step of Object.keys(steps)) $(`view-${step}`).hidden = step !== wanted;
    for (const link of document.querySelectorAll("nav a"))
        if (link.dataset.step === wanted) link.setAttribute("aria-current", "step");
        else link.removeAttribute("aria-current");
    for (const [step, { hidden }] of Object.entries(steps)) if (step !== wanted) hidden?.();
    $("lead").hidden = wanted !== "singer";
    $("note").hidden = true;
    steps[wanted].shown?.();
}

function look_as(look) {
    const dark = look === "night" || (!look && matchMedia("(prefers-color-scheme: dark)").matches);
    document.documentElement.dataset.theme = dark ? "night" : "paper";
    document.documentElement.classList.toggle("large", look === "large");
    state.theme = look === "large" ? "large" : dark ? "night" : "paper";
}

function settings() {
    const device = navigator.language.startsWith("de") ? "de" : "en";
    set_tongue(state.tongue || device);
    $("tongue").append(...[["", t("as_device")], ["en", "English"], ["de", "Deutsch"]].map(([value, name]) => el("option", { value }, name)));
    $("look").append(...["", "paper", "night", "large"].map((value) => el("option", { value }, t(`look_${value || "device"}`))));
    $("tongue").value = state.tongue;
    $("look").value = state.look;
    $("tongue").addEventListener("change", () => {
        state.tongue = $("tongue").value;
        remember();
        location.reload();
    });
    const looked = () => {
        look_as(state.look);
        for (const step of Object.values(steps)) step.stale?.();
    };
    $("look").addEventListener("change", () => {
        state.look = $("look").value;
        remember();
        looked();
        show();
    });
    $("cents").checked = state.cents;
    $("cents").addEventListener("change", () => {
        state.cents = $("cents").checked;
        remember();
        show();
    });
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => { looked(); show(); });
    look_as(state.look);
}

async function start() {
    const given = lesson();
    recall(given, given && score_of(given.song.file, given.bytes));
    settings();
    try {
        await module_ready;
        page.choices = await told("ask", { ask: "choices" });
    } catch (error) {
        $("status").textContent = "";
        $("trouble").replaceChildren(error_box({ wrong: `${t("no_start")} ${error.wrong ?? error.message ?? error}` }));
        return;
    }
    Object.assign(steps, { singer: singer_step(page), song: song_step(page, asset), plan: plan_step(page), hear: hear_step(page), practise: practise_step(page), voices: voices_step(page) });
    if (given) {
        await tell_said(given.said);
        await steps.song.look();
    }
    addEventListener("hashchange", show);
    document.querySelector(".skip").addEventListener("click", (event) => {
        event.preventDefault(); // the hash names the step
        $("content").focus();
    });
    if (given && !location.hash) location.hash = "plan";
    status("ready");
    show();
    document.documentElement.dataset.ready = "yes"; // tests wait for it
    window.ready_ms = performance.now();
    if ("serviceWorker" in navigator && document.documentElement.dataset.folder) navigator.serviceWorker.register("sw.js");
}

start();
