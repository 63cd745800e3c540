'use client'

import { useRouter } from 'next/navigation'
import { useEffect, useRef } from 'react'

/** Reads the page again when the day has moved on. What is being typed is kept: the fields are not the page's. */
export function LiveRefresh({ society, day }: { readonly society: string; readonly day: string }) {
  const router = useRouter()
  const waiting = useRef<ReturnType<typeof setTimeout> | null>(null)
  useEffect(() => {
    const stream = new EventSource(`/api/live/${society}/${day}`)
    let heard = 0
    stream.addEventListener('version', () => {
      heard += 1
      // The first message only says where the day stands.
      if (heard === 1 || waiting.current) return
      waiting.current = setTimeout(() => {
        waiting.current = null
        router.refresh()
      }, 400)
    })
    return () => {
      stream.close()
      if (waiting.current) clearTimeout(waiting.current)
    }
  }, [router, society, day])
  return null
}
