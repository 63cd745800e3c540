// The browser's own storage, network, locks, channel and clock, put together for the card's page.

import { browserStore } from './browser-store'
import { liveLine } from './live-line'
import { memoryStore } from './memory-store'
import type { Phone } from './phone'
import { fetchPack, postDelivery } from './post'
import { CHANNEL, REACHED, SYNC_TAG } from './signals'
import { steadyStore } from './steady-store'
import type { OutboxStore } from './store'

export const newId = () => crypto.randomUUID()

/** A browser that keeps nothing still scores while its page is open; the store says so, and the screen with it. */
async function openStore(): Promise<OutboxStore> {
  try {
    return steadyStore(await browserStore(newId), newId)
  } catch (fault) {
    console.warn('daybook: this browser keeps nothing', fault)
    return memoryStore(newId)
  }
}

let opened: Promise<OutboxStore> | null = null
/** One connection a page: a second one would stand in the way of an upgrade. */
export function storeOnThisPhone(): Promise<OutboxStore> {
  opened ??= openStore()
  return opened
}

interface WithSync extends ServiceWorkerRegistration {
  readonly sync?: { register(tag: string): Promise<void> }
}

async function askBackground(): Promise<void> {
  const registration = (await navigator.serviceWorker?.getRegistration()) as WithSync | undefined
  // Refused where the holder switched background work off: the page sends by itself while it is open.
  await registration?.sync?.register(SYNC_TAG).catch(() => undefined)
}

export async function thisPhone(): Promise<Phone> {
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(CHANNEL)
  return {
    store: await storeOnThisPhone(),
    post: postDelivery,
    fetchPack,
    locks: navigator.locks as Phone['locks'],
    me: newId(),
    now: () => new Date(),
    chance: Math.random,
    later(run, ms) {
      const timer = setTimeout(run, ms)
      return () => clearTimeout(timer)
    },
    tell: (link) => channel?.postMessage(link),
    hear(run) {
      const heard = (event: MessageEvent) => typeof event.data === 'string' && run(event.data)
      channel?.addEventListener('message', heard)
      return () => channel?.removeEventListener('message', heard)
    },
    whenReachable(run) {
      const seen = () => document.visibilityState === 'visible' && run()
      window.addEventListener('online', run)
      window.addEventListener('pageshow', seen)
      document.addEventListener('visibilitychange', seen)
      return () => {
        window.removeEventListener('online', run)
        window.removeEventListener('pageshow', seen)
        document.removeEventListener('visibilitychange', seen)
      }
    },
    liveLine,
    tellReached: () => channel?.postMessage(REACHED),
    whenReached(run) {
      const heard = (event: MessageEvent) => event.data === REACHED && run()
      channel?.addEventListener('message', heard)
      return () => channel?.removeEventListener('message', heard)
    },
    looking: () => document.visibilityState === 'visible',
    askBackground: () => void askBackground(),
  }
}

/** What the browser says about clearing the card when it wants room; null where it cannot be asked. */
export async function isPromised(): Promise<boolean | null> {
  return (await navigator.storage?.persisted?.().catch(() => undefined)) ?? null
}

/** Asks the browser to promise, once. Most grant it in silence, some ask the holder, some refuse. */
export async function askToKeep(): Promise<boolean | null> {
  if (await isPromised()) return true
  return (await navigator.storage?.persist?.().catch(() => undefined)) ?? null
}

export interface CardHere {
  readonly link: string
  readonly dayName: string
  readonly date: string
  readonly group: number
  readonly waitingScores: number
  readonly waitingSignatures: number
  /** The link leads nowhere any more. */
  readonly ended: boolean
}

/** The cards this phone holds. */
export async function cardsOnThisPhone(): Promise<readonly CardHere[]> {
  const store = await storeOnThisPhone()
  const packs = await store.packs()
  return Promise.all(
    packs.map(async ({ link, pack }) => {
      const [waiting, queue] = await Promise.all([store.waiting(link, 1000), store.queue(link)])
      const signatures = waiting.filter((each) => each.fact.kind === 'signature').length
      return {
        link,
        dayName: pack.dayName,
        date: pack.date,
        group: pack.group.number,
        waitingScores: waiting.length - signatures,
        waitingSignatures: signatures,
        ended: queue.ended !== null,
      }
    }),
  )
}
