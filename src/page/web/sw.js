// SPDX-License-Identifier: MIT
// Keeps the folder for use without a connection. Asks for nothing but the folder's own files.
const cache_name = "vowelway-AGE";
const files = [/*files*/];

self.addEventListener("install", (event) => event.waitUntil(
    caches.open(cache_name).then((cache) => cache.addAll(files)).then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(
    caches.keys().then((names) => Promise.all(names.filter((name) => name.startsWith("vowelway-") && name !== cache_name).map((name) => caches.delete(name))))
        .then(() => self.clients.claim())));
self.addEventListener("fetch", (event) => {
    if (event.request.method !== "GET" || new URL(event.request.url).origin !== location.origin) return;
    event.respondWith(caches.open(cache_name).then((cache) => cache.match(event.request, { ignoreSearch: true })).then((kept) => kept ?? fetch(event.request)));
});
