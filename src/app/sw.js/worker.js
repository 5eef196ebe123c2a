// What the phone keeps so that the pitch works without a signal. Sent by route.ts with `build`, `pages` and `files`
// in front of it; those are the only addresses it ever answers. All else goes to the network as if it were not there.

/* global build, pages, files */

const prefix = 'turnbook-'
const own = prefix + build

self.addEventListener('install', (event) => {
  // All or nothing: a phone that holds half a build must go on with the one before.
  const keep = async () => {
    const cache = await caches.open(own)
    try {
      await cache.addAll([...pages, ...files].map((path) => new Request(path, { cache: 'reload' })))
    } catch (error) {
      await caches.delete(own)
      throw error
    }
    await self.skipWaiting()
  }
  event.waitUntil(keep())
})

self.addEventListener('activate', (event) => {
  const tidy = async () => {
    // Pages of the build before may still be open, and will ask for its files.
    const names = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== own)
    await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)))
    await self.clients.claim()
  }
  event.waitUntil(tidy())
})

// A kept answer carries its own address; with it the page would lose what stands behind # in the address it was
// opened by, and workers would not start. What is made anew from its body has none.
const anew = ({ body, status, headers }) => new Response(body, { status, headers })

async function pageOf(path, request) {
  const kept = await caches.match(path, { cacheName: own })
  return kept ? anew(kept) : fetch(request)
}

async function fileOf(request) {
  const kept = await caches.match(new URL(request.url).pathname, { ignoreVary: true })
  return kept ? anew(kept) : fetch(request)
}

self.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== self.location.origin) return
  if (request.mode === 'navigate') {
    if (pages.includes(pathname)) event.respondWith(pageOf(pathname, request))
    return
  }
  if (pathname.startsWith('/_next/static/') || files.includes(pathname)) event.respondWith(fileOf(request))
})

// A page asks whether everything is here; the answer says for which build.
self.addEventListener('message', (event) => {
  if (event.data !== 'isReady') return
  const answer = async () => {
    // To open it would make it again after somebody has signed out.
    const kept = (await caches.has(own)) ? await (await caches.open(own)).keys() : []
    event.ports[0]?.postMessage({ build, isReady: kept.length >= pages.length + files.length })
  }
  event.waitUntil(answer())
})
