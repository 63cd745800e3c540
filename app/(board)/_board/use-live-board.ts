'use client'
// Keeps one competition's board fresh in the browser, and remembers for five minutes what changed.

import { useEffect, useRef, useState } from 'react'
import { type Change, changesBetween, keepChanges, MARKED_FOR_MS, spokenSummary } from './changes'
import { type LineState, openLine } from './live-line'
import { type ScreenBoard, screenBoard } from './screen-board'

/** The line's hands in a browser. */
export const browserLine = {
  fetch: (url: string, init: RequestInit) => fetch(url, init),
  open: typeof EventSource === 'undefined' ? null : (url: string) => new EventSource(url),
  after: (ms: number, run: () => void) => {
    const timer = setTimeout(run, ms)
    return () => clearTimeout(timer)
  },
  chance: Math.random,
}

export interface LiveBoard {
  readonly board: ScreenBoard
  readonly line: LineState
  readonly changes: readonly Change[]
  /** For the polite reader: the last burst in one sentence. */
  readonly spoken: string
}

export function useLiveBoard(initial: ScreenBoard, c: number, watch: boolean): LiveBoard {
  const [board, setBoard] = useState(initial)
  const [line, setLine] = useState<LineState>('live')
  const [changes, setChanges] = useState<readonly Change[]>([])
  const [spoken, setSpoken] = useState('')
  const shown = useRef(initial)

  useEffect(() => {
    if (!watch) return
    const { societySlug, daySlug } = shown.current.head
    const opened = openLine(
      {
        society: societySlug,
        day: daySlug,
        version: shown.current.version,
        state: setLine,
        heard: (whole) => {
          const after = screenBoard(whole, c, shown.current.zone)
          if (!after) return
          const now = Date.now()
          const fresh = changesBetween(shown.current, after, now)
          shown.current = after
          setBoard(after)
          setChanges((kept) => keepChanges(kept, fresh, now))
          if (fresh.length > 0) setSpoken(spokenSummary(fresh))
        },
      },
      browserLine,
    )
    const back = () => {
      if (document.visibilityState === 'visible') opened.askNow()
    }
    document.addEventListener('visibilitychange', back)
    // A phone that loses its signal hears it from the system long before the stream notices.
    window.addEventListener('online', opened.askNow)
    window.addEventListener('offline', opened.askNow)
    return () => {
      document.removeEventListener('visibilitychange', back)
      window.removeEventListener('online', opened.askNow)
      window.removeEventListener('offline', opened.askNow)
      opened.close()
    }
  }, [c, watch])

  useEffect(() => {
    if (changes.length === 0) return
    const oldest = Math.min(...changes.map((change) => change.at))
    const timer = setTimeout(
      () => setChanges((kept) => keepChanges(kept, [], Date.now())),
      Math.max(1_000, oldest + MARKED_FOR_MS - Date.now()),
    )
    return () => clearTimeout(timer)
  }, [changes])

  return { board, line, changes, spoken }
}
