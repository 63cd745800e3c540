'use client'

import { createContext, useEffect, useState } from 'react'
import { HOME_PAGE, type KeepPage, PAGES } from '@/lib/outbox/signals'

/** This page, and the one that the home screen opens: it leads here. */
const pagesToKeep = () => {
  const { origin, pathname } = window.location
  return [...new Set([`${origin}${pathname}`, `${origin}${HOME_PAGE}`])]
}

export async function keepThisPage(): Promise<void> {
  await navigator.serviceWorker.register('/card-worker.js', { scope: '/card', updateViaCache: 'none' })
  const { active } = await navigator.serviceWorker.ready
  const files = performance.getEntriesByType('resource').map((entry) => entry.name)
  for (const page of pagesToKeep()) active?.postMessage({ kind: 'keep-page', page, files } satisfies KeepPage)
}

async function isKept(): Promise<boolean> {
  const pages = await caches.open(PAGES)
  const found = await Promise.all(pagesToKeep().map((page) => pages.match(page)))
  return found.every((page) => page !== undefined)
}

/** Can this page be opened again without a signal? Not yet while it is being put on the phone. */
export type Kept = 'keeping' | 'kept' | 'cannot'

/** What the lines at the foot of every part of the card say it by. */
export const KeptPage = createContext<Kept>('keeping')

const LOOK_MS = 500
/** A signal that broke off half-way, or a window that keeps nothing: after so many looks it is tried seldom. */
const LOOKS = 20
const SELDOM_MS = 15_000

/** Has the page kept on the phone for when there is no signal, and says how far that is. */
export function useKeptPage(): Kept {
  const [kept, setKept] = useState<Kept>('keeping')
  useEffect(() => {
    if (!('serviceWorker' in navigator)) {
      setKept('cannot')
      return
    }
    let gone = false
    let timer: ReturnType<typeof setTimeout> | undefined
    const ask = () =>
      keepThisPage().catch((fault) => {
        // Without a signal there is nothing to register, and nothing new to keep.
        if (!navigator.onLine) return
        console.warn('daybook: this window keeps no pages', fault)
        if (!gone) setKept((now) => (now === 'kept' ? now : 'cannot'))
      })
    const look = async (looks: number) => {
      const here = await isKept().catch(() => false)
      if (gone) return
      if (here) {
        setKept('kept')
        return
      }
      if (looks >= LOOKS) void ask()
      timer = setTimeout(() => void look(looks + 1), looks < LOOKS ? LOOK_MS : SELDOM_MS)
    }
    // A page that is here already is looked at for a newer version all the same.
    void ask()
    void look(1)
    return () => {
      gone = true
      clearTimeout(timer)
    }
  }, [])
  return kept
}
