// What each player receives in the main competition: the dots on the card and on the desk's returns.

import type { CompetitionRecord, DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { CompetitionId } from '@/lib/facts/ids'
import type { Competition, Day } from '@/lib/rules/day'
import { ballValueOf } from '@/lib/rules/formats/format'
import { scoreDay } from '@/lib/rules/score-day'
import type { HoleLine } from '@/lib/rules/standings'
import { formatIn } from './format-of-competition'

export interface MainReading {
  readonly unit: 'points' | 'strokes' | 'holes' | 'skins'
  readonly reading: 'points' | 'net' | 'gross' | 'par'
  readonly name: string
  /** Each player's own holes, by entry. */
  readonly lines: ReadonlyMap<string, OwnLine>
}

export interface OwnLine {
  readonly playingHandicap: number
  readonly holes: readonly HoleLine[]
  readonly out: number | null
  readonly in: number | null
  readonly gross: number | null
  readonly score: number | null
}

/**
 * The tee whose card is written: the player's own, or, of a side on one ball whose players stand on different tees, the one
 * its ball is counted on.
 */
export function teeOfCard(
  record: DayRecord,
  entry: EntryRecord,
  line: OwnLine | undefined,
): DayRecord['tees'][number] | undefined {
  const own = record.tees.find((one) => one.id === entry.roundTeeId)
  if (!line) return own
  const isIts = ({ holes }: DayRecord['tees'][number]) =>
    holes.length === line.holes.length &&
    holes.every(({ par, strokeIndex }, at) => {
      const counted = line.holes[at]
      return counted?.par === par && counted.strokeIndex === strokeIndex
    })
  return own && isIts(own) ? own : (record.tees.find(isIts) ?? own)
}

/** Every player's own card read in the first competition. */
export function mainReading(record: DayRecord, day: Day): MainReading {
  const main = record.competitions[0]
  const format = main && formatIn(main)
  const on = format ? ballValueOf(format.value).kind : 'points'
  const { unit, lines } = ownReading(main, day)
  return {
    unit,
    reading:
      on === 'points' ? 'points' : on === 'against-par' ? 'par' : format?.strokes.kind === 'none' ? 'gross' : 'net',
    name: main?.name ?? record.name,
    lines,
  }
}

/**
 * A competition of sides or of matches is read player by player: in a match with the strokes of that match, where a side
 * plays one ball with the side's own line for each of its players.
 */
export function ownReading(
  competition: CompetitionRecord | undefined,
  day: Day,
): { readonly unit: MainReading['unit']; readonly lines: MainReading['lines'] } {
  const format = competition && formatIn(competition)
  if (!competition || !format || (format.sideSize === 1 && !format.isMatch && format.value.kind !== 'shared'))
    return linesOf(competition ? { ...day, competitions: only(day, competition.id) } : asSingles(day, competition))
  const counted = { ...day, competitions: only(day, competition.id) }
  if (format.isMatch) return linesOf(asSingles(withStrokes(counted, competition.id), competition))
  if (format.ball === 'one' && format.sideSize > 1) return linesOf(counted)
  const alone = linesOf(asSingles(day, competition))
  // Whoever is in no group shares nothing yet: the own figure stands until there is one.
  if (format.value.kind === 'shared')
    return { unit: 'points', lines: new Map([...alone.lines, ...linesOf(counted).lines]) }
  return alone
}

/** The competition on this day alone: the card on the phone shows one round. */
const only = (day: Day, id: string) =>
  day.competitions.flatMap((one) => (one.id === id ? [one.rounds ? { ...one, rounds: [1] } : one] : []))

const asSingles = (day: Day, competition: CompetitionRecord | undefined): Day => ({
  ...day,
  competitions: [eachAlone(competition, day)],
})

function linesOf(day: Day): { readonly unit: MainReading['unit']; readonly lines: MainReading['lines'] } {
  const result = scoreDay(day)[0]
  const lines = (result?.standings ?? []).flatMap(
    ({ entrant, players, playingHandicap, holes, out, in: back, gross, score }) => {
      const own = { playingHandicap: playingHandicap ?? 0, holes, out, in: back, gross, score }
      return [entrant, ...players].map((id): [string, OwnLine] => [id, own])
    },
  )
  return { unit: result?.unit ?? 'points', lines: new Map(lines) }
}

/** Everybody with the strokes received in the match instead of the own handicap. */
function withStrokes(day: Day, competitionId: CompetitionId): Day {
  const strokes = new Map<string, number>()
  for (const match of scoreDay(day)[0]?.matches ?? [])
    for (const [id, count] of Object.entries(match.strokes)) {
      const side = day.sides.find((one) => one.id === id)
      for (const player of side?.players ?? [id]) strokes.set(player, count)
    }
  return {
    ...day,
    players: day.players.map((player) => {
      const count = strokes.get(player.id)
      return count === undefined
        ? player
        : { ...player, playingHandicap: { ...player.playingHandicap, [competitionId]: count } }
    }),
  }
}

/** The same allowance and the same value of a hole, everybody for himself, on this day alone. */
function eachAlone(main: CompetitionRecord | undefined, day: Day): Competition {
  const format = main && formatIn(main)
  const on = format ? ballValueOf(format.value).kind : 'points'
  const single =
    on === 'points' ? 'stableford' : on === 'against-par' ? 'par' : on === 'maximum' ? 'maximum-score' : 'medal'
  const { allowance, countedHoles, handicapLimit, maximum, notPlayed } = main?.terms ?? {}
  // The strokes of a match are given by the match, as they are.
  const scored = format?.isMatch
    ? {}
    : {
        ...(countedHoles?.length ? { countedHoles } : {}),
        ...(handicapLimit ? { handicapLimit } : {}),
        ...(notPlayed ? { notPlayed } : {}),
      }
  return {
    id: main?.id ?? 'own',
    format: single,
    allowance: typeof allowance === 'number' ? allowance : 100,
    ...(maximum ? { maximum } : {}),
    ...scored,
    ...(day.cards.some((card) => (card.round ?? 1) > 1) ? { rounds: [1] } : {}),
  }
}
