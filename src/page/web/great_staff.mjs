// SPDX-License-Identifier: MIT
// The staff of practice: two treble staves, the upper two octaves higher (15ma), because the second resonance of a
// front vowel lies above all that is sung. Hollow heads are where the resonances should be, filled ones where they
// are; fR1 is a round head, fR2 a lozenge.
import { pitch_words } from "./state.mjs";

const names = "http://www.w3.org/2000/svg";
const half = 5;                                 // half a space of the staff, in units of the picture
const width = 480, lowest = 21, highest = 60;   // steps above C0: C3 and a fifth above F7 (live.cpp, step_of)
const lower = [30, 32, 34, 36, 38], upper = [44, 46, 48, 50, 52]; // E4..F5, E6..F7
const y_of = (step) => (highest - step) * half;
const aim_x = width * 0.66, trail_from = 70, remembered = 90;
const label = 22; // what the two names need between their lines

function draw(parent, name, attributes, text) {
    const out = document.createElementNS(names, name);
    for (const [key, value] of Object.entries(attributes)) out.setAttribute(key, value);
    if (text) out.textContent = text;
    parent.append(out);
    return out;
}

const round = { d: "M-7.2 2.2C-7.2-2-1.6-5 2.6-5 5.6-5 7.2-3.6 7.2-1.6 7.2 2.4 1.8 5 -2.4 5-5.4 5-7.2 4-7.2 2.2Z" };
const lozenge = { d: "M-8 0 0-6.2 8 0 0 6.2Z" };

/** Steps of ledger lines that a head at this step needs, between and outside the staves. */
function ledgers(step) {
    const at = Math.round(step), out = [];
    if (at < lower[0]) for (let s = lower[0] - 2; s >= at; s -= 2) out.push(s);
    if (at > upper[4]) for (let s = upper[4] + 2; s <= at; s += 2) out.push(s);
    if (at > lower[4] && at < upper[0]) {
        if (at <= 41) for (let s = lower[4] + 2; s <= at; s += 2) out.push(s);
        else for (let s = upper[0] - 2; s >= at; s -= 2) out.push(s);
    }
    return out;
}

export function great_staff(container) {
    const svg = document.createElementNS(names, "svg");
    svg.setAttribute("viewBox", `0 0 ${width} ${y_of(lowest) + 8}`);
    svg.setAttribute("aria-hidden", "true"); // the same is said in words beside it
    for (const step of [...lower, ...upper]) draw(svg, "path", { d: `M4 ${y_of(step)}H${width - 4}`, class: "line" });
    draw(svg, "path", { d: `M4 ${y_of(52)}V${y_of(30)}`, class: "brace" });
    for (const bottom of [30, 44]) draw(svg, "text", { x: 12, y: y_of(bottom), class: "clef" }, "\u{1D11E}");
    draw(svg, "text", { x: 20, y: y_of(56), class: "ottava" }, "15ma");
    const parts = Object.fromEntries([["fR1", round], ["fR2", lozenge]].map(([name, head]) => {
        const group = draw(svg, "g", { class: name });
        return [name, {
            trail: draw(group, "path", { class: "trail" }),
            aim_ledgers: draw(group, "path", { class: "line" }),
            now_ledgers: draw(group, "path", { class: "line" }),
            aim: draw(group, "path", { ...head, class: "aim", visibility: "hidden" }),
            name: draw(group, "text", { class: "name", x: aim_x + 16, visibility: "hidden" }, name),
            now: draw(group, "path", { ...head, class: "head-now", visibility: "hidden" }),
            past: [],
        }];
    }));
    container.replaceChildren(svg);
    const ledger_path = (step, x) => ledgers(step).map((s) => `M${x - 13} ${y_of(s)}h26`).join("");
    const clamped = (step) => Math.min(Math.max(step, lowest), highest);

    return {
        /** `put` is told the step of the staff that is touched or dragged to. */
        on_drag(put) {
            const at = ({ clientY }) => {
                const box = svg.getBoundingClientRect();
                const step = Math.round(highest - (clientY - box.top) * (svg.viewBox.baseVal.height / box.height) / half);
                put(clamped(step));
            };
            svg.classList.add("touched");
            svg.addEventListener("pointerdown", (event) => { svg.setPointerCapture(event.pointerId); at(event); });
            svg.addEventListener("pointermove", (event) => svg.hasPointerCapture(event.pointerId) && at(event));
        },
        /** The nearest step that the staff has. */
        within: clamped,
        clear() {
            for (const part of Object.values(parts)) {
                for (const it of [part.aim, part.name, part.now]) it.setAttribute("visibility", "hidden");
                for (const it of [part.aim_ledgers, part.now_ledgers, part.trail]) it.setAttribute("d", "");
                part.past = [];
            }
        },
        aim(aim) {
            const [low, high] = ["fR1", "fR2"].map((name) => y_of(clamped(aim[name].step)));
            const apart = Math.max(0, (label - (low - high)) / 2);
            for (const [name, part] of Object.entries(parts)) {
                const step = clamped(aim[name].step);
                part.aim.setAttribute("transform", `translate(${aim_x} ${y_of(step)})`);
                part.name.setAttribute("y", y_of(step) + 5 + apart * (name === "fR1" ? 1 : -1));
                part.name.textContent = `${name} ${pitch_words(aim[name])}`;
                part.aim_ledgers.setAttribute("d", ledger_path(step, aim_x));
                for (const it of [part.aim, part.name]) it.setAttribute("visibility", "visible");
                part.now.setAttribute("visibility", "hidden");
                part.now_ledgers.setAttribute("d", "");
                part.trail.setAttribute("d", "");
                part.past = [];
            }
        },
        /** The heads stand under the hollow ones in time, at the right; the trail is the way they came. */
        move(reading) {
            for (const [name, part] of Object.entries(parts)) {
                part.past.push(reading[name] ? clamped(reading[name].step) : null);
                if (part.past.length > remembered) part.past.shift();
                const pace = (aim_x - 26 - trail_from) / remembered, end = aim_x - 26;
                let d = "", broken = true;
                part.past.forEach((step, i) => {
                    if (step === null) { broken = true; return; }
                    d += `${broken ? "M" : "L"}${(end - (part.past.length - i) * pace).toFixed(1)} ${y_of(step).toFixed(1)}`;
                    broken = false;
                });
                part.trail.setAttribute("d", d);
                const step = part.past.at(-1);
                part.now.setAttribute("visibility", step === null ? "hidden" : "visible");
                if (step === null) { part.now_ledgers.setAttribute("d", ""); continue; }
                part.now.setAttribute("transform", `translate(${aim_x} ${y_of(step).toFixed(2)})`);
                part.now_ledgers.setAttribute("d", ledger_path(step, aim_x));
            }
            svg.classList.toggle("there", !!reading.there);
        },
    };
}
