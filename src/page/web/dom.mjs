// SPDX-License-Identifier: MIT
// Small helpers for the document.
export const $ = (id) => document.getElementById(id);

/** An element: its name, its attributes (on*: listeners), its children. */
export function el(name, attributes = {}, ...children) {
    const out = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) {
        if (value === undefined || value === null || value === false) continue;
        if (key.startsWith("on")) out.addEventListener(key.slice(2), value);
        else if (key === "class") out.className = value;
        else out.setAttribute(key, value === true ? "" : value);
    }
    out.append(...children.filter((child) => child !== null && child !== undefined));
    return out;
}

/** Hands a file to the person. */
export function save_file(name, text, type) {
    const url = URL.createObjectURL(new Blob([text], { type }));
    const link = el("a", { href: url, download: name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
}

/** An SVG of the module, put into the document as a picture with its own words. */
export function svg_of(text) {
    const svg = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
    svg.removeAttribute("width");
    svg.removeAttribute("height");
    return document.importNode(svg, true);
}

/** What is wrong, where, and how to mend it. */
export function error_box(error) {
    const place = [error.file, error.line ? `${error.line}:${error.column}` : "", error.musical].filter(Boolean).join(", ");
    return el("div", { class: "error", role: "alert" },
        el("p", { class: "wrong" }, [place, error.wrong ?? String(error)].filter(Boolean).join(": ")),
        error.remedy ? el("p", {}, error.remedy) : null);
}
