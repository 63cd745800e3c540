// Who plays whom in a match competition: proposed from the draw, repaired by hand at the desk.

import { namesOf } from '@/lib/boards/entrant-names'
import { formatIn } from '@/lib/boards/format-of-competition'
import { opponents } from '@/lib/boards/ids-from-engine'
import { isDecided } from '@/lib/boards/sides-of-record'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import { type ArrangePairings, arrangePairings as schema } from '@/lib/facts/match-commands'
import { type Fault, type Result, refused } from '@/lib/result'
import { type PairingToKeep, replacePairings } from '@/lib/store/pairings'
import { changeOfDay, type DayRefusals } from './day-change'
import { notFound } from './desk-only'
import { notUnderstood, parseInput } from './parse-input'
import { proposedPairings } from './put-together'

type Refusals = DayRefusals | 'day-closed' | 'no-match' | 'no-opponents'

export async function arrangePairings(
  actor: Actor,
  input: ArrangePairings,
  now: Date = new Date(),
): Promise<Result<{ version: number; matches: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { competitionId, pairings } = read.value
  return changeOfDay<{ matches: number }, Refusals>(
    actor,
    'arrange-pairings',
    read.value,
    async (day) => {
      if (day.status === 'closed') return refused('day-closed', 'The day is closed: the matches stay as they were.')
      const competition = day.competitions.find((one) => one.id === competitionId)
      if (!competition) return notFound('competition')
      const format = formatIn(competition)
      if (!format?.isMatch) return refused('no-match', `${competition.name} is no match: everybody plays the field.`)
      const wanted: readonly PairingToKeep[] =
        pairings?.map(({ a, b }) => opponents(a, b)) ?? proposedPairings(day, competition, 'none')
      if (pairings === null && wanted.length === 0)
        return refused('no-opponents', 'No group has two who could meet. Make the draw first, or pair them by hand.')
      const faults = pairingFaults(day, competition, wanted, format.sideSize > 1)
      if (faults.length > 0) return notUnderstood(faults)
      const kind = format.sideSize > 1 ? 'side' : 'entry'
      return {
        record: {
          subject: `${competition.name}, ${day.name}`,
          ...changedInWords(pairingWords(day, competition.pairings), pairingWords(day, wanted)),
        },
        save: async (tx) => {
          await replacePairings(tx, day.society.id, competitionId, kind, wanted)
          return { matches: wanted.length }
        },
      }
    },
    now,
  )
}

export function pairingWords(day: DayRecord, pairings: readonly PairingToKeep[]) {
  const names = namesOf(day)
  return Object.fromEntries(
    pairings.map(({ a, b }, at) => [`Match ${at + 1}`, `${names.entrant(a)} and ${names.entrant(b)}`]),
  )
}

function pairingFaults(
  day: DayRecord,
  competition: CompetitionRecord,
  pairings: readonly PairingToKeep[],
  ofSides: boolean,
): readonly Fault[] {
  const there = new Set<string>(
    ofSides
      ? competition.sides.map((side) => side.id)
      : day.entries.filter((entry) => entry.status === 'entered').map((entry) => entry.id),
  )
  const seen = new Set<string>()
  const standing = new Set(competition.pairings.filter(isDecided).map(({ a, b }) => `${a} ${b}`))
  return pairings.flatMap(({ a, b }, at) => {
    const place = `pairings[${at}]`
    // What was decided by walkover or concession is kept, although one of them withdrew.
    const missing = standing.has(`${a} ${b}`) ? null : !there.has(a) ? 'a' : !there.has(b) ? 'b' : null
    if (missing !== null)
      return [
        {
          place: `${place}.${missing}`,
          sentence: ofSides
            ? 'That side is not in this competition any more. Look at the sides as they are now.'
            : 'Somebody here is not entered on this day.',
        },
      ]
    if (a === b) return [{ place: `${place}.b`, sentence: 'Nobody can play a match against himself or herself.' }]
    const both = [a, b].sort().join(' ')
    if (seen.has(both)) return [{ place, sentence: 'These two are paired already.' }]
    seen.add(both)
    return []
  })
}
