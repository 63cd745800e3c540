// The divisions of a competition on the sheet, each with who is in it and its own places.

import { rowsOfDivision } from '@/lib/boards/divisions'
import type { CompetitionBoard } from '@/lib/boards/views'
import { ResultColumn } from './result-column'
import { halves } from './result-words'

export function ResultDivisions({ competition }: { readonly competition: CompetitionBoard }) {
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
            <p className="small second">{sentence}</p>
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
