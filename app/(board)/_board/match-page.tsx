// A match, of a competition or of any two or four cards: who was up after each hole, on which holes the strokes fell, and how it ended.

import { Dots } from '@/app/_parts/dots'
import { MatchStrip } from '@/app/_parts/match-strip'
import { Opens } from '@/app/_parts/opens'
import { WorkingSteps } from '@/app/_parts/working-steps'
import { inWords, listed } from '@/lib/boards/in-words'
import type { MatchSheet, MatchSide } from '@/lib/boards/match-views'
import type { HoleLine } from '@/lib/rules/standings'
import { boardAt, cardAt, matchAt, matchOfAt } from './addresses'
import { ChooseTwo } from './choose-two'

/** "Trevennor 2 up", "all square". */
export function stateAfter(up: number | null, a: string, b: string): string {
  if (up === null) return ''
  if (up === 0) return 'all square'
  return `${up > 0 ? a : b} ${Math.abs(up)} up`
}

interface PlayedProps {
  readonly line: HoleLine | undefined
  readonly side: MatchSide
  readonly sheet: MatchSheet
  readonly won: boolean
}

function Played({ line, side, sheet, won }: PlayedProps) {
  if (!line) return <span className="unseen">not played</span>
  return (
    <>
      {line.gross === null ? (
        <span className="unseen">not played, </span>
      ) : (
        <a
          className="match-gross fig"
          href={cardAt(sheet.societySlug, sheet.daySlug, side.entryId)}
          aria-label={`${side.name}: ${line.gross === 'x' ? 'no score' : `${line.gross}, net ${line.net}`}`}
        >
          {line.gross === 'x' ? '–' : line.gross}
        </a>
      )}{' '}
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
  by: readonly string[]
  sheet: MatchSheet
  won: boolean
}) {
  return (
    <>
      {partners.map((ball) => {
        const line = ball.holes.find((one) => one.hole === hole)
        const counts = by.includes(ball.entryId)
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
            <span className="small match-who">{ball.short}</span>
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
  return <PlayedByTwo partners={side.partners} hole={hole} by={line?.by ?? []} sheet={sheet} won={won} />
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
          <th scope="col">{a.short}</th>
          <th scope="col">{b.short}</th>
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
              <td>
                {state.up === null ? null : (
                  <Opens
                    href={holeAt(sheet, state.hole)}
                    label={`${stateAfter(state.up, a.short, b.short)} after hole ${state.hole}: open the working`}
                  >
                    {/* The figure stays with its word. */}
                    {stateAfter(state.up, a.short, b.short).replace(/ up$/, '\u00a0up')}
                  </Opens>
                )}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

function holeAt({ societySlug, daySlug, a, b, of, match }: MatchSheet, hole: number): string {
  if (of) return matchOfAt(societySlug, daySlug, of.number, match.id, hole)
  const [a2, b2] = [a.partners?.[1]?.entryId, b.partners?.[1]?.entryId]
  return matchAt(societySlug, daySlug, a.entryId, b.entryId, { a2, b2, hole })
}

function strokesSentence(sheet: MatchSheet): string {
  const balls = [sheet.a, sheet.b].flatMap((side) => side.partners ?? [side])
  const receiving = balls.filter(({ strokes }) => strokes > 0)
  if (receiving.length === 0) return 'They play level: nobody receives a stroke.'
  const each = receiving.map(
    ({ short, strokes }) =>
      `${short} ${short.includes(' and ') ? 'receive' : 'receives'} ${inWords(strokes)} ${strokes === 1 ? 'stroke' : 'strokes'}`,
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
            {sheet.dayName} · {sheet.of?.name ?? (a.partners ? 'four cards as a four-ball' : 'two cards as a match')}
          </p>
          <h1>
            {a.name} <span className="slant">against</span> {b.name}
          </h1>
          <p className="lead">
            {sheet.sentence} {strokesSentence(sheet)}
          </p>
        </div>
        <p className="wk-hero">
          <span className="fig trim match-result">
            {match.finished && !match.result.endsWith('abandoned') ? match.result : stateNow(sheet)}
          </span>
        </p>
      </div>
      <section className="oxford" aria-labelledby="up-h">
        <h2 id="up-h" className="unseen">
          Who was up
        </h2>
        <MatchStrip
          a={a.partners ? a.short : a.name}
          b={b.partners ? b.short : b.name}
          holes={match.holes}
          result={match.result}
        />
      </section>
      <div className="match-cols">
        <section aria-labelledby="holes-h">
          <h2 id="holes-h">Hole by hole</h2>
          <Holes sheet={sheet} />
        </section>
        <div className="match-steps">
          {sheet.opened && (
            <section id="working" aria-labelledby="hole-h">
              <h2 id="hole-h">Hole {sheet.opened.hole}, step by step</h2>
              <WorkingSteps steps={sheet.opened.steps} heading="h3" />
            </section>
          )}
          <section aria-labelledby="came-h">
            <h2 id="came-h">{match.finished ? 'How it came out' : 'How it stands'}</h2>
            <WorkingSteps steps={sheet.outcome} heading="h3" />
          </section>
          <section aria-labelledby="strokes-h">
            <h2 id="strokes-h">How many strokes, and to whom</h2>
            <WorkingSteps steps={sheet.working} heading="h3" />
            {sheet.handicaps.length > 0 && (
              <details className="match-handicaps">
                <summary>The handicaps they are taken from</summary>
                <WorkingSteps steps={sheet.handicaps} heading="h3" />
              </details>
            )}
            <p className="small second">
              Allowance {sheet.allowance}. {sheet.allowanceFrom.replace(/\.+$/, '')}. Played from{' '}
              {a.tee === b.tee ? a.tee : `${a.tee}; and from ${b.tee}`}. Each hole is read by its own tee’s index.{' '}
              {sheet.of?.moreTerms.join(' ')}
            </p>
          </section>
        </div>
      </div>
      <section className="match-again no-print" aria-labelledby="again-h">
        <h2 id="again-h">Other cards</h2>
        <ChooseTwo
          sheet={{
            societySlug: sheet.societySlug,
            daySlug: sheet.daySlug,
            players: sheet.players,
            a: a.entryId,
            b: b.entryId,
            a2: a.partners?.[1]?.entryId,
            b2: b.partners?.[1]?.entryId,
          }}
        />
      </section>
      {sheet.of && (
        <p className="acts no-print match-back">
          <a className="btn" href={boardAt(sheet.societySlug, sheet.daySlug, { c: sheet.of.number })}>
            Back to the board
          </a>
        </p>
      )}
    </>
  )
}

function stateNow(sheet: MatchSheet): string {
  const last = [...sheet.match.holes].reverse().find((state) => state.up !== null)
  if (!last || last.up === null) return '–'
  return last.up === 0 ? 'level' : `${Math.abs(last.up)} up`
}
