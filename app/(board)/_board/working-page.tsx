// A figure opened: the running figure in the margin, the step and its clause beside it.

import { StrokeBand, WorkingSteps } from '@/app/_parts/working-steps'
import type { CardWorking } from '@/lib/boards/card-views'
import type { HoleLine } from '@/lib/rules/standings'
import { boardAt, cardAt } from './addresses'
import { NextHoles } from './next-holes'

/** The band draws a stroke for each index; an index stands where a hole would. */
function bandLines(working: CardWorking): HoleLine[] {
  return working.strokesByIndex.map(({ strokeIndex, strokes }) => ({
    hole: strokeIndex,
    par: 0,
    strokeIndex,
    strokes,
    gross: null,
    net: null,
    value: null,
  }))
}

function IfItHadBeen({ working }: { working: CardWorking }) {
  const here = (is: boolean) => (is ? 'fig here' : 'fig')
  return (
    <section aria-labelledby="if-h">
      <h2 id="if-h">If it had been…</h2>
      <div className="scroll" tabIndex={0} role="region" aria-label="Other scores on this hole">
        <table className="if">
          <caption className="unseen">The figure on this hole for other scores</caption>
          <tbody>
            <tr>
              <th scope="row">Gross</th>
              {working.ifItHadBeen.map((other) => (
                <td key={other.gross} className={here(other.here)}>
                  {other.gross === 'x' ? <span className="if-none">no score</span> : other.gross}
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">Net</th>
              {working.ifItHadBeen.map((other) => (
                <td key={other.gross} className={here(other.here)}>
                  {other.net ?? '–'}
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">{working.unit.replace(/^./, (letter) => letter.toUpperCase())}</th>
              {working.ifItHadBeen.map((other) => (
                <td key={other.gross} className={here(other.here)}>
                  {other.value}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </div>
    </section>
  )
}

export function WorkingPage({ working, c }: { working: CardWorking; c: number }) {
  const { societySlug, daySlug, entryId } = working
  const under =
    working.strokesAt !== null && working.strokesByIndex.length > 0
      ? { [working.strokesAt]: <StrokeBand lines={bandLines(working)} here={working.strokeIndex ?? undefined} /> }
      : {}
  return (
    <div className="working">
      <div className="wk-title">
        <div>
          <p className="sc second">Working · {working.competition}</p>
          <h1>
            {working.name}, {working.hole === null ? 'the total' : `hole ${working.hole}`}
          </h1>
          <p className="lead">{working.sentence}</p>
        </div>
        <p className="wk-hero">
          <span className="fig trim">{working.figure}</span>
          <span>{working.unit}</span>
        </p>
      </div>
      <div className="wk-cols">
        <WorkingSteps steps={working.steps} under={under} />
        <div className="wk-more">
          {working.ifItHadBeen.length > 0 && <IfItHadBeen working={working} />}
          {working.divisions && (
            <section aria-labelledby="div-h" className="wk-divisions">
              <h2 id="div-h">In which division</h2>
              <WorkingSteps steps={working.divisions} heading="h3" />
            </section>
          )}
          <section aria-labelledby="edition-h">
            <h2 id="edition-h">Edition</h2>
            <p>{working.editionSentence}</p>
          </section>
          <NextHoles working={working} c={c} />
        </div>
      </div>
      <p className="acts no-print">
        <a className="btn" href={boardAt(societySlug, daySlug, { c })}>
          Back to the board
        </a>
        <a className="btn plain" href={cardAt(societySlug, daySlug, entryId)}>
          The whole card
        </a>
      </p>
    </div>
  )
}
