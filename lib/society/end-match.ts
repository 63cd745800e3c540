// How a match ended other than on the course: holes or the match conceded, a walkover, abandoned, extra holes.

import { namesOf } from '@/lib/boards/entrant-names'
import { formatIn } from '@/lib/boards/format-of-competition'
import { endingInWords } from '@/lib/boards/match-ending-words'
import type { Actor } from '@/lib/facts/actor'
import type { CompetitionRecord } from '@/lib/facts/day-record'
import { type EndMatch, endMatch as schema } from '@/lib/facts/match-commands'
import { endingFaults, NO_ENDING } from '@/lib/facts/match-ending'
import { type Result, refused } from '@/lib/result'
import { ballValueOf } from '@/lib/rules/formats/format'
import { dayRecordIn } from '@/lib/store/day-record'
import { dayVersionOf } from '@/lib/store/day-versions'
import { replacePairings, setEnding } from '@/lib/store/pairings'
import { changeOfDay, type DayRefusals } from './day-change'
import { notFound } from './desk-only'
import { live } from './live'
import { notUnderstood, parseInput } from './parse-input'

type Refusals = DayRefusals | 'day-closed' | 'match-moved-on'

export async function endMatch(
  actor: Actor,
  input: EndMatch,
  now: Date = new Date(),
): Promise<Result<{ version: number }, Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { dayId, competitionId, matchId, ending, was } = read.value
  const done = await changeOfDay<object, Refusals>(
    actor,
    'end-match',
    read.value,
    async (day) => {
      if (day.status === 'closed')
        return refused('day-closed', 'The day is closed. Open it again to change how a match ended.')
      const competition = day.competitions.find((one) => one.id === competitionId)
      const met = competition && matchNamed(competition, matchId)
      if (!competition || !met) return notFound('match')
      const faults = endingFaults(ending, day.round)
      const format = formatIn(competition)
      if (ending.extraHoles?.length && format && ballValueOf(format.value).kind !== 'strokes')
        faults.push({ place: 'ending.extraHoles', sentence: 'Extra holes are played on strokes, not on points.' })
      if (faults.length > 0) return notUnderstood(faults)
      const names = namesOf(day)
      const say = (one: typeof ending) => endingInWords(one, names.entrantShort(met.a), names.entrantShort(met.b))
      if (was !== undefined && was !== JSON.stringify(met.ending))
        return refused(
          'match-moved-on',
          `A phone of the players wrote about this match meanwhile: ${say(met.ending)}. Load the page again to see it.`,
        )
      return {
        record: {
          area: 'results',
          subject: `${names.entrant(met.a)} and ${names.entrant(met.b)}, ${competition.name}, ${day.name}`,
          before: { Ending: say(met.ending) },
          after: { Ending: say(ending) },
        },
        save: async (tx) => {
          let pairingId = competition.pairings.find((one) => one.id === matchId)?.id
          if (pairingId === undefined) {
            // A day from before pairings were kept: its matches get their rows now, as they were read.
            await replacePairings(tx, day.society.id, competitionId, 'entry', drawnTogether(competition))
            const after = await dayRecordIn(tx, { societyId: day.society.id, dayId })
            pairingId = after?.competitions
              .find((one) => one.id === competitionId)
              ?.pairings.find(({ a, b }) => a === met.a && b === met.b)?.id
            if (pairingId === undefined) throw new Error(`Match ${matchId} went away while its end was written.`)
          }
          await setEnding(tx, pairingId, ending)
          return {}
        },
      }
    },
    now,
  )
  if (done.ok) {
    const version = await dayVersionOf(dayId)
    if (version) live().announce(dayId, version)
  }
  return done
}

function matchNamed(competition: CompetitionRecord, matchId: string) {
  if (competition.pairings.length > 0) return competition.pairings.find((one) => one.id === matchId)
  const side = competition.sides.find((one) => one.id === matchId)
  const [a, b] = side?.entryIds ?? []
  return a && b ? { a, b, ending: NO_ENDING } : undefined
}

function drawnTogether({ sides }: CompetitionRecord) {
  return sides.flatMap(({ entryIds: [a, b] }) => (a && b ? [{ a, b }] : []))
}
