// The service worker, as the browser runs it; `app/sw.js/route.ts` puts `BUILD` in front of it.
//
// It keeps the pocket page and the files of its build, so that the page opens without signal. Answers of
// the api and live lines never pass through it. A new version is filled beside the old one and takes over
// at once; the one before it is kept as well, because pages that are open may still ask for its files.
// Nothing is ever reloaded under somebody's hands.

/* global BUILD */

const PREFIX = 'quartermark-';
const CACHE = `${PREFIX}${BUILD.id}`;
const POCKET = '/pocket';
const ANY = { ignoreSearch: true, ignoreVary: true };

self.addEventListener('install', (event) => {
  event.waitUntil(fill().then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOld().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) return;
  if (url.pathname.startsWith('/_next/static/')) event.respondWith(fromCache(request));
  else if (request.mode === 'navigate' && url.pathname === POCKET)
    event.respondWith(pocket(request));
  else if (request.mode === 'navigate' && !url.pathname.startsWith('/api/'))
    event.respondWith(fetch(request).catch(() => toPocket(url)));
});

async function fill() {
  const cache = await caches.open(CACHE);
  await cache.addAll([new Request(POCKET, { cache: 'reload' }), ...BUILD.files]);
}

/** All but this version and the one before it; the names come in the order of making. */
async function dropOld() {
  const ours = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(ours.slice(0, -1).map((name) => caches.delete(name)));
}

async function fromCache(request) {
  return (await caches.match(request, ANY)) ?? fetch(request);
}

async function pocket(request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(POCKET, ANY)) ?? fetch(request);
}

/** A page that cannot be had leads to the one that can; that page says why. */
function toPocket(url) {
  const wanted = encodeURIComponent(`${url.pathname}${url.search}`);
  return Response.redirect(`${POCKET}?wanted=${wanted}`, 302);
}
