import { WorkingSteps } from '@/app/_parts/working-steps'
import { money } from '@/app/desk/_frame/words'
import type { ResultSheet } from '@/lib/boards/views'

/** Every prize with whoever has it, who was passed over and why; before a sheet is published, and as it stands on one. */
export function PrizeList({
  sheet,
  title,
}: {
  readonly sheet: Pick<ResultSheet, 'prizes' | 'prizeRule'>
  readonly title: string
}) {
  if (sheet.prizes.length === 0) return null
  return (
    <section className="desk-sheet" aria-labelledby="prizes-h">
      <h2 id="prizes-h">{title}</h2>
      {sheet.prizeRule ? <p className="small second">{sheet.prizeRule}</p> : null}
      <table>
        <caption className="unseen">{title}</caption>
        <thead>
          <tr>
            <th scope="col">Prize</th>
            <th scope="col">Winner</th>
            <th scope="col" className="num">
              Score
            </th>
          </tr>
        </thead>
        <tbody>
          {sheet.prizes.map((prize, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes its order, and two prizes may have one name
            <tr key={at}>
              <th scope="row">
                {prize.name}
                <span className="under second small">
                  {[prize.competition, prize.division].filter(Boolean).join(', ')}
                  {prize.valuePence === null ? '' : `, ${money(prize.valuePence)}`}
                </span>
              </th>
              <td>
                {prize.winner === '–' ? 'nobody' : prize.winner}
                {prize.because ? <span className="under aside">{prize.because}</span> : null}
                {prize.working && prize.working.length > 0 ? (
                  <details className="prize-how">
                    <summary>Who stood where</summary>
                    <WorkingSteps steps={prize.working} heading="h3" />
                  </details>
                ) : null}
              </td>
              <td className="num fig">{prize.score}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
