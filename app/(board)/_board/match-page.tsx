// Any two cards as a match, or any four as a four-ball: who was up after each hole, on which holes the strokes fell, and how it ended.

import { Dots } from '@/app/_parts/dots'
import { MatchStrip } from '@/app/_parts/match-strip'
import { WorkingSteps } from '@/app/_parts/working-steps'
import type { MatchSheet, MatchSide } from '@/lib/boards/card-views'
import { inWords, listed } from '@/lib/boards/in-words'
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

function stateOf(up: number | null, a: MatchSide, b: MatchSide): string {
  return a.partners ? stateAfter(up, sideName(a), sideName(b)) : stateAfter(up, a.name, b.name)
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

/** Both balls of a side, the one that counts in front of its partner's in weight. */
function PlayedByTwo({
  partners,
  hole,
  by,
  sheet,
  won,
}: {
  partners: readonly MatchSide[]
  hole: number
  by: string | undefined
  sheet: MatchSheet
  won: boolean
}) {
  return (
    <>
      {partners.map((ball) => {
        const line = ball.holes.find((one) => one.hole === hole)
        const counts = by === ball.entryId
        return (
          <span key={ball.entryId} className={counts ? 'match-ball' : 'match-ball second'}>
            <a
              className="match-gross fig"
              href={cardAt(sheet.societySlug, sheet.daySlug, ball.entryId)}
              aria-label={`${ball.name}: ${spokenScore(line)}${counts ? ', counts' : ''}`}
            >
              {line?.gross === 'x' || !line ? '–' : (line.gross ?? '·')}
            </a>
            <Dots strokes={line?.strokes ?? 0} spoken={(line?.strokes ?? 0) !== 0} />
            <span className="small match-who">{shortName(ball.name)}</span>
          </span>
        )
      })}
      {won && <span className="small match-won">won</span>}
    </>
  )
}

function spokenScore(line: HoleLine | undefined): string {
  if (!line || line.gross === null) return 'not played'
  return line.gross === 'x' ? 'no score' : `${line.gross}, net ${line.net}`
}

function Side({ side, hole, sheet, won }: { side: MatchSide; hole: number; sheet: MatchSheet; won: boolean }) {
  const line = side.holes.find((one) => one.hole === hole)
  if (!side.partners) return <Played line={line} side={side} sheet={sheet} won={won} />
  return (
    <PlayedByTwo
      partners={side.partners}
      hole={hole}
      by={line?.net === null ? undefined : line?.by?.[0]}
      sheet={sheet}
      won={won}
    />
  )
}

/** "Trevennor", "Trevennor and Haldane". */
function sideName(side: MatchSide): string {
  return listed((side.partners ?? [side]).map(({ name }) => shortName(name)))
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
          <th scope="col">{sideName(a)}</th>
          <th scope="col">{sideName(b)}</th>
          <th scope="col">After the hole</th>
        </tr>
      </thead>
      <tbody>
        {match.holes.map((state, at) => {
          const before = match.holes[at - 1]?.up ?? 0
          const won = state.up === null ? 0 : state.up - before
          return (
            <tr key={state.hole}>
              <th scope="row" className="lead-col fig">
                {state.hole}
              </th>
              <td className={won > 0 ? 'won' : undefined}>
                <Side side={a} hole={state.hole} sheet={sheet} won={won > 0} />
              </td>
              <td className={won < 0 ? 'won' : undefined}>
                <Side side={b} hole={state.hole} sheet={sheet} won={won < 0} />
              </td>
              <td>{stateOf(state.up, a, b)}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

function strokesSentence(sheet: MatchSheet): string {
  const balls = [sheet.a, sheet.b].flatMap((side) => side.partners ?? [side])
  const receiving = balls.filter(({ strokes }) => strokes > 0)
  if (receiving.length === 0) return 'They play level: nobody receives a stroke.'
  const each = receiving.map(
    ({ name, strokes }) => `${shortName(name)} receives ${inWords(strokes)} ${strokes === 1 ? 'stroke' : 'strokes'}`,
  )
  return `${listed(each)}, where the dots stand.`
}

export function MatchPage({ sheet }: { sheet: MatchSheet }) {
  const { a, b, match } = sheet
  return (
    <>
      <div className="wk-title">
        <div>
          <p className="sc second">
            {sheet.dayName} · {a.partners ? 'four cards as a four-ball' : 'two cards as a match'}
          </p>
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
        <MatchStrip
          a={a.partners ? sideName(a) : a.name}
          b={b.partners ? sideName(b) : b.name}
          holes={match.holes}
          result={match.result}
        />
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
        <h2 id="again-h">Other cards</h2>
        <ChooseTwo
          sheet={{
            ...sheet,
            a: a.entryId,
            b: b.entryId,
            a2: a.partners?.[1]?.entryId,
            b2: b.partners?.[1]?.entryId,
          }}
        />
      </section>
    </>
  )
}

function stateNow(sheet: MatchSheet): string {
  const last = [...sheet.match.holes].reverse().find((state) => state.up !== null)
  if (!last || last.up === null) return '–'
  return last.up === 0 ? 'level' : `${Math.abs(last.up)} up`
}
