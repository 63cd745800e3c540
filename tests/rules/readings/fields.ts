// The size of a field and the divisions it makes; a card under several formats.
import { z } from 'zod'
import { readCardAs } from '@/lib/rules/readings/read-card-as'
import { divisionsForField, proposedDivisions } from '@/lib/rules/score/field-divisions'
import { reading } from '../case-file'
import { dayOf, levelTee, score } from './days'

const FOURS = levelTee(
  'tee',
  Array.from({ length: 18 }, (_, at) => ({ hole: at + 1, par: 4, strokeIndex: at + 1 })),
)

export const FIELD_READINGS = {
  'field-divisions': reading(
    z.strictObject({ entries: z.array(z.int()), switches: z.array(z.int()) }),
    ({ entries, switches }) => ({ divisions: entries.map((one) => divisionsForField(one, switches)) }),
  ),
  'proposed-divisions': reading(
    z.strictObject({ handicaps: z.array(z.int()), switches: z.array(z.int()) }),
    ({ handicaps, switches }) => {
      const divisions = proposedDivisions(handicaps, switches)
      return {
        limits: divisions.map(({ handicapFrom, handicapTo }) => [handicapFrom ?? null, handicapTo ?? null]),
        sizes: divisions.map(
          ({ handicapFrom = Number.NEGATIVE_INFINITY, handicapTo = Number.POSITIVE_INFINITY }) =>
            handicaps.filter((one) => one >= handicapFrom && one <= handicapTo).length,
        ),
      }
    },
  ),
  'card-read-as': reading(
    z.strictObject({ handicap: z.int(), scores: z.array(score), as: z.array(z.string()) }),
    ({ handicap, scores, as }) => {
      const seat = { handicap, scores: Array.from({ length: 18 }, (_, at) => (at < scores.length ? scores[at]! : 5)) }
      const day = dayOf({ format: 'stableford' }, [seat], [FOURS])
      const player = day.players[0]!.id
      return {
        scores: as.map((format) => readCardAs(day, [player], format, { allowance: 100 })?.standing.score ?? null),
      }
    },
  ),
}
