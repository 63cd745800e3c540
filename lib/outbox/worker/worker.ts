// The background worker of the card. Two jobs: open the card's pages from the phone, and send what waits when the
// signal is back and the page is closed. It never touches another page of the house, nor anything under /api.

import { browserStore } from '../browser-store'
import { alone, type LockManagerLike } from '../one-sender'
import { postDelivery } from '../post'
import { sendWaiting } from '../sender'
import { CHANNEL, type KeepPage, REACHED, SYNC_TAG } from '../signals'
import { keepPage, keptFile, keptPage } from './kept-pages'

// Set when the worker is built. While developing, files change under one name, so the network goes first.
declare const FILES_NEVER_CHANGE: boolean
declare const self: ServiceWorkerGlobalScope

/** Not in the standard library yet: the browser has a signal again and gives the worker a moment. */
interface SyncEvent extends ExtendableEvent {
  readonly tag: string
}

self.addEventListener('install', () => void self.skipWaiting())
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))

self.addEventListener('message', (event) => {
  const message = event.data as Partial<KeepPage> | null
  if (message?.kind !== 'keep-page' || typeof message.page !== 'string') return
  const files = (message.files ?? []).filter((url) => url.startsWith(`${self.location.origin}/_next/static/`))
  // No signal half-way: what is kept stays, the next opening goes on.
  event.waitUntil(keepPage(message.page, files).then(tellReached, () => undefined))
})

self.addEventListener('fetch', (event) => {
  const { request } = event
  if (request.method !== 'GET') return
  const url = new URL(request.url)
  if (url.origin !== self.location.origin) return
  if (request.mode === 'navigate') {
    event.respondWith(page(event, `${url.origin}${url.pathname}`))
  } else if (url.pathname.startsWith('/_next/static/')) {
    event.respondWith(FILES_NEVER_CHANGE ? keptFile(request) : fetch(request).catch(() => keptFile(request)))
  }
})

async function page(event: FetchEvent, address: string): Promise<Response> {
  const kept = await keptPage(address)
  if (!kept) return fetch(event.request)
  if (!FILES_NEVER_CHANGE) return fetch(event.request).catch(() => kept)
  // The phone's own copy at once: one bar of signal is slower than none. The next opening has the newer page.
  event.waitUntil(keepPage(address, []).then(tellReached, () => undefined))
  return kept
}

/** A page came through: the tabs of the card need not wait for their own next look. */
function tellReached(): void {
  const channel = new BroadcastChannel(CHANNEL)
  channel.postMessage(REACHED)
  channel.close()
}

self.addEventListener('sync', (event) => {
  const sync = event as SyncEvent
  if (sync.tag === SYNC_TAG) sync.waitUntil(sendAll())
})

async function sendAll(): Promise<void> {
  const store = await browserStore(() => crypto.randomUUID())
  const channel = new BroadcastChannel(CHANNEL)
  const now = () => new Date()
  let left = false
  for (const link of await store.linksWaiting()) {
    const locks = self.navigator.locks as LockManagerLike | undefined
    const sent = await alone(store, link, locks, 'worker', Date.now, () =>
      sendWaiting(store, postDelivery, link, now, () => channel.postMessage(link)),
    )
    if (sent === 'busy' || sent.kind === 'try-later') left = true
  }
  channel.close()
  // A rejected sync is how the browser is told to try again later.
  if (left) throw new Error('daybook: some scores are still on this phone')
}
