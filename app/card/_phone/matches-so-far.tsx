'use client'

import { differsFromDots, strokesHere, strokesOf } from '@/lib/boards/match-strokes'
import type { PackMatch } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { type CardNow, scoresIn } from '@/lib/outbox/card-now'
import { matchNow } from '@/lib/rules/matches/match-now'
import { concededOn, concededSaid, holeSoFar, isOverBefore, matchSoFar } from './match-words'

interface Props {
  /** With what was conceded on this phone. */
  readonly matches: readonly PackMatch[]
  readonly cards: readonly CardNow[]
}

const standings = ({ matches, cards }: Props) =>
  matches.map((one) => ({ one, now: matchNow(one.match, scoresIn(cards)) }))

/** Whose strokes fall on the hole in this match: said where they are not those of the dots, on every hole alike. */
export function strokesOnHole(
  { match }: PackMatch,
  cards: readonly CardNow[],
  hole: number,
  nameOf: (entryId: EntryId) => string,
): string {
  const own = cards.flatMap(({ card }) => {
    const strokes = strokesOf(match, card.entryId)
    return strokes ? [{ name: nameOf(card.entryId), strokes, dots: card.holes.map((each) => each.strokes) }] : []
  })
  if (!own.some(({ strokes, dots }) => differsFromDots(strokes, dots))) return ''
  const at = match.holes.indexOf(hole)
  return `; ${strokesHere(own.map(({ name, strokes }) => ({ name, strokes: strokes[at] ?? 0 })))}`
}

/** On the page of a hole: one line a match. */
export function MatchesOnHole({
  hole,
  nameOf,
  ...props
}: Props & { readonly hole: number; readonly nameOf: (entryId: EntryId) => string }) {
  const needs = props.cards.filter((card) => card.onlyFor?.holes.includes(hole))
  return (
    <>
      {standings(props).map(({ one, now }) => {
        const here = isOverBefore(now, hole) ? null : holeSoFar(one, now, hole)
        return (
          <p className="c-other c-match" key={one.match.id}>
            <b>{matchSoFar(one, now)}</b>
            {here && `, ${here}`}
            {concededOn(one, hole) && ' (conceded)'}
            {strokesOnHole(one, props.cards, hole, nameOf)}
          </p>
        )
      })}
      {needs[0]?.onlyFor && (
        <p className="c-other c-match">The match is over; {needs[0].onlyFor.competition} needs the other holes.</p>
      )}
    </>
  )
}

/** On the page of all cards. */
export function MatchesSoFar(props: Props) {
  const { matches } = props
  if (matches.length === 0) return null
  return (
    <section aria-labelledby="matches">
      <h2 className="sc" id="matches">
        {matches.length === 1 ? 'The match' : 'The matches'}
      </h2>
      <ul className="c-matches">
        {standings(props).map(({ one, now }) => (
          <li key={one.match.id}>
            {matchSoFar(one, now)}
            {concededSaid(one).length > 0 && <span className="small second">. {concededSaid(one).join(' ')}</span>}
            {new Set(matches.map((each) => each.competition)).size > 1 && (
              <span className="small second"> {one.competition}</span>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
