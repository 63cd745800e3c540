'use client'

import { useEffect } from 'react'
import { keepThisPage } from './use-kept-page'

const OURS = process.env.DAYBOOK_APP_BUILD
// Long enough that the worker has the new page and all its files, and that nobody has only glanced at the clock.
const HIDDEN_MS = 30_000
const TRIED = 'daybook-build-tried'

function triedBefore(build: string): boolean {
  try {
    if (sessionStorage.getItem(TRIED) === build) return true
    sessionStorage.setItem(TRIED, build)
    return false
  } catch {
    // Nothing can be remembered here: the next opening of the card takes the new build.
    return true
  }
}

/** A newer build of the card is taken while the phone is in the pocket, once, and never under somebody's thumb. */
export function useNewBuild(build: string | undefined, mayLeave: boolean): void {
  useEffect(() => {
    if (!build || !OURS || build <= OURS || !mayLeave) return
    // Without a signal there is nothing new to keep; the next look at the server brings us here again.
    keepThisPage().catch(() => undefined)
    let timer: ReturnType<typeof setTimeout> | undefined
    const turned = () => {
      clearTimeout(timer)
      if (document.visibilityState !== 'hidden') return
      timer = setTimeout(() => {
        if (document.visibilityState === 'hidden' && !triedBefore(build)) window.location.reload()
      }, HIDDEN_MS)
    }
    turned()
    document.addEventListener('visibilitychange', turned)
    return () => {
      clearTimeout(timer)
      document.removeEventListener('visibilitychange', turned)
    }
  }, [build, mayLeave])
}
