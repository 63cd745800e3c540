'use client'

import { useDroppable } from '@dnd-kit/core'
import type { ReactNode } from 'react'
import { lastHoleOf, type RoundHoles } from '@/lib/rules/hole-numbers'

interface Start {
  readonly time: string
  readonly hole: number
}

interface Props {
  readonly id: string
  readonly title: string
  readonly count: number
  readonly children: ReactNode
  readonly start?: Start
  readonly shotgun?: boolean
  readonly round?: RoundHoles
  readonly shut?: boolean
  readonly waits?: boolean
  readonly onStart?: (start: Start) => void
}

/** One group: its time in the margin, its players beside it. */
export function GroupRow({ id, title, count, children, start, shotgun, round, shut, waits, onStart }: Props) {
  const { setNodeRef, isOver } = useDroppable({ id })
  return (
    <section
      ref={setNodeRef}
      className={['draw-group', isOver ? 'over' : '', waits ? 'waits' : ''].join(' ').trim()}
      aria-label={`${title}, ${count} ${count === 1 ? 'player' : 'players'}`}
    >
      <div className="draw-start">
        <h3 className="small second">{title}</h3>
        {start && onStart ? (
          <>
            <input
              className="cell fig time"
              type="time"
              aria-label={`Start of ${title.toLowerCase()}`}
              value={start.time}
              readOnly={shut}
              onChange={(event) => onStart({ ...start, time: event.target.value })}
            />
            {shotgun ? (
              <label className="start-hole">
                hole{' '}
                <input
                  className="cell fig"
                  type="number"
                  min={round?.firstHole}
                  max={round && lastHoleOf(round)}
                  aria-label={`Starting hole of ${title.toLowerCase()}`}
                  value={start.hole}
                  readOnly={shut}
                  onChange={(event) => onStart({ ...start, hole: Number(event.target.value) })}
                />
              </label>
            ) : null}
          </>
        ) : null}
      </div>
      <ul className="seats">
        {children}
        {count === 0 ? <li className="second">nobody: this group goes when the draw is saved</li> : null}
      </ul>
    </section>
  )
}
