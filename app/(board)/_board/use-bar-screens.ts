'use client'
// All the competitions of the day kept fresh on one line, with what has just changed in each.

import { useEffect, useRef, useState } from 'react'
import { changesBetween, MARKED_FOR_MS } from './changes'
import { type LineState, openLine } from './live-line'
import { type ScreenBoard, screenBoard } from './screen-board'
import { browserLine } from './use-live-board'

export interface BarScreens {
  readonly screens: readonly ScreenBoard[]
  readonly line: LineState
  /** By "competition entrant": when it changed. */
  readonly changed: ReadonlyMap<string, number>
}

export function useBarScreens(initial: readonly ScreenBoard[], places: readonly number[]): BarScreens {
  const [screens, setScreens] = useState(initial)
  const [line, setLine] = useState<LineState>('live')
  const [changed, setChanged] = useState<ReadonlyMap<string, number>>(new Map())
  const shown = useRef(initial)
  const which = useRef(places)

  useEffect(() => {
    const [first] = shown.current
    if (!first) return
    const opened = openLine(
      {
        society: first.head.societySlug,
        day: first.head.daySlug,
        version: first.version,
        state: setLine,
        heard: (whole) => {
          const now = Date.now()
          const after = which.current.flatMap((c) => screenBoard(whole, c, first.zone) ?? [])
          const fresh = after.flatMap((board, at) => {
            const before = shown.current[at]
            if (!before) return []
            return changesBetween(before, board, now).map(({ entrant }) => `${board.competition.id} ${entrant}`)
          })
          shown.current = after
          setScreens(after)
          setChanged((kept) => {
            const still = [...kept].filter(([, at]) => now - at < MARKED_FOR_MS)
            return new Map([...still, ...fresh.map((key) => [key, now] as const)])
          })
        },
      },
      browserLine,
    )
    window.addEventListener('online', opened.askNow)
    window.addEventListener('offline', opened.askNow)
    return () => {
      window.removeEventListener('online', opened.askNow)
      window.removeEventListener('offline', opened.askNow)
      opened.close()
    }
  }, [])

  return { screens, line, changed }
}
