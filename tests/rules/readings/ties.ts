// Ties: which holes a step looks at, what is taken off in net stroke play, and who is placed first.
import { z } from 'zod'
import type { HoleScore, TieRule, TieStep } from '@/lib/rules/day'
import { PUBLISHED_COUNTBACK } from '@/lib/rules/ties/published-countback'
import { stepInWords, windowOf } from '@/lib/rules/ties/windows'
import { reading } from '../case-file'
import { dayOf, levelTee, type Seat, standingsOf } from './days'
import { holesOfPar } from './handicaps'

const eighteen = levelTee('tee', holesOfPar(72, 18))
const points = z.array(z.int().min(0).max(4))

/** Gross strokes that earn those points on par fours without a stroke. */
function earning(list: readonly number[]): HoleScore[] {
  return list.map((one) => (one === 0 ? 'x' : 6 - one))
}

function onFours(seats: readonly Seat[], ties: TieRule, format: string) {
  const fours = levelTee(
    'tee',
    eighteen.holes.map((hole) => ({ ...hole, par: 4 })),
  )
  return standingsOf(dayOf({ format, ties }, seats, [fours]))
}

function winner(standings: ReturnType<typeof standingsOf>): string | null {
  const first = standings.filter((one) => one.place === 1)
  return first.length === 1 ? first[0]!.entrant : null
}

function inWords(holes: readonly number[]): string {
  const [from, to] = [holes[0]! + 1, holes.at(-1)! + 1]
  return from === to ? String(from) : `${from}-${to}`
}

const last = (holes: number): TieStep => ({ kind: 'last', holes })

function lastOnly(holes: number, fractions: TieRule['fractions']): TieRule {
  return { steps: [last(holes)], holesCount: 'by-number', fractions }
}

/** "28.33" on the sheet is read back as the fraction it stands for, in eighteenths. */
function asFraction(shown: string): string {
  const eighteenths = Math.round(Number(shown.replace('−', '-')) * 18)
  let [a, b] = [Math.abs(eighteenths), 18]
  while (b !== 0) [a, b] = [b, a % b]
  return 18 / a === 1 ? String(eighteenths / 18) : `${eighteenths / a}/${18 / a}`
}

/** Two medal cards with that gross on the window, level over the round by what they scored before it. */
function medalCards(given: { last: number; handicaps: number[]; gross: number[] }): Seat[] {
  const nets = given.handicaps.map((handicap, at) => ({ handicap, gross: given.gross[at]! }))
  const goal = Math.max(...nets.map((one) => one.gross - one.handicap)) + 5 * (18 - given.last)
  return nets.map(({ handicap, gross }) => {
    const spread = (total: number, holes: number) =>
      Array.from(
        { length: holes },
        (_, at) => Math.floor((total * (at + 1)) / holes) - Math.floor((total * at) / holes),
      )
    return { handicap, scores: [...spread(goal + handicap - gross, 18 - given.last), ...spread(gross, given.last)] }
  })
}

/** Eighteen par fours that make that many points or strokes; one hole without a score when there is no total. */
function addingUp(format: 'stableford' | 'medal', total: number | null): HoleScore[] {
  if (total === null) return ['x', ...Array.from({ length: 17 }, () => 4)]
  const more = format === 'medal' ? total - 72 : 36 - total
  return Array.from({ length: 18 }, (_, at) => (at < Math.abs(more) ? 4 + Math.sign(more) : 4))
}

export const TIE_READINGS = {
  windows: reading(
    z.strictObject({
      holes: z.int(),
      /** A number is the last so many holes; a pair the holes from and to by number. */
      steps: z.union([z.literal('published'), z.array(z.union([z.int(), z.tuple([z.int(), z.int()])]))]),
      startHole: z.int().optional(),
    }),
    (given) => {
      const steps: readonly TieStep[] =
        given.steps === 'published'
          ? PUBLISHED_COUNTBACK.steps
          : given.steps.map((one) =>
              typeof one === 'number' ? last(one) : { kind: 'holes', from: one[0], to: one[1] },
            )
      const windows = steps.flatMap((step) => {
        if (step.kind !== 'last' && step.kind !== 'first-nine-last' && step.kind !== 'holes') return []
        const window = windowOf(step, given.holes, given.startHole ?? 1, PUBLISHED_COUNTBACK.holesCount)
        return window === null ? [] : [inWords(window)]
      })
      return { windows }
    },
  ),
  'tie-steps': reading(
    z.strictObject({
      last: z.array(z.int()),
      others: z.array(z.enum(['lower-handicap', 'higher-handicap', 'lot'])),
      /** Eighteens: the same strokes on every hole. */
      handicaps: z.record(z.enum(['a', 'b', 'c']), z.int().multipleOf(18)),
    }),
    (given) => {
      const others = given.others.map((kind): TieStep => (kind === 'lot' ? { kind, seed: 1 } : { kind }))
      const steps = [...given.last.map(last), ...others]
      // Everybody plays every hole to the handicap: level in every window.
      const seats = Object.values(given.handicaps).map((handicap) => ({
        handicap,
        scores: Array.from({ length: 18 }, () => 4 + handicap / 18),
      }))
      const standings = onFours(seats, { steps, holesCount: 'by-number', fractions: 'kept' }, 'stableford')
      return {
        steps: steps.map(stepInWords),
        last: standings.at(-1)!.entrant,
        parted: standings.every((one) => !one.tied),
      }
    },
  ),
  'medal-window': reading(
    z.strictObject({
      last: z.int(),
      handicaps: z.array(z.int()).length(2),
      gross: z.array(z.int()).length(2),
      fractions: z.enum(['kept', 'rounded']),
    }),
    (given) => {
      const standings = onFours(medalCards(given), lastOnly(given.last, given.fractions), 'medal')
      if (new Set(standings.map((one) => one.score)).size !== 1) throw new Error('The two cards should be level.')
      // A lot after the window brings its figures to light even where they are level.
      const drawn = {
        ...lastOnly(given.last, given.fractions),
        steps: [last(given.last), { kind: 'lot', seed: 1 } as const],
      }
      const above = onFours(medalCards(given), drawn, 'medal').find((one) => one.tieBroken)!
      const { mine, theirs } = above.tieBroken!.figures[0]!
      return {
        winner: winner(standings),
        net: (above.entrant === 'a' ? [mine, theirs] : [theirs, mine]).map(asFraction),
      }
    },
  ),
  'medal-shares': reading(z.strictObject({ handicap: z.int() }), (given) => {
    const share = (window: number) => {
      // Against a scratch card that is better on the window: the difference of the two figures is the share.
      const gross = [60, 20]
      const seats = medalCards({ last: window, handicaps: [given.handicap, 0], gross })
      const figures = onFours(seats, lastOnly(window, 'kept'), 'medal').find((one) => one.tieBroken)?.tieBroken
        ?.figures[0]
      return asFraction(String(60 - Number(figures!.theirs)))
    }
    return { shares: Object.fromEntries([9, 6, 3, 1].map((window) => [String(window), share(window)])) }
  }),
  'points-countback': reading(z.strictObject({ pointsA: points, pointsB: points }), (given) => {
    const seats = [given.pointsA, given.pointsB].map((list) => ({ handicap: 0, scores: earning(list) }))
    const standings = onFours(seats, PUBLISHED_COUNTBACK, 'stableford')
    const broken = standings.find((one) => one.tieBroken)
    const figures = (broken?.tieBroken?.figures ?? []).map(({ mine, theirs }, at) => {
      const step = PUBLISHED_COUNTBACK.steps[at]!
      if (step.kind !== 'last' && step.kind !== 'first-nine-last') throw new Error('Only windows are published.')
      const pair = broken!.entrant === 'a' ? [mine, theirs] : [theirs, mine]
      return [inWords(windowOf(step, 18, 1, 'by-number')!), pair.map(Number)]
    })
    return {
      totals: ['a', 'b'].map((id) => standings.find((one) => one.entrant === id)!.score),
      winner: winner(standings),
      figures: Object.fromEntries(figures),
    }
  }),
  'points-order': reading(z.strictObject({ points: z.record(z.enum(['a', 'b', 'c']), points.optional()) }), (given) => {
    const lists = Object.values(given.points).flatMap((list) => (list ? [list] : []))
    const seats = lists.map((list) => ({ handicap: 0, scores: earning(list) }))
    const standings = onFours(seats, PUBLISHED_COUNTBACK, 'stableford')
    return { order: standings.map((one) => one.entrant), places: standings.map((one) => one.place) }
  }),
  places: reading(
    z.strictObject({
      format: z.enum(['stableford', 'medal']),
      totals: z.record(z.enum(['a', 'b', 'c']), z.int().nullable()),
    }),
    (given) => {
      // Level over the round and on every window: no step parts those who are level.
      const none: TieRule = { steps: [], holesCount: 'by-number', fractions: 'kept' }
      const seats = Object.values(given.totals).map((total) => ({ handicap: 0, scores: addingUp(given.format, total) }))
      const standings = onFours(seats, none, given.format)
      return {
        order: standings.map((one) => one.entrant),
        places: standings.map((one) => one.place),
        tied: standings.map((one) => one.tied),
      }
    },
  ),
  'as-played': reading(
    z.strictObject({
      startHole: z.int(),
      holesCount: z.enum(['as-played', 'by-number']),
      pointsA: points,
      pointsB: points,
    }),
    (given) => {
      const { startHole, holesCount } = given
      const seats = [given.pointsA, given.pointsB].map((list) => ({ handicap: 0, scores: earning(list), startHole }))
      return { winner: winner(onFours(seats, { ...PUBLISHED_COUNTBACK, holesCount }, 'stableford')) }
    },
  ),
}
