// The divisions of a competition on the sheet, each with who is in it and its own places.

import { rowsOfDivision } from '@/lib/boards/divisions'
import type { CompetitionBoard, DayHead } from '@/lib/boards/views'
import { divisionAt } from './addresses'
import { ResultColumn } from './result-column'
import { halves } from './result-words'

interface Props {
  readonly head: Pick<DayHead, 'societySlug' | 'daySlug'>
  readonly competition: CompetitionBoard
  /** Which competition of the day, from 1. */
  readonly c: number
}

export function ResultDivisions({ head: { societySlug, daySlug }, competition, c }: Props) {
  const divisions = competition.divisions ?? []
  if (divisions.length === 0) return null
  return (
    <div className="res-divisions">
      {divisions.map(({ id, name, sentence }) => {
        const placed = rowsOfDivision(competition, id).filter((row) => row.place !== null)
        const [left, right] = halves(placed)
        return (
          <section key={id} aria-labelledby={`div-${competition.id}-${id}`}>
            <h3 id={`div-${competition.id}-${id}`}>{name}</h3>
            <p className="small second">
              {sentence}{' '}
              <a className="no-print" href={divisionAt(societySlug, daySlug, c, id)}>
                Who is in it, and why
              </a>
            </p>
            {placed.length === 0 ? (
              <p className="small second">No card was returned in this division.</p>
            ) : (
              <div className="two-up">
                <ResultColumn competition={competition} rows={left} of={name} />
                {right.length > 0 && <ResultColumn competition={competition} rows={right} of={name} />}
              </div>
            )}
          </section>
        )
      })}
    </div>
  )
}
