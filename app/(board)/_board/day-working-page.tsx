// A figure of the day that belongs to no single card, opened like the others: the points of a team, a division.

import { WorkingSteps } from '@/app/_parts/working-steps'
import type { DayWorking } from '@/lib/boards/day-working'
import { boardAt } from './addresses'

export function DayWorkingPage({ working }: { working: DayWorking }) {
  const { societySlug, daySlug, c, d } = working
  return (
    <div className="working">
      <div className="wk-title">
        <div>
          <p className="sc second">Working · {working.of}</p>
          <h1>{working.title}</h1>
          <p className="lead">{working.sentence}</p>
        </div>
        <p className="wk-hero">
          <span className="fig trim">{working.figure}</span>
          <span>{working.unit}</span>
        </p>
      </div>
      <WorkingSteps steps={working.steps} />
      <p className="acts no-print">
        <a className="btn" href={boardAt(societySlug, daySlug, { c: c ?? 1, d })}>
          Back to the board
        </a>
      </p>
    </div>
  )
}
