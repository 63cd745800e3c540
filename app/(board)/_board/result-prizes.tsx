// The prizes of the sheet; each opens into how it came to whoever has it.

import { WorkingSteps } from '@/app/_parts/working-steps'
import { MATCHES_DECIDE } from '@/lib/boards/prizes'
import type { ResultSheet } from '@/lib/boards/views'
import { money } from './result-words'

type Prize = ResultSheet['prizes'][number]

const isLeftToMatches = ({ entrant, because }: Prize) => entrant === null && because === MATCHES_DECIDE

export function ResultPrizes({ sheet }: { sheet: ResultSheet }) {
  const names = new Map(sheet.board.competitions.map(({ id, name }) => [id, name]))
  // One sentence for the prizes of a competition that its matches decide, not the same under each of them.
  const prizes = sheet.prizes.filter(
    (prize, at) =>
      !isLeftToMatches(prize) ||
      sheet.prizes.findIndex((one) => one.competition === prize.competition && isLeftToMatches(one)) === at,
  )
  const several = new Set(sheet.prizes.map(({ competition }) => competition)).size > 1
  return (
    <section aria-labelledby="pr-h">
      <h2 id="pr-h">Prizes</h2>
      <table className="prizes ruled">
        <caption className="unseen">Prizes</caption>
        <tbody>
          {prizes.map((prize, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the sheet is frozen, and two prizes may have one name
            <tr key={at}>
              <th scope="row">
                {isLeftToMatches(prize) ? 'Prizes of the matches' : prize.name}
                {(several || prize.division) && (
                  <span className="small second block">
                    {[several ? (names.get(prize.competition) ?? prize.competition) : null, prize.division]
                      .filter(Boolean)
                      .join(', ')}
                  </span>
                )}
              </th>
              <td>
                {prize.winner}
                {prize.score && `, ${prize.score}`}
                {prize.because && <em className="block">{prize.because}</em>}
                {prize.working && prize.working.length > 0 && (
                  <details className="prize-how no-print">
                    <summary>How it was won</summary>
                    <WorkingSteps steps={prize.working} heading="h3" />
                  </details>
                )}
              </td>
              <td className="num fig">{money(prize.valuePence)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {sheet.prizeRule && <p className="small second">{sheet.prizeRule}</p>}
    </section>
  )
}
