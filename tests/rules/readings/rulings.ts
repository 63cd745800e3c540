// What follows from a fault on a card, the net double bogey of a score for handicapping, and a format read back.
import { z } from 'zod'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { knownAs, readBack } from '@/lib/rules/formats/read-back'
import { adjustedScores, netDoubleBogey } from '@/lib/rules/handicap/net-double-bogey'
import type { CardFault } from '@/lib/rules/rulings/ruling'
import { defaultChoice, RULINGS_ON_CARDS, rulingOn } from '@/lib/rules/rulings/rulings-on-cards'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { reading } from '../case-file'
import { score } from './days'

const fault = z
  .string()
  .refine((one) => RULINGS_ON_CARDS.some((ruling) => ruling.fault === one), 'is no fault of a card')

export const RULING_READINGS = {
  ruling: reading(z.strictObject({ fault }), (given) => {
    const known = given.fault as CardFault
    return { consequence: defaultChoice(known).consequence.kind, choices: rulingOn(known).choices.map((one) => one.id) }
  }),
  'net-double-bogey': reading(
    z.strictObject({ par: z.int(), strokeIndex: z.int(), courseHandicap: z.int().nullable() }),
    (given) => {
      const order = Array.from({ length: 18 }, (_, at) => ({ strokeIndex: at + 1 }))
      const strokes = strokesOnHoles(given.courseHandicap ?? 0, order)[given.strokeIndex - 1]!
      return { strokes, most: netDoubleBogey(given, strokes, given.courseHandicap) }
    },
  ),
  'adjusted-scores': reading(
    z.strictObject({
      card: z.strictObject({ par: z.array(z.int()), strokeIndex: z.array(z.int()) }),
      scores: z.array(score),
      courseHandicap: z.int(),
    }),
    ({ card, scores, courseHandicap }) => {
      const holes = card.par.map((par, at) => ({ hole: at + 1, par, strokeIndex: card.strokeIndex[at]! }))
      const adjusted = adjustedScores(scores, holes, courseHandicap)
      return { adjusted, total: adjusted.reduce<number>((sum, one) => sum + (one ?? 0), 0) }
    },
  ),
  'read-back': reading(z.strictObject({ format: z.string(), allowance: z.int() }), (given) => {
    const format = FORMATS.find(({ id }) => id === given.format)!
    const { side, ball, strokes, value, count } = format
    const choices = { side, ball, strokes, value, count }
    return { sentence: readBack(choices, given.allowance), knownAs: knownAs(choices)?.id ?? null }
  }),
}
