// Any two cards of a day as a match: strokes from the lowest, holes won and lost, the result in words.

import type { DayRecord } from '@/lib/facts/day-record'
import type { Day } from '@/lib/rules/day'
import { proposedAllowance } from '@/lib/rules/formats/catalogue'
import { courseHandicap } from '@/lib/rules/handicap/course-handicap'
import { matchBetween } from '@/lib/rules/matches/match'
import type { HoleLine, MatchResult } from '@/lib/rules/standings'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { matchWorking } from '@/lib/rules/working/match-working'
import { dayHead, namedResult } from './board'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { type Names, namesOf } from './entrant-names'
import type { MatchSheet, MatchSide } from './views'

/** Null when one of the two does not play in the day, or both are the same. */
export function matchSheetOf(record: DayRecord, a: string, b: string): MatchSheet | null {
  const cards = cardsAsTheyStand(record)
  const day = dayOfRecord(record)
  const match = a === b ? null : matchBetween(day, a, b)
  if (!match || !cards.has(a) || !cards.has(b)) return null
  const names = namesOf(record)
  const { allowance, sentence } = proposedAllowance('match', 0, record.edition)
  return {
    ...dayHead(record),
    a: sideOf(day, a, match.strokesA, won(match, 1), names),
    b: sideOf(day, b, match.strokesB, won(match, -1), names),
    match: namedResult(match, names),
    allowance: `${allowance} %`,
    allowanceFrom: sentence,
    sentence: matchSentence(match, names),
    working: matchWorking(day, match, 1).filter((step) => step.label.startsWith('Strokes for')),
    players: record.entries
      .filter((one) => one.status === 'entered' && cards.has(one.id))
      .map((one) => ({ entryId: one.id, name: names.full(one.id) }))
      .sort((one, other) => one.name.localeCompare(other.name, 'en')),
  }
}

/** Hole by hole +1 won, 0 halved, -1 lost for one side; null after the match is decided. */
function won(match: MatchResult, way: 1 | -1): ReadonlyMap<number, number | null> {
  let before = 0
  return new Map(
    match.holes.map(({ hole, up }) => {
      if (up === null) return [hole, null]
      const here = (up - before) * way
      before = up
      return [hole, here === 0 ? 0 : here]
    }),
  )
}

function sideOf(
  day: Day,
  entryId: string,
  strokes: number,
  values: ReadonlyMap<number, number | null>,
  names: Names,
): MatchSide {
  const player = day.players.find((one) => one.id === entryId)
  const tee = day.tees.find((one) => one.id === player?.tee)
  const card = day.cards.find((one) => one.player === entryId)
  const received = strokesOnHoles(strokes, tee?.holes ?? [])
  const holes = (tee?.holes ?? []).map(({ hole, par, strokeIndex }, at): HoleLine => {
    const written = card?.scores[at] ?? null
    const gross = typeof written === 'number' ? written + (card?.penaltyStrokes?.[hole] ?? 0) : written
    const here = received[at] ?? 0
    const net = typeof gross === 'number' ? gross - here : null
    return { hole, par, strokeIndex, strokes: here, gross, net, value: values.get(hole) ?? null }
  })
  return {
    entryId,
    name: names.full(entryId),
    tee: tee ? `${tee.name}, ${tee.gender}` : '',
    courseHandicap: player && tee ? courseHandicap(player.indexTenths, tee, day.edition).rounded : null,
    strokes,
    holes,
  }
}

function matchSentence(match: MatchResult, names: Names): string {
  const a = names.short(match.a)
  const b = names.short(match.b)
  if (!match.finished) {
    const result = namedResult(match, names).result
    if (result === 'not started') return `${a} and ${b} have not started.`
    return result.startsWith('level') ? `${a} and ${b} are ${result}.` : `${result.replace(' ', ' is ')}.`
  }
  if (match.winner === null) return `${a} and ${b} halved the match.`
  const [winner, loser] = match.winner === match.a ? [a, b] : [b, a]
  return `${winner} beat ${loser} ${match.result}.`
}
