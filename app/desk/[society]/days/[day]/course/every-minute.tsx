'use client'

import { useRouter } from 'next/navigation'
import { useEffect } from 'react'

/** Silence grows although nothing happens: the page is read again each minute while somebody looks. */
export function EveryMinute() {
  const router = useRouter()
  useEffect(() => {
    const timer = setInterval(() => document.visibilityState === 'visible' && router.refresh(), 60_000)
    return () => clearInterval(timer)
  }, [router])
  return null
}
