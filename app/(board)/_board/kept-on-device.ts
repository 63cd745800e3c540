'use client'
// Two small wishes kept on the device and nowhere else: whose card is mine today, and whether changes are marked.

import { useCallback, useEffect, useState } from 'react'

/** A wish under a key. A browser that keeps nothing (private window) still honours it until the page is left. */
export function useKept(key: string, first: string | null): [string | null, (value: string | null) => void] {
  const [value, setValue] = useState(first)
  useEffect(() => {
    try {
      const kept = localStorage.getItem(key)
      if (kept !== null) setValue((now) => now ?? kept)
    } catch {
      // Storage is closed to us: the wish lives as long as the page.
    }
  }, [key])
  const keep = useCallback(
    (next: string | null) => {
      setValue(next)
      try {
        if (next === null) localStorage.removeItem(key)
        else localStorage.setItem(key, next)
      } catch {
        // As above.
      }
    },
    [key],
  )
  return [value, keep]
}
