// SPDX-License-Identifier: MIT
// What was practised: every vowel held long enough, kept in this browser and nowhere else.
const key = "vowelway-practice", most = 5000;

/** The day, ISO 8601, in the person's own zone. (By hand: the browser loads its calendars for the better part of a picture.) */
export const day_of = (date) => [date.getFullYear(), date.getMonth() + 1, date.getDate()].map((part) => String(part).padStart(2, "0")).join("-");

export function recall_repeats() {
    try {
        return JSON.parse(localStorage.getItem(key) ?? "[]");
    } catch {
        return [];
    }
}

export function remember_repeat(repeat) {
    try {
        localStorage.setItem(key, JSON.stringify([...recall_repeats(), { date: day_of(new Date()), ...repeat }].slice(-most)));
    } catch { /* private windows keep nothing */ }
}
