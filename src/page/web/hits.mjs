// SPDX-License-Identifier: MIT
// What was hit, kept in this browser and nowhere else.
const key = "vowelway-practice", most = 2000;

export function recall_hits() {
    try {
        return JSON.parse(localStorage.getItem(key) ?? "[]");
    } catch {
        return [];
    }
}

export function remember_hit(hit) {
    const day = new Date();
    const date = [day.getFullYear(), `${day.getMonth() + 1}`.padStart(2, "0"), `${day.getDate()}`.padStart(2, "0")].join("-");
    try {
        localStorage.setItem(key, JSON.stringify([...recall_hits(), { date, ...hit }].slice(-most)));
    } catch { /* private windows keep nothing */ }
}
