// SPDX-License-Identifier: MIT
// Keeps the folder for use without a connection. Asks for nothing but the folder's own files.
const cache_name = "vowelway-AGE";
const files = [/*files*/];

self.addEventListener("install", (event) => event.waitUntil(
    caches.open(cache_name).then((cache) => cache.addAll(files)).then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(
    caches.keys().then((names) => Promise.all(names.filter((name) => name.startsWith("vowelway-") && name !== cache_name).map((name) => caches.delete(name))))
        .then(() => self.clients.claim())));
async function answer(request) {
    const cache = await caches.open(cache_name);
    const kept = await cache.match(request, { ignoreSearch: true });
    if (kept) return kept;
    const found = await fetch(request);
    if (found.ok && request.url.includes("/synthesiser/")) cache.put(request, found.clone()); // once asked for, it is kept
    return found;
}
self.addEventListener("fetch", (event) => {
    if (event.request.method === "GET" && new URL(event.request.url).origin === location.origin) event.respondWith(answer(event.request));
});
