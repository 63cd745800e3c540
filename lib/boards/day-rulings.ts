// What the committee ruled on the day as a whole, carried into the competitions and said in words.

import type { DayRecord } from '@/lib/facts/day-record'
import { abandonedIn, type DayRuling, dayRulingsInForce } from '@/lib/facts/day-rulings'
import type { CompetitionId } from '@/lib/facts/ids'
import type { Competition } from '@/lib/rules/day'
import { holesOfRound, type RoundHoles } from '@/lib/rules/hole-numbers'
import type { Names } from './entrant-names'
import { asSentence, listed } from './in-words'
import type { ResultSheet } from './views'

type Ruled = Pick<DayRecord, 'dayRulings' | 'round'>

/** The competition with the play-off that was played, and with what an abandoned round leaves of it. */
export function asRuled(record: Ruled, competition: Competition): Competition {
  const rulings = dayRulingsInForce(record.dayRulings ?? [])
  const playOff = rulings.find((one) => one.kind === 'play-off' && one.competitionId === competition.id)
  const withTies =
    playOff?.kind === 'play-off' && competition.ties
      ? {
          ...competition,
          ties: {
            ...competition.ties,
            steps: competition.ties.steps.map((step) =>
              step.kind === 'play-off' ? { ...step, order: playOff.order } : step,
            ),
          },
        }
      : competition
  const abandoned = abandonedIn(rulings)
  if (abandoned === null) return withTies
  const matches = withTies.matches?.map((match) => ({ ...match, abandoned: true }))
  const stopped = matches === undefined ? withTies : { ...withTies, matches }
  switch (abandoned.counts) {
    case 'first-holes':
      return matches === undefined
        ? { ...stopped, countedHoles: firstHoles(withTies, record.round, abandoned.afterHole) }
        : stopped
    case 'level':
    case 'no-score':
      return { ...stopped, notPlayed: abandoned.counts }
    case 'nothing':
      return stopped
  }
}

/** The holes up to it, of those that the terms count at all. */
function firstHoles({ countedHoles }: Competition, round: RoundHoles, afterHole: number): number[] {
  const first = holesOfRound(round).filter((hole) => hole <= afterHole)
  const kept = first.filter((hole) => countedHoles?.includes(hole) ?? true)
  return kept.length > 0 ? kept : first
}

export function dayRulingInWords(
  ruling: DayRuling,
  names: Pick<Names, 'entrant'>,
  { firstHole }: Pick<RoundHoles, 'firstHole'>,
): string {
  switch (ruling.kind) {
    case 'play-off':
      return `Play-off: ${listed(ruling.order.map((id, at) => `${at + 1} ${names.entrant(id)}`))}.`
    case 'abandoned':
      return `The round was abandoned ${ruling.afterHole === 0 ? 'before it began' : `after hole ${ruling.afterHole}`}: ${COUNTS[ruling.counts](ruling.afterHole, firstHole)}.`
    case 'taken-back':
      return `Ruling ${ruling.replaces} on the day is taken back.`
  }
}

const COUNTS: Readonly<
  Record<Extract<DayRuling, { kind: 'abandoned' }>['counts'], (hole: number, first: number) => string>
> = {
  nothing: () => 'nothing counts',
  'first-holes': (hole, first) =>
    hole === first ? `only hole ${hole} counts` : `only holes ${first} to ${hole} count, for everybody`,
  level: () => 'holes not played count as level',
  'no-score': () => 'holes not played have no score',
}

/** What stands beside the terms of a competition on the board: its play-off, and a round that was abandoned. */
export function dayRulingsSaid(
  record: Pick<DayRecord, 'dayRulings' | 'round'>,
  competitionId: CompetitionId,
  names: Pick<Names, 'entrant'>,
): readonly string[] {
  return dayRulingsInForce(record.dayRulings ?? [])
    .filter((one) => one.kind === 'abandoned' || one.competitionId === competitionId)
    .map((one) => dayRulingInWords(one, names, record.round))
}

/** The clause of each: the Rules leave both to the committee. */
export const CLAUSE_OF: Readonly<Record<DayRuling['kind'], string>> = {
  'play-off': 'Committee Procedures 5A(6)',
  abandoned: 'Committee Procedures 6E, terms of the competition',
  'taken-back': 'Committee decision',
}

/** For the sheet, beside the rulings on cards. */
export function dayRulingLines(
  record: Pick<DayRecord, 'dayRulings' | 'competitions' | 'round'>,
  names: Pick<Names, 'entrant'>,
): ResultSheet['rulings'] {
  return dayRulingsInForce(record.dayRulings ?? []).map((one) => ({
    number: one.number,
    name:
      one.kind === 'play-off'
        ? (record.competitions.find(({ id }) => id === one.competitionId)?.name ?? 'Play-off')
        : 'The day',
    sentence: `${dayRulingInWords(one, names, record.round)} ${asSentence(one.reason)}`,
    clause: CLAUSE_OF[one.kind],
    by: one.byName,
    at: one.ruledAt,
  }))
}
