// SPDX-License-Identifier: MIT
// Resonances put on the staff: the row being typed stands there as note heads, and a head dragged is typed.
import { $ } from "./dom.mjs";
import { great_staff } from "./great_staff.mjs";
import { t } from "./messages.mjs";
import { told } from "./module.mjs";

/** "F5", "F♯5", "F♭5": a step of the staff above C0 and its sign. */
const name_of = (step, sign) => `${"CDEFGAB"[step % 7]}${sign}${Math.floor(step / 7)}`;

export function staff_entry() {
    const staff = great_staff($("typed-staff"));
    let box = null, step = 0, asked = 0;
    const stands = {}; // the step of each head, typed or of the average voice

    const box_of = (number) => $("typed-rows").querySelector(`input[data-vowel="${box.dataset.vowel}"][data-number="${number}"]`);
    const frequency = (text) => told("ask", { ask: "frequency", text }).catch(() => null); // half typed
    async function show() {
        const mine = ++asked, heads = {};
        for (const number of [1, 2]) {
            const text = box_of(number).value.trim();
            const found = text ? await frequency(text) : null;
            if (found) heads[`fR${number}`] = found;
        }
        const due = Object.fromEntries([1, 2].map((number) => [`fR${number}`, box_of(number).dataset.average]).filter(([, pitch]) => pitch));
        for (const name of Object.keys(due)) due[name] = await frequency(due[name]);
        if (mine !== asked) return; // typed on meanwhile
        staff.clear();
        for (const name of ["fR1", "fR2"]) stands[name] = (heads[name] ?? due[name])?.step;
        if (due.fR1 && due.fR2) staff.aim(due);
        staff.move(heads);
        $("staff-says").textContent = t("staff_row", { vowel: box.dataset.vowel, number: box.dataset.number });
    }
    function put(sign) {
        box.value = name_of(step, sign);
        show();
    }
    $("typed-rows").addEventListener("focusin", ({ target }) => {
        if (!target.dataset.vowel) return;
        box = target;
        $("staff-entry").hidden = false;
        show();
    });
    $("typed-rows").addEventListener("input", () => box && show());
    function put_at(at) {
        if (!box || at === step && box.value === name_of(at, "")) return;
        stands[`fR${box.dataset.number}`] = step = at;
        put("");
    }
    staff.on_drag(put_at);
    $("typed-rows").addEventListener("keydown", (event) => {
        const by = { ArrowUp: 1, ArrowDown: -1 }[event.key], at = stands[`fR${box?.dataset.number}`];
        if (!by || event.target !== box || at === undefined) return;
        event.preventDefault();
        put_at(staff.within(Math.round(at) + by));
    });
    $("staff-sharp").addEventListener("click", () => step && put("♯"));
    $("staff-flat").addEventListener("click", () => step && put("♭"));
}
