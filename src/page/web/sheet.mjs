// SPDX-License-Identifier: MIT
// The sheet on the screen: the chart, and over it a place for each note to be tapped or walked to by keys.
import { show_bands } from "./bands.mjs";
import { el } from "./dom.mjs";

const svg_names = "http://www.w3.org/2000/svg";

/** The place of a note; an old one is changed where it differs. */
function spot_of(spot, name, rect = document.createElementNS(svg_names, "rect")) {
    const tell = (key, value) => rect.getAttribute(key) !== String(value) && rect.setAttribute(key, value);
    for (const key of ["x", "y", "width", "height"]) tell(key, spot[key]);
    tell("data-note", spot.note);
    if (spot.begins) {
        tell("role", "button");
        if (!rect.hasAttribute("tabindex")) tell("tabindex", "-1");
        tell("aria-label", name);
    }
    return rect;
}

/** What lies over a sheet: made once, and again where other notes stand there. */
function overlay_of(container, plan, place_of) {
    const key = plan.spots.map(({ note, begins }) => `${note}${begins ? "" : "-"}`).join(" ");
    const kept = container.overlay?.key === key ? container.overlay : null;
    const over = kept?.over ?? document.createElementNS(svg_names, "svg");
    over.setAttribute("viewBox", `0 0 ${plan.width} ${plan.height}`);
    const rects = plan.spots.map((spot, i) => spot_of(spot, place_of(plan.notes[spot.note]), kept?.rects[i]));
    if (kept) return kept;
    over.setAttribute("class", "spots");
    over.setAttribute("role", "group");
    const line = document.createElementNS(svg_names, "path");
    line.setAttribute("class", "cursor");
    over.append(...rects, line);
    container.overlay?.over.remove();
    container.overlay = { key, over, rects, line };
    container.append(over);
    return container.overlay;
}

/** Near the top of the window: the note's panel takes the lower part. */
const in_sight = (element) => scrollBy(0, element.getBoundingClientRect().top - innerHeight * 0.12);

const semitone = 7; // pixels of the screen that a note is dragged for each

/** The note chosen is dragged up and down; `move` is told by how many semitones. The container outlives its sheets. */
export function draggable(container) {
    let dragged = null;
    container.addEventListener("pointerdown", (event) => {
        if (!event.target.classList?.contains("chosen") || !container.move) return;
        dragged = { note: Number(event.target.dataset.note), from: event.clientY };
    });
    container.addEventListener("pointermove", (event) => {
        if (!dragged) return;
        const by = Math.trunc((dragged.from - event.clientY) / semitone);
        if (!by) return;
        dragged.from -= by * semitone;
        container.setPointerCapture(event.pointerId); // the sheet that is drawn anew takes its notes away
        container.move(dragged.note, by);
    });
    for (const name of ["pointerup", "pointercancel"]) container.addEventListener(name, () => { dragged = null; });
}

export function sheet_view(container, plan, { place_of, choose, move }) {
    const chart = container.querySelector(".bands") ?? el("div", { class: "bands" });
    if (!chart.parentNode) container.append(chart);
    const drawn = show_bands(chart, plan);
    container.move = move;
    const { over, rects, line } = overlay_of(container, plan, place_of);
    over.setAttribute("aria-label", plan.title || "–");

    const buttons = rects.filter((rect) => rect.hasAttribute("tabindex"));
    if (!buttons.some((one) => one.getAttribute("tabindex") === "0")) buttons[0]?.setAttribute("tabindex", "0");
    const stand_on = (rect) => {
        for (const other of buttons) other.setAttribute("tabindex", other === rect ? "0" : "-1");
        rect.focus();
    };
    over.onclick = ({ target }) => target.dataset.note && choose(Number(target.dataset.note), false);
    over.onkeydown = (event) => {
        const at = buttons.indexOf(event.target);
        if (at < 0) return;
        if (event.shiftKey && move && (event.key === "ArrowUp" || event.key === "ArrowDown")) {
            move(Number(event.target.dataset.note), event.key === "ArrowUp" ? 1 : -1);
            return event.preventDefault();
        }
        const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: buttons.length - 1 }[event.key];
        if (to !== undefined && buttons[to]) stand_on(buttons[to]);
        else if (event.key === "Enter" || event.key === " ") choose(Number(event.target.dataset.note), false);
        else return;
        event.preventDefault();
    };
    let in_system = null;
    return {
        notes: plan.notes,
        /** What is in sight is drawn. */
        drawn,
        /** The cursor within a note, `share` of its way; a note held over a line's end walks through all its places. */
        cursor(note, share) {
            const spots = plan.spots.filter((spot) => spot.note === note);
            if (!spots.length) return line.setAttribute("d", "");
            const all = spots.reduce((sum, { width }) => sum + width, 0);
            let way = share * all, i = 0;
            while (i + 1 < spots.length && way > spots[i].width) way -= spots[i++].width;
            const { x, y, height } = spots[i];
            line.setAttribute("d", `M${x + way} ${y}v${height}`);
            if (in_system === y) return;
            in_system = y;
            in_sight(line);
        },
        stand_on: (note) => { const rect = buttons.find((one) => Number(one.dataset.note) === note); if (rect) stand_on(rect); },
        mark(note, scroll) {
            for (const rect of rects) rect.classList.toggle("chosen", Number(rect.dataset.note) === note);
            const first = rects.find((rect) => Number(rect.dataset.note) === note);
            for (const other of buttons) other.setAttribute("tabindex", other === first ? "0" : "-1");
            if (scroll && first) in_sight(first);
        },
    };
}
