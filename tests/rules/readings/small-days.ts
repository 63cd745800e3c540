// Any format, with any terms, on a card of eighteen par fours whose stroke indexes are the hole numbers. Scores that are
// not written are fours. Everything a result says can be read off.
import { z } from 'zod'
import type { Competition, Day } from '@/lib/rules/day'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { matchNow } from '@/lib/rules/matches/match-now'
import { matchToCount } from '@/lib/rules/matches/match-to-count'
import { indexOf } from '@/lib/rules/score/day-index'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { scoreDay } from '@/lib/rules/score-day'
import type { Standing } from '@/lib/rules/standings'
import { reading } from '../case-file'
import { levelTee, score } from './days'

const HOLES = Array.from({ length: 18 }, (_, at) => ({ hole: at + 1, par: 4, strokeIndex: at + 1 }))

const given = z.strictObject({
  /** Format and terms, as the engine takes them; the full allowance unless it is one of them. */
  terms: z.looseObject({ format: z.string() }),
  handicaps: z.record(z.string(), z.int()),
  scores: z.record(z.string(), z.array(score)),
  secondRound: z.record(z.string(), z.array(score)).optional(),
  sides: z.record(z.string(), z.array(z.string())).optional(),
  ballLostOn: z.int().optional(),
  /** Where everybody began. */
  startHole: z.int().optional(),
  teams: z.record(z.string(), z.array(z.string())).optional(),
  open: z.boolean().optional(),
  /** Players who were not in the second round at all. */
  missedSecond: z.array(z.string()).optional(),
  outcomes: z.record(z.string(), z.enum(['no-return', 'disqualified', 'withdrawn'])).optional(),
})

function dayOf(one: z.infer<typeof given>): Day {
  const {
    terms,
    handicaps,
    scores,
    secondRound,
    sides,
    ballLostOn,
    teams,
    open,
    outcomes,
    missedSecond = [],
    startHole,
  } = one
  const four = (list: readonly (number | 'x' | null)[]) => HOLES.map((_, at) => (at < list.length ? list[at]! : 4))
  const competition = { id: 'c', allowance: 100, ...terms } as Competition
  return {
    date: '2026-06-13',
    edition: '2024',
    tees: [levelTee('tee', HOLES)],
    players: Object.entries(handicaps).map(([id, handicap]) => ({
      id,
      name: id,
      indexTenths: handicap * 10 + 0,
      tee: 'tee',
    })),
    sides: Object.entries(sides ?? {}).map(([id, players]) => ({
      id,
      players,
      competitions: ['c'],
      ...(ballLostOn === undefined ? {} : { ballLostOn }),
    })),
    cards: [
      ...Object.entries(scores).map(([player, list]) => ({
        player,
        scores: four(list),
        ...(outcomes?.[player] ? { outcome: outcomes[player] } : {}),
        ...(startHole === undefined ? {} : { startHole }),
      })),
      ...Object.entries(secondRound ?? {}).map(([player, list]) => ({ player, scores: four(list), round: 2 })),
      ...missedSecond.map((player) => ({ player, scores: [], round: 2, missed: true as const })),
    ],
    competitions: [competition],
    ...(teams ? { teams: Object.entries(teams).map(([id, players]) => ({ id, name: id, players })) } : {}),
    closed: open !== true,
  }
}

function by<T>(standings: readonly Standing[], what: (standing: Standing) => T): Record<string, T> {
  return Object.fromEntries(standings.map((one) => [one.entrant, what(one)]))
}

/** The first match of the day as a phone counts it, from what it was given. */
function onPhone(day: Day) {
  const [competition] = day.competitions
  const terms = termsInForce(competition!, day, FORMATS)
  const match = terms && matchToCount(competition!.matches![0]!, terms, indexOf(day))
  return match && matchNow(match, (player) => day.cards.find((card) => card.player === player)?.scores)
}

export const SMALL_DAY_READINGS = {
  'holes-to-play': reading(given, (one) => {
    const now = onPhone(dayOf(one))
    return {
      notNeeded: now?.notNeeded ?? null,
      result: now?.result ?? null,
      finished: now?.finished ?? null,
      dormie: now?.isDormie ?? null,
    }
  }),
  'small-day': reading(given, (day) => {
    const result = scoreDay(dayOf(day))[0]!
    const { standings, matches = [], teams = [], divisions = [] } = result
    const match = matches[0]
    return {
      scores: by(standings, (one) => one.score),
      places: by(standings, (one) => one.place),
      noPlace: by(standings, (one) => one.noPlace ?? null),
      holesPlayed: by(standings, (one) => one.holesPlayed),
      playingHandicaps: by(standings, (one) => one.playingHandicap),
      handicaps: by(standings, (one) => one.handicaps),
      firstSix: by(standings, (one) => one.holes.slice(0, 6).map((hole) => hole.value)),
      countback: by(standings, ({ countback }) => (countback ? [countback.window, countback.figure] : null)),
      unit: result.unit,
      order: standings.map((one) => one.entrant),
      decidedBy: standings.find((one) => one.tieBroken)?.tieBroken?.step ?? null,
      result: match?.result ?? null,
      winner: match?.winner ?? null,
      finished: match?.finished ?? null,
      strokes: match?.strokes ?? null,
      up: match?.holes.map((hole) => hole.up) ?? null,
      parts: match?.parts?.map(({ name, winner, result: said }) => [name, winner, said]) ?? null,
      teams: Object.fromEntries(teams.map(({ team, points }) => [team, points])),
      divisions: Object.fromEntries(divisions.map(({ id, standings: part }) => [id, part.map((one) => one.entrant)])),
    }
  }),
}
