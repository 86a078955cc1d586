// SPDX-License-Identifier: MIT
// Charts put into the document a piece at a picture: the page answers in between. A sheet drawn again changes only the
// bands that differ.
import { el, svg_of } from "./dom.mjs";

/** After the next picture; a window out of sight has none. */
const next_picture = () => new Promise((done) => {
    const late = setTimeout(done, 200);
    requestAnimationFrame(() => {
        clearTimeout(late);
        setTimeout(done);
    });
});

/** Whoever draws into a holder after us makes us stop. */
function turn(holder) {
    const age = (holder.age ?? 0) + 1;
    holder.age = age;
    return () => holder.age === age;
}

/** For each band its element: the one that shows it already, else one that shows what stood there, else a new one. */
function elements_of(holder, texts) {
    const old = [...holder.children], shown = new Map(old.map((one) => [one.told, one])), taken = new Set();
    const take = (one) => (one && !taken.has(one) ? (taken.add(one), one) : null);
    const same = texts.map((text) => take(shown.get(text)));
    const all = same.map((one, i) => one ?? take(old[i]) ?? el("div"));
    for (const one of old) {
        if (taken.has(one)) continue;
        holder.drawer.forget(one);
        one.remove();
    }
    let at = holder.firstElementChild;
    for (const one of all) {
        if (one === at) at = at.nextElementSibling;
        else holder.insertBefore(one, at);
    }
    return all;
}

function band_svg(text, first) {
    const svg = svg_of(text);
    if (first) return svg; // says what the picture is; the others are its parts
    svg.removeAttribute("role");
    svg.setAttribute("aria-hidden", "true");
    return svg;
}

const a_slice = 4; // milliseconds of work between two pictures

/** Bands near the window are drawn, those nearest to it first; what is far away costs nothing until it is looked at. */
function drawer_of(holder) {
    const waiting = new Set();
    let drawing = null;
    const away = (one) => {
        const { top, bottom } = one.getBoundingClientRect();
        return Math.max(0, top - innerHeight, -bottom);
    };
    function draw(one) {
        waiting.delete(one);
        if (one.told !== one.text) one.replaceChildren(band_svg(one.text, one === holder.firstElementChild));
        one.told = one.text;
        one.style.contentVisibility = "visible";
    }
    async function draw_all() {
        while (waiting.size) {
            await next_picture();
            const began = performance.now(), list = [...waiting].map((one) => [away(one), one]).sort(([a], [b]) => a - b);
            for (const [, one] of list) {
                draw(one);
                if (performance.now() - began > a_slice) break;
            }
        }
        drawing = null;
    }
    const want = (one) => {
        waiting.add(one);
        drawing ??= draw_all();
    };
    const watcher = new IntersectionObserver((entries) => {
        for (const { target, isIntersecting } of entries) {
            target.near = isIntersecting;
            if (isIntersecting) {
                want(target);
            } else {
                waiting.delete(target);
                target.style.contentVisibility = "hidden";
            }
        }
    }, { rootMargin: "60%" });
    return {
        /** Elements with their `text`. */
        async show(elements) {
            for (const one of elements) {
                if (one.near === undefined) watcher.observe(one);
                else if (one.near && one.told !== one.text) want(one);
            }
            await next_picture(); // the watcher has looked
            await next_picture();
            await drawing;
        },
        forget(one) {
            watcher.unobserve(one);
            waiting.delete(one);
        },
    };
}

/** The bands of a sheet ({width, bands: [{height, svg as UTF-8}]}); resolves when those near the window are drawn. */
export async function show_bands(holder, { width, bands }) {
    const utf8 = new TextDecoder(), texts = bands.map(({ svg }) => utf8.decode(svg));
    holder.drawer ??= drawer_of(holder);
    const elements = elements_of(holder, texts);
    elements.forEach((one, i) => {
        one.text = texts[i];
        one.style.aspectRatio = `${width} / ${bands[i].height}`;
    });
    await holder.drawer.show(elements);
}

const a_piece = 40; // elements

/** Many elements, some at a picture; false where somebody else draws there now. */
export async function append_in_pieces(holder, elements, still = () => true) {
    for (let i = 0; i < elements.length; i += a_piece) {
        if (i > 0) await next_picture();
        if (!still()) return false;
        holder.append(...elements.slice(i, i + a_piece));
    }
    return true;
}

/** Other charts, page by page. */
export async function show_charts(holder, pages) {
    const still = turn(holder);
    holder.replaceChildren();
    for (const text of pages) {
        await next_picture();
        if (!still()) return;
        const svg = svg_of(text), group = svg.lastElementChild, marks = [...group.children];
        group.replaceChildren();
        holder.append(svg);
        await append_in_pieces(group, marks, still);
    }
}
