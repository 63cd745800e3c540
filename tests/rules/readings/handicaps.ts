// Handicaps: the cases of lib/rules/handicap, strokes and editions put to the engine's own functions.
import { z } from 'zod'
import type { Fraction } from '@/lib/rules/exact/fraction'
import { type CourseHandicap, courseHandicap } from '@/lib/rules/handicap/course-handicap'
import { matchStrokes } from '@/lib/rules/handicap/match-strokes'
import { afterAllowance, playingHandicap } from '@/lib/rules/handicap/playing-handicap'
import { sideHandicap, sideHandicapInFull } from '@/lib/rules/handicap/side-handicap'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { reading } from '../case-file'

const edition = z.enum(['2024', '2020', '2020-gbi'])
const rated = { edition, slopeRating: z.int(), courseRating: z.number(), par: z.int() }
/** A figure written as a whole number, a decimal or a fraction: "17.49", "15/2". */
const figure = z.string().regex(/^-?\d+(\.\d+|\/\d+)?$/)

export function tenthsOf(figureOnCard: number): number {
  return Number(figureOnCard.toFixed(1).replace('.', ''))
}

/** Nine or eighteen holes that add up to a par. */
export function holesOfPar(par: number, count: number) {
  return Array.from({ length: count }, (_, at) => ({
    hole: at + 1,
    par: 3 + Math.floor(((at + 1) * (par - 3 * count)) / count) - Math.floor((at * (par - 3 * count)) / count),
    strokeIndex: at + 1,
  }))
}

function exactly(text: string): CourseHandicap {
  const [whole, bottom] = text.includes('/') ? text.split('/').map(Number) : [Number(text.replace('.', '')), undefined]
  const denominator = bottom ?? 10 ** (text.split('.')[1]?.length ?? 0)
  return { numerator: whole!, denominator, rounded: Math.floor(whole! / denominator + 0.5) }
}

/** Lowest terms, the way the case files write a fraction. */
export function written({ numerator, denominator }: Fraction): string {
  let [a, b] = [Math.abs(numerator), denominator]
  while (b !== 0) [a, b] = [b, a % b]
  return denominator === a ? String(numerator / a) : `${numerator / a}/${denominator / a}`
}

/** Four places, a half upwards, reckoned on whole numbers without the engine. */
function fourPlaces({ numerator, denominator }: Fraction): string {
  const scaled = BigInt(numerator) * 20_000n + BigInt(denominator)
  const bottom = 2n * BigInt(denominator)
  const figure = scaled / bottom - (scaled < 0n && scaled % bottom !== 0n ? 1n : 0n)
  const digits = String(figure < 0n ? -figure : figure).padStart(5, '0')
  return `${figure < 0n ? '-' : ''}${digits.slice(0, -4)}.${digits.slice(-4)}`
}

function courseOf(
  given: { handicapIndex: number; par: number; courseRating: number; slopeRating: number },
  ed: string,
  count: number,
) {
  const tee = {
    courseRatingTenths: tenthsOf(given.courseRating),
    slopeRating: given.slopeRating,
    holes: holesOfPar(given.par, count),
  }
  return courseHandicap(tenthsOf(given.handicapIndex), tee, ed)
}

export const HANDICAP_READINGS = {
  'course-handicap': reading(
    z.strictObject({ ...rated, handicapIndex: z.number(), holes: z.union([z.literal(9), z.literal(18)]) }),
    (given) => {
      const course = courseOf(given, given.edition, given.holes)
      const lessPar = given.edition === '2020-gbi' ? 0 : tenthsOf(given.courseRating) - 10 * given.par
      return {
        unrounded: fourPlaces(course),
        courseHandicap: course.rounded,
        indexUsed: (course.numerator * (1130 / course.denominator) - lessPar * 113) / given.slopeRating / 10,
      }
    },
  ),
  'playing-handicap': reading(
    z.union([
      z.strictObject({ ...rated, handicapIndex: z.number(), allowance: z.int() }),
      z.strictObject({ edition, courseHandicap: figure, allowance: z.int() }),
    ]),
    (given) => {
      const course = 'courseHandicap' in given ? exactly(given.courseHandicap) : courseOf(given, given.edition, 18)
      return { playingHandicap: playingHandicap(course, given.allowance, given.edition) }
    },
  ),
  'side-handicap': reading(
    z.union([
      z.strictObject({ edition, courseHandicaps: z.array(figure), weights: z.array(z.int()) }),
      z.strictObject({ ...rated, handicapIndexes: z.array(z.number()), weights: z.array(z.int()) }),
    ]),
    (given) => {
      const courses =
        'courseHandicaps' in given
          ? given.courseHandicaps.map(exactly)
          : given.handicapIndexes.map((handicapIndex) => courseOf({ ...given, handicapIndex }, given.edition, 18))
      return {
        unrounded: written(sideHandicapInFull(courses, given.weights, given.edition)),
        playingHandicap: sideHandicap(courses, given.weights, given.edition),
      }
    },
  ),
  'strokes-off-the-lowest': reading(
    z.strictObject({ difference: z.enum(['rounded', 'unrounded']), handicaps: z.array(figure) }),
    (given) => ({
      strokes: matchStrokes(
        given.handicaps.map((text) => ({ full: exactly(text), parDifference: 0 })),
        given.difference,
      ),
    }),
  ),
  'match-from-indexes': reading(
    z.strictObject({
      ...rated,
      difference: z.enum(['rounded', 'unrounded']),
      handicapIndexes: z.array(z.number()),
      allowance: z.int(),
    }),
    (given) => {
      const handicaps = given.handicapIndexes.map((handicapIndex) => ({
        full: afterAllowance(courseOf({ ...given, handicapIndex }, given.edition, 18), given.allowance, given.edition),
        parDifference: 0,
      }))
      return { strokes: matchStrokes(handicaps, given.difference) }
    },
  ),
  'strokes-by-index': reading(z.strictObject({ playingHandicap: z.int() }), (given) => {
    const strokes = strokesOnHoles(given.playingHandicap, holesOfPar(72, 18))
    return { byStrokeIndex: strokes, total: strokes.reduce((sum, one) => sum + one, 0) }
  }),
  'strokes-on-holes': reading(
    z.strictObject({ playingHandicap: z.int(), strokeIndexes: z.array(z.int()) }),
    (given) => ({
      strokes: strokesOnHoles(
        given.playingHandicap,
        given.strokeIndexes.map((strokeIndex) => ({ strokeIndex })),
      ),
    }),
  ),
}
