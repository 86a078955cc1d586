// SPDX-License-Identifier: MIT
// The size of a text as the browser sets it, for the layout of charts. Measured large: small type is rounded.
const large = 32;

export function measured_text() {
    const context = new OffscreenCanvas(1, 1).getContext("2d");
    return (text, { family, size, bold, italic }) => {
        context.font = `${italic ? "italic " : ""}${bold ? "bold " : ""}${size * large}px "${family}"`;
        const m = context.measureText(text);
        return {
            advance: m.width / large,
            left: -m.actualBoundingBoxLeft / large,
            right: m.actualBoundingBoxRight / large,
            above: m.actualBoundingBoxAscent / large,
            below: m.actualBoundingBoxDescent / large,
        };
    };
}
