'use client'

import { useEffect, useState } from 'react'
import type { KeepPage } from '@/lib/outbox/signals'

export async function keepThisPage(): Promise<void> {
  await navigator.serviceWorker.register('/card-worker.js', { scope: '/card', updateViaCache: 'none' })
  const { active } = await navigator.serviceWorker.ready
  const files = performance.getEntriesByType('resource').map((entry) => entry.name)
  const page = `${window.location.origin}${window.location.pathname}`
  active?.postMessage({ kind: 'keep-page', page, files } satisfies KeepPage)
}

/** Has the page kept on the phone for when there is no signal. False: this window cannot do that. */
export function useKeptPage(): boolean {
  const [can, setCan] = useState(true)
  useEffect(() => {
    if (!('serviceWorker' in navigator)) {
      setCan(false)
      return
    }
    keepThisPage().catch((fault) => {
      // Without a signal there is nothing to register, and nothing new to keep.
      if (navigator.onLine) {
        console.warn('daybook: this window keeps no pages', fault)
        setCan(false)
      }
    })
  }, [])
  return can
}
