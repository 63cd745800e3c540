// The five choices of a society's own format, as the day file and the desk's form write them.

import { z } from 'zod'
import type { FiveChoices } from '@/lib/rules/formats/format'
import { writtenLine } from './typed-text'

const small = (to: number) => z.int().min(0).max(to)

const pointsTable = z.strictObject({
  best: z.int().min(-9).max(0),
  points: z.array(z.int().min(-20).max(50)).min(2).max(20),
  beyond: small(10).default(0),
  noScore: z.int().min(-20).max(10).default(0),
})

const ballValue = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('strokes') }),
  z.strictObject({ kind: z.literal('maximum') }),
  z.strictObject({ kind: z.literal('points'), table: pointsTable }),
  z.strictObject({ kind: z.literal('against-par') }),
])

const shares = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('best-alone'), tied: z.enum(['carried', 'lost']) }),
  z.strictObject({
    kind: z.literal('by-place'),
    points: z.array(small(60)).min(2).max(6),
    clear: z.strictObject({ by: z.int().min(1).max(9), takes: small(60) }).optional(),
  }),
])

const part = z.strictObject({ name: writtenLine().min(1).max(60), from: z.int().min(1).max(18), to: small(18) })

const value = z.discriminatedUnion('kind', [
  ...ballValue.options,
  z.strictObject({
    kind: z.literal('against-opponent'),
    on: ballValue,
    parts: z.array(part).min(1).max(9).optional(),
  }),
  z.strictObject({ kind: z.literal('shared'), on: ballValue, shares }),
])

const take = z.array(z.int().min(1).max(9)).min(1).max(12)

const count = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('best'), take }),
  z.strictObject({ kind: z.literal('by-turn'), turn: z.array(take).min(1).max(18) }),
  z.strictObject({
    kind: z.literal('by-stretch'),
    stretches: z
      .array(z.strictObject({ to: z.int().min(1).max(18), take }))
      .min(1)
      .max(18),
  }),
  z.strictObject({
    kind: z.literal('named-player'),
    times: z.int().min(1).max(9),
    others: take,
    lost: z.enum(['counts-once', 'named-score-nothing', 'side-out']),
  }),
])

const off = z.enum(['own', 'lowest'])

export const fiveChoices = z.strictObject({
  side: z.strictObject({ from: z.int().min(1).max(12), to: z.int().min(1).max(12) }),
  ball: z.enum(['own', 'one']),
  strokes: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }),
    z.strictObject({ kind: z.literal('each-player'), off }),
    z.strictObject({ kind: z.literal('for-the-side'), off }),
  ]),
  value,
  count,
})
export type FiveChoicesShape = z.output<typeof fiveChoices>

/** Choices that contradict each other: the place inside the format, and why. */
export function contradictions(choices: FiveChoices): { readonly place: string; readonly sentence: string }[] {
  const wrong: { place: string; sentence: string }[] = []
  const { side, ball, strokes, value: worth, count: counts } = choices
  const asMatch = worth.kind === 'against-opponent' || worth.kind === 'shared'
  if (side.from > side.to)
    wrong.push({ place: 'side', sentence: 'A side has at least as many players as its smallest.' })
  if (ball === 'one' && strokes.kind === 'each-player') {
    wrong.push({ place: 'strokes', sentence: 'One ball has one handicap, for the side.' })
  }
  if (ball === 'own' && strokes.kind === 'for-the-side') {
    wrong.push({ place: 'strokes', sentence: 'Own balls have their own handicaps.' })
  }
  if (strokes.kind !== 'none' && strokes.off === 'lowest' && !asMatch) {
    wrong.push({ place: 'strokes', sentence: 'Only in a match or a group game does the lowest play off nought.' })
  }
  if (worth.kind === 'shared' && (side.to > 1 || ball === 'one')) {
    wrong.push({ place: 'value', sentence: 'Holes are shared between single players.' })
  }
  if (worth.kind === 'shared' && worth.shares.kind === 'by-place' && !sharesAreWhole(worth.shares.points)) {
    wrong.push({ place: 'value', sentence: 'Tied places would share half points: choose points that divide.' })
  }
  const balls = ball === 'one' ? 1 : side.to
  if (counts.kind === 'named-player' && (balls < 2 || asMatch)) {
    wrong.push({ place: 'count', sentence: 'A named player needs partners with balls of their own, and no opponent.' })
  }
  for (const one of takesOf(counts)) {
    if (one.length > balls) wrong.push({ place: 'count', sentence: `No more than ${balls} can count on a hole.` })
  }
  return wrong
}

/** Whoever ties for some places in a row shares their points, and points are whole. */
function sharesAreWhole(points: readonly number[]): boolean {
  return points.every((_, from) =>
    points.every((_, to) => {
      if (to < from) return true
      const pooled = points.slice(from, to + 1).reduce((sum, one) => sum + one, 0)
      return pooled % (to - from + 1) === 0
    }),
  )
}

function takesOf(counts: FiveChoices['count']): readonly (readonly number[])[] {
  switch (counts.kind) {
    case 'best':
      return [counts.take]
    case 'by-turn':
      return counts.turn
    case 'by-stretch':
      return counts.stretches.map((one) => one.take)
    case 'named-player':
      return [[...counts.others, 1]]
  }
}
