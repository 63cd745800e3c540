// Any two cards as a match: who was up after each hole, on which holes the strokes fell, and how it ended.

import { Dots } from '@/app/_parts/dots'
import { MatchStrip } from '@/app/_parts/match-strip'
import { WorkingSteps } from '@/app/_parts/working-steps'
import { inWords } from '@/lib/boards/in-words'
import type { MatchSheet, MatchSide } from '@/lib/boards/views'
import type { HoleLine } from '@/lib/rules/standings'
import { cardAt } from './addresses'
import { ChooseTwo } from './choose-two'
import { shortName } from './words'

/** "Trevennor 2 up", "all square". */
export function stateAfter(up: number | null, a: string, b: string): string {
  if (up === null) return ''
  if (up === 0) return 'all square'
  return `${shortName(up > 0 ? a : b)} ${Math.abs(up)} up`
}

interface PlayedProps {
  readonly line: HoleLine | undefined
  readonly side: MatchSide
  readonly sheet: MatchSheet
  readonly won: boolean
}

function Played({ line, side, sheet, won }: PlayedProps) {
  if (!line || line.gross === null) return <span className="unseen">not played</span>
  return (
    <>
      <a
        className="match-gross fig"
        href={cardAt(sheet.societySlug, sheet.daySlug, side.entryId)}
        aria-label={`${side.name}: ${line.gross === 'x' ? 'no score' : `${line.gross}, net ${line.net}`}`}
      >
        {line.gross === 'x' ? '–' : line.gross}
      </a>{' '}
      <Dots strokes={line.strokes} spoken={line.strokes !== 0} />
      {won && <span className="small match-won">won</span>}
      <span className="small second block">
        <span className="match-par">par {line.par}, </span>index {line.strokeIndex}
      </span>
    </>
  )
}

function Holes({ sheet }: { sheet: MatchSheet }) {
  const { a, b, match } = sheet
  return (
    <table className="match-holes ruled">
      <caption className="unseen">Hole by hole</caption>
      <thead>
        <tr>
          <th scope="col" className="lead-col">
            Hole
          </th>
          <th scope="col">{shortName(a.name)}</th>
          <th scope="col">{shortName(b.name)}</th>
          <th scope="col">After the hole</th>
        </tr>
      </thead>
      <tbody>
        {match.holes.map((state, at) => {
          const before = match.holes[at - 1]?.up ?? 0
          const won = state.up === null ? 0 : state.up - before
          const of = (side: MatchSide) => side.holes.find(({ hole }) => hole === state.hole)
          return (
            <tr key={state.hole}>
              <th scope="row" className="lead-col fig">
                {state.hole}
              </th>
              <td className={won > 0 ? 'won' : undefined}>
                <Played line={of(a)} side={a} sheet={sheet} won={won > 0} />
              </td>
              <td className={won < 0 ? 'won' : undefined}>
                <Played line={of(b)} side={b} sheet={sheet} won={won < 0} />
              </td>
              <td>{stateAfter(state.up, a.name, b.name)}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

function strokesSentence(sheet: MatchSheet): string {
  const { a, b } = sheet
  const given = a.strokes - b.strokes
  if (given === 0) return 'They play level: nobody receives a stroke.'
  const [who, n] = given > 0 ? [a, a.strokes] : [b, b.strokes]
  return `${shortName(who.name)} receives ${inWords(n)} ${n === 1 ? 'stroke' : 'strokes'}, where the dots stand.`
}

export function MatchPage({ sheet }: { sheet: MatchSheet }) {
  const { a, b, match } = sheet
  return (
    <>
      <div className="wk-title">
        <div>
          <p className="sc second">{sheet.dayName} · two cards as a match</p>
          <h1>
            {a.name} <span className="slant">against</span> {b.name}
          </h1>
          <p className="lead">
            {sheet.sentence} {strokesSentence(sheet)}
          </p>
        </div>
        <p className="wk-hero">
          <span className="fig trim match-result">{match.finished ? match.result : stateNow(sheet)}</span>
        </p>
      </div>
      <section className="oxford" aria-labelledby="up-h">
        <h2 id="up-h" className="unseen">
          Who was up
        </h2>
        <MatchStrip a={a.name} b={b.name} holes={match.holes} result={match.result} />
      </section>
      <div className="match-cols">
        <section aria-labelledby="holes-h">
          <h2 id="holes-h">Hole by hole</h2>
          <Holes sheet={sheet} />
        </section>
        <section aria-labelledby="strokes-h">
          <h2 id="strokes-h">How many strokes, and to whom</h2>
          <WorkingSteps steps={sheet.working} heading="h3" />
          <p className="small second">
            Allowance {sheet.allowance}. {sheet.allowanceFrom.replace(/\.+$/, '')}. Played from{' '}
            {a.tee === b.tee ? a.tee : `${a.tee}; and from ${b.tee}`}. Each hole is read by its own tee’s index.
          </p>
        </section>
      </div>
      <section className="match-again no-print" aria-labelledby="again-h">
        <h2 id="again-h">Two other cards</h2>
        <ChooseTwo sheet={{ ...sheet, a: a.entryId, b: b.entryId }} />
      </section>
    </>
  )
}

function stateNow(sheet: MatchSheet): string {
  const last = [...sheet.match.holes].reverse().find((state) => state.up !== null)
  if (!last || last.up === null) return '–'
  return last.up === 0 ? 'level' : `${Math.abs(last.up)} up`
}
