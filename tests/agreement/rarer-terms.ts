// A random day of the book once more, with terms that its forms of play may take and few days have: holes left out or
// counted double, a highest handicap, what stands for a missing player, what becomes of a lost ball.

import { formatIn } from '@/lib/boards/format-of-competition'
import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import { lotFrom } from '@/lib/rules/draw/lot'

type Terms = CompetitionRecord['terms']

const MAXIMA: readonly NonNullable<Terms['maximum']>[] = [
  { kind: 'net-double-bogey' },
  { kind: 'double-par' },
  { kind: 'fixed', strokes: 7 },
]
const MISSING: readonly NonNullable<Terms['missing']>[] = [
  { kind: 'nothing' },
  { kind: 'lowest-again' },
  { kind: 'ghost', overPar: 1, courseHandicap: 20 },
  { kind: 'drawn', seed: 3 },
]
const BALL_LOST = ['counts-once', 'named-score-nothing', 'side-out'] as const

export function withRarerTerms(record: DayRecord, seed: number): DayRecord {
  const lot = lotFrom(seed * 7 + 1)
  const pick = <T>(of: readonly T[]) => of[lot(of.length)]!
  const competitions = record.competitions.map((one): CompetitionRecord => {
    const format = formatIn(one)
    if (!format) return one
    const holes = record.tees[0]!.holes.map(({ hole }) => hole)
    const left = holes.filter(() => lot(4) > 0)
    const hasMaximum = JSON.stringify(format.value).includes('"maximum"')
    return {
      ...one,
      terms: {
        ...one.terms,
        ...(lot(4) === 0 && !format.isMatch && left.length > 0 ? { countedHoles: left } : {}),
        ...(lot(5) === 0 && format.strokes.kind !== 'none' ? { handicapLimit: { men: 18, women: 24 } } : {}),
        ...(hasMaximum ? { maximum: pick(MAXIMA) } : {}),
        ...(format.side.to > 1 && lot(2) === 0
          ? { missing: pick(format.ball === 'one' ? MISSING.slice(0, 3) : MISSING) }
          : {}),
        ...(format.count.kind === 'named-player' && lot(2) === 0 ? { ballLost: pick(BALL_LOST) } : {}),
      },
    }
  })
  return { ...record, competitions }
}
