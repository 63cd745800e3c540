import { Opens } from '@/app/_parts/opens'
import { strokesFigure } from '@/lib/boards/figure'
import type { SideHandicaps } from '@/lib/boards/side-handicaps'

/** The sides of a competition with one ball: what each plays off, whose handicaps, and how they come together. */
export function SideTable({
  competition,
  frozen,
}: {
  readonly competition: SideHandicaps
  readonly frozen: string | null
}) {
  const { competitionId, name, allowance, sides } = competition
  return (
    <section aria-labelledby={`side-handicaps-${competitionId}`} className="desk-sheet">
      <h2 id={`side-handicaps-${competitionId}`}>Sides of {name}</h2>
      <p className="second">
        One handicap a side, {allowance}, from the course handicaps of its players.{' '}
        {frozen === null ? 'The figures of now: freezing fixes them.' : `The figures frozen ${frozen}.`}
      </p>
      {sides.length === 0 ? (
        <p>No sides yet: they are made with the draw.</p>
      ) : (
        <div className="scroll" tabIndex={0} role="group" aria-label={`Handicaps of the sides of ${name}`}>
          <table className="desk-table">
            <caption className="unseen">What each side of {name} plays off</caption>
            <thead>
              <tr>
                <th scope="col">Side</th>
                <th scope="col">From</th>
                <th scope="col" className="num">
                  Plays off
                </th>
              </tr>
            </thead>
            <tbody>
              {sides.map((side) => (
                <tr key={side.sideId}>
                  <th scope="row">{side.name}</th>
                  <td>{side.sentence}</td>
                  <td className="num">
                    <Opens
                      className="fig ph"
                      href={`?open=${side.entryIds[0]}&in=${competitionId}#working`}
                      label={`${side.name} play off ${strokesFigure(side.playingHandicap)} in ${name}: open the working`}
                    >
                      {strokesFigure(side.playingHandicap)}
                    </Opens>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  )
}
