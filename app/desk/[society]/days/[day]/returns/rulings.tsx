import { timeOf } from '@/app/desk/_frame/moments'
import { asSentence } from '@/lib/boards/in-words'
import type { LateFactLine, ReturnsView, RulingLine } from '@/lib/boards/returns-view'

type Line = { readonly at: string } & ({ readonly ruling: RulingLine } | { readonly late: LateFactLine })

/** Rulings and late facts of the day in one list, newest first. */
export function Rulings({ view }: { readonly view: ReturnsView }) {
  const lines: Line[] = [
    ...view.rulings.map((ruling) => ({ at: ruling.at, ruling })),
    ...view.lateFacts.map((late) => ({ at: late.receivedAt, late })),
  ].sort((one, other) => other.at.localeCompare(one.at))
  return (
    <section aria-labelledby="rulings-h">
      <h2 id="rulings-h">Rulings today</h2>
      {lines.length === 0 ? (
        <p className="second">None yet. Each ruling is kept with its reason, time and name.</p>
      ) : null}
      {lines.length > 0 ? (
        <ol className="ledger rulings">
          {lines.map((line) =>
            'ruling' in line ? (
              <li key={`ruling ${line.ruling.number}`} className={line.ruling.replacedBy === null ? '' : 'replaced'}>
                <p className="in-margin when fig">{timeOf(line.at)}</p>
                <p>
                  <b>
                    {line.ruling.number}. {line.ruling.name}. {line.ruling.sentence}
                  </b>{' '}
                  {asSentence(line.ruling.reason)}{' '}
                  <span className="second">
                    {line.ruling.clause ? `${line.ruling.clause}. ` : ''}Ruled by {line.ruling.by}.
                    {line.ruling.replacedBy === null ? '' : ` Replaced by ruling ${line.ruling.replacedBy}.`}
                  </span>
                </p>
              </li>
            ) : (
              <li key={`late ${line.late.id}`}>
                <p className="in-margin when fig">{timeOf(line.at)}</p>
                <p>
                  <b>Late fact.</b> {line.late.sentence} <span className="second">Kept, not counted.</span>
                </p>
              </li>
            ),
          )}
        </ol>
      ) : null}
    </section>
  )
}
