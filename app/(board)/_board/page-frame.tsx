// The sheet every page of a day is printed on: society and place in the season at the head, folio at the foot.

import type { ReactNode } from 'react'
import { Folio } from '@/app/_parts/folio'
import { RunningHead } from '@/app/_parts/running-head'
import type { DayHead } from '@/lib/boards/views'
import { countAt, dayAt, resultAt, societyAt, startAt } from './addresses'

export interface FrameProps {
  readonly head: DayHead
  readonly children: ReactNode
  readonly className?: string
  /** The page itself, which needs no link to itself. */
  readonly here?: 'board' | 'start' | 'result'
}

export function PageFrame({ head, children, className, here }: FrameProps) {
  const { societySlug, daySlug } = head
  return (
    <div className={className ? `page ${className}` : 'page'}>
      <RunningHead
        society={head.societyName}
        href={societyAt(societySlug)}
        place={`Day ${head.dayNumber}`}
        more={` of ${head.dayCount} · ${head.seasonName}`}
      />
      <main id="main">{children}</main>
      <nav className="day-links no-print" aria-label="This day">
        {here !== 'board' && (
          <a href={dayAt(societySlug, daySlug)}>{head.status === 'called' ? 'The day' : 'The board'}</a>
        )}
        {here !== 'start' && head.status !== 'called' && <a href={startAt(societySlug, daySlug)}>Start sheet</a>}
        {head.published !== null && here !== 'result' && <a href={resultAt(societySlug, daySlug)}>Result</a>}
        <a href={countAt(societySlug)}>How we count</a>
        <a href={societyAt(societySlug)}>Fixture card</a>
      </nav>
      <Folio name={head.societyName} place={`Day ${head.dayNumber}`} />
    </div>
  )
}
