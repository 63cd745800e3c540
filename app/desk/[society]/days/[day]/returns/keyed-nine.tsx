'use client'

import { Dots } from '@/app/_parts/dots'
import type { CardReturn, ReturnHole } from '@/lib/boards/returns-view'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { type Keying, runOf, shownKeyed } from './keying'
import { PaperRow, type PaperRowProps } from './paper-row'
import type { Reading } from './reading'

interface Props {
  readonly card: CardReturn
  readonly reading: Reading
  readonly from: number
  readonly to: number
  readonly now: Keying
  readonly onTyped: (place: number, text: string) => void
  readonly onHand: (place: number) => void
  /** Only to be read: the figures stand there as print. */
  readonly shut: boolean
  readonly label: string
  /** Boxes for what the paper adds up to; none on a card that is only read. */
  readonly papers: readonly PaperRowProps[]
}

export const HEADS: Record<Reading, string> = { points: 'Points', net: 'Net', gross: '', par: 'Par' }

/** What a hole is worth while it is being keyed; the engine counts it again when it is taken in. */
export function worth(hole: ReturnHole, score: WrittenScore, reading: Reading): number | null {
  if (score === null) return null
  if (score === 'x') return reading === 'points' ? 0 : null
  const net = score - hole.strokes
  if (reading === 'points') return Math.max(0, 2 + hole.par - net)
  return reading === 'par' ? Math.sign(hole.par - net) : net
}

export function KeyedNine({ card, reading, from, to, now, onTyped, onHand, shut, label, papers }: Props) {
  const holes = card.holes.slice(from, to)
  const run = runOf(now.scores, from, to)
  const values = holes.map((hole, place) => worth(hole, now.scores[from + place] ?? null, reading))
  const value = values.reduce<number>((sum, one) => sum + (one ?? 0), 0)
  return (
    <table className="keyed">
      <caption className="unseen">
        Holes {holes[0]?.hole} to {holes.at(-1)?.hole}
      </caption>
      <thead>
        <tr>
          <th scope="row" className="lead-col">
            Hole
          </th>
          {holes.map((hole) => (
            <th key={hole.hole} scope="col" className="fig">
              {hole.hole}
            </th>
          ))}
          <th scope="col" className="tot">
            {label}
          </th>
        </tr>
      </thead>
      <tbody>
        <tr className="lo">
          <th scope="row" className="lead-col">
            Par
          </th>
          {holes.map((hole) => (
            <td key={hole.hole} className="fig">
              {hole.par}
            </td>
          ))}
          <td className="tot fig">{holes.reduce((sum, hole) => sum + hole.par, 0)}</td>
        </tr>
        <tr className="lo">
          <th scope="row" className="lead-col">
            Index
          </th>
          {holes.map((hole) => (
            <td key={hole.hole} className="fig">
              {hole.strokeIndex}
            </td>
          ))}
          <td className="tot" />
        </tr>
        <tr className="lo">
          <th scope="row" className="lead-col">
            Strokes
          </th>
          {holes.map((hole) => (
            <td key={hole.hole}>
              <Dots strokes={hole.strokes} />
            </td>
          ))}
          <td className="tot" />
        </tr>
        <tr className="in">
          <th scope="row" className="lead-col">
            Gross
          </th>
          {holes.map((hole, place) => (
            <td key={hole.hole} className={hole.notAgreed ? 'flag' : undefined}>
              {shut ? (
                <ReadScore hole={hole} score={now.scores[from + place] ?? null} />
              ) : (
                <input
                  type="text"
                  className="key-in fig"
                  inputMode="numeric"
                  maxLength={2}
                  autoComplete="off"
                  name={`hole-${hole.hole}`}
                  data-place={from + place}
                  value={shownKeyed(now.scores[from + place] ?? null)}
                  onChange={(event) => onTyped(from + place, event.target.value)}
                  onFocus={() => onHand(from + place)}
                  aria-label={nameOf(hole)}
                />
              )}
              {hole.notAgreed ? <span className="phone-says">{othersSay(hole)}</span> : null}
              {hole.ruled ? <span className="phone-says ruled">ruled</span> : null}
            </td>
          ))}
          <td className="tot fig">{run.keyed > 0 ? run.gross : ''}</td>
        </tr>
        {HEADS[reading] ? (
          <tr className="pts">
            <th scope="row" className="lead-col">
              {HEADS[reading]}
            </th>
            {holes.map((hole, place) => (
              <td key={hole.hole} className="fig">
                {values[place] ?? ''}
              </td>
            ))}
            <td className="tot fig">{run.keyed > 0 ? value : ''}</td>
          </tr>
        ) : null}
        {papers.map((paper) => (
          <PaperRow key={paper.part} {...paper} span={holes.length} />
        ))}
      </tbody>
    </table>
  )
}

/** The same figure as print: sent with the form, so that accepting reads what is on the screen. */
function ReadScore({ hole, score }: { readonly hole: ReturnHole; readonly score: WrittenScore }) {
  return (
    <>
      <span className="read-score fig">{shownKeyed(score)}</span>
      <input type="hidden" name={`hole-${hole.hole}`} value={shownKeyed(score)} />
    </>
  )
}

function nameOf(hole: ReturnHole): string {
  const strokes =
    hole.strokes === 0 ? '' : `, ${Math.abs(hole.strokes)} ${hole.strokes > 0 ? 'received' : 'given back'}`
  const others = hole.notAgreed ? `, ${othersSay(hole)}` : ''
  return `Hole ${hole.hole}, gross, par ${hole.par}${strokes}${others}`
}

const sayScore = (score: WrittenScore) => (score === 'x' ? 'no score' : String(score ?? ''))

function othersSay(hole: ReturnHole): string {
  const others = hole.written.filter((one) => one.score !== hole.score)
  return others.map((one) => `${one.writer === 'desk' ? 'desk' : 'phone'} ${sayScore(one.score)}`).join(', ')
}
