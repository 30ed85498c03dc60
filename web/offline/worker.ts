/**
 * Keeps the app itself in the browser, so that it opens without a network.
 *
 * In      the files of this version, by a list made while it is built (`FILES`), and a word for it (`VERSION`).
 * Kept    one cache for each version. The one before stays, for pages of it that are still open and ask for a part they have not needed yet.
 * A newer version waits until a page says that it may take over: nothing changes under a maker's hand.
 */
declare const self: ServiceWorkerGlobalScope
declare const FILES: readonly string[]
declare const VERSION: string

const FAMILY = 'nestwright '
const CACHE = FAMILY + VERSION
const PAGE = 'index.html'
/** A file is the same, whoever asks for it. */
const ANYHOW = { ignoreVary: true }

self.addEventListener('install', (event) => event.waitUntil(fill()))
self.addEventListener('activate', (event) => event.waitUntil(takeOver()))
self.addEventListener('message', ({ data }) => {
  if (data === 'take over') void self.skipWaiting()
})
self.addEventListener('fetch', (event) => {
  const { method, url, mode } = event.request
  if (method !== 'GET' || !url.startsWith(self.registration.scope)) return
  event.respondWith(mode === 'navigate' ? page(event.request) : part(event.request))
})

/** All files of this version; those that the version before had are not fetched again, for their names change with what is in them. */
async function fill(): Promise<void> {
  const cache = await caches.open(CACHE)
  await Promise.all(
    FILES.map(async (file) => {
      const known = file.startsWith('assets/') ? await caches.match(file, ANYHOW) : undefined
      await cache.put(file, known ?? (await fetched(file)))
    }),
  )
}

async function fetched(file: string): Promise<Response> {
  const response = await fetch(file, { cache: 'no-cache' })
  if (!response.ok) throw new TypeError(`${file} could not be fetched`)
  return response
}

async function takeOver(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(FAMILY) && name !== CACHE)
  await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)))
  await self.clients.claim()
}

/** The page of this version, also where the address carries more. */
async function page(request: Request): Promise<Response> {
  const { pathname } = new URL(request.url)
  const root = new URL(self.registration.scope).pathname
  const own = pathname === root || pathname === root + PAGE
  return (own ? await (await caches.open(CACHE)).match(PAGE, ANYHOW) : undefined) ?? fetch(request)
}

async function part(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE)
  return (await cache.match(request, ANYHOW)) ?? (await caches.match(request, ANYHOW)) ?? fetch(request)
}
