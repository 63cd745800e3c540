// A nine-hole day moved to the second nine of its course: the same scores, drives and endings to the flags 10 to 18.

import type { DayRecord } from '@/lib/facts/day-record'

/** The record itself where it is of eighteen holes; its earlier days are moved with it where they are of nine. */
export function onBackNine(record: DayRecord): DayRecord {
  const earlier = record.earlier.map(onBackNine)
  if (record.round.holes !== 9) return { ...record, earlier }
  const on = <T extends { readonly hole: number }>(one: T): T => ({ ...one, hole: one.hole + 9 })
  return {
    ...record,
    earlier,
    round: { ...record.round, firstHole: 10 },
    tees: record.tees.map((tee) => ({ ...tee, holes: tee.holes.map(on) })),
    groups: record.groups.map((group) => ({ ...group, startHole: group.startHole + 9 })),
    facts: record.facts.map(on),
    ballFacts: record.ballFacts.map(on),
    rulings: record.rulings.map((one) => (one.hole === null ? one : { ...one, hole: one.hole + 9 })),
    competitions: record.competitions.map((one) => ({
      ...one,
      terms: {
        ...one.terms,
        ...(one.terms.namedHoles ? { namedHoles: one.terms.namedHoles.map((hole) => hole + 9) } : {}),
      },
      pairings: one.pairings.map(({ ending, ...pairing }) => ({
        ...pairing,
        ending: ending.concededHoles ? { ...ending, concededHoles: ending.concededHoles.map(on) } : ending,
      })),
    })),
  }
}
