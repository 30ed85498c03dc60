/**
 * Keeps the app itself in the browser, so that it opens without a network.
 *
 * In      the list of this version's files (`FILES`) and the version's name (`VERSION`), both made by the build.
 * Cache   one for each version. The previous one stays for its pages that are still open and may need a part they have not loaded yet.
 * A newer version waits until a page says that it may take over, so nothing changes while a maker is at work.
 */
declare const self: ServiceWorkerGlobalScope
declare const FILES: readonly string[]
declare const VERSION: string

const FAMILY = 'nestwright '
const CACHE = FAMILY + VERSION
const PAGE = 'index.html'
/** The files are the same for every request header. */
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

/** Caches all files of this version. Files that the previous version had are not fetched again, because a file's name changes with its content. */
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

/** The page of this version, whatever follows in the address. */
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
