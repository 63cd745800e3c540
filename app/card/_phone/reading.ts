// How the card reads a hole in the day's main competition. The counting is the engine's; here are its columns and words.

import type { CardPack, PackHole } from '@/lib/facts/card-pack'
import type { WrittenScore } from '@/lib/facts/score-fact'
import type { BallValue, PointsTable } from '@/lib/rules/formats/format'
import { STABLEFORD_POINTS } from '@/lib/rules/formats/stableford-points'
import { pointsFor, valueOnHole } from '@/lib/rules/values/value-on-hole'

export type Reading = CardPack['reading']
/** With the points of the day's competition laid on by the phone, where they are not those of the Rules. */
type HoleFacts = Pick<PackHole, 'par' | 'strokes' | 'cap' | 'times' | 'level'> & { readonly table?: PointsTable }

/** Strokes over level in the five columns. */
export const OFFSETS = [-2, -1, 0, 1, 2] as const

const VALUES: Readonly<Record<Reading, BallValue>> = {
  points: { kind: 'points', table: STABLEFORD_POINTS },
  net: { kind: 'strokes' },
  gross: { kind: 'strokes' },
  par: { kind: 'against-par' },
}

// Where nothing is capped the engine asks for a cap all the same.
const NO_CAP = { kind: 'fixed', strokes: 30 } as const

export const HEADINGS: Readonly<Record<Reading, { readonly columns: readonly string[]; readonly unit: string }>> = {
  points: { columns: ['4', '3', '2', '1', '0'], unit: 'points' },
  net: { columns: ['−2', '−1', '0', '+1', '+2'], unit: 'net' },
  gross: { columns: ['−2', '−1', '0', '+1', '+2'], unit: 'to par' },
  par: { columns: ['won', 'won', 'half', 'lost', 'lost'], unit: '' },
}

/** The columns of the day: points that are the society's own stand over them as they are, doubled on a hole that counts double. */
export function headingsOf(pack: Pick<CardPack, 'reading' | 'points'>, times = 1): (typeof HEADINGS)[Reading] {
  const { points = STABLEFORD_POINTS, reading } = pack
  if (reading !== 'points' || (points === STABLEFORD_POINTS && times === 1)) return HEADINGS[reading]
  return {
    columns: OFFSETS.map((over) => String(pointsFor(over, points) * Math.max(1, times)).replace('-', '−')),
    unit: 'points',
  }
}

/** Strokes that count in this reading: a gross competition gives none. */
export const strokesIn = (reading: Reading, hole: HoleFacts) => (reading === 'gross' ? 0 : hole.strokes)

/** The gross score that is level par after strokes: the middle column. */
export const levelOn = (reading: Reading, hole: HoleFacts) => hole.par + strokesIn(reading, hole)

/** What the hole counts: nothing at all, not even as a hole without a score, where the terms leave it out. */
export function holeValue(reading: Reading, hole: HoleFacts, score: WrittenScore): number | 'x' | null {
  const { times = 1 } = hole
  if (times === 0) return null
  const value = onceOn(reading, hole, score)
  return typeof value === 'number' ? value * times : value
}

function onceOn(reading: Reading, hole: HoleFacts, score: WrittenScore): number | 'x' | null {
  const { cap, table } = hole
  if (cap !== undefined)
    return valueOnHole({ kind: 'maximum' }, score, strokesIn(reading, hole), hole.par, { kind: 'fixed', strokes: cap })
  const value = table && reading === 'points' ? ({ kind: 'points', table } as const) : VALUES[reading]
  return valueOnHole(value, score, strokesIn(reading, hole), hole.par, NO_CAP)
}

/** In stroke play a hole without a score is a card that does not count: it is asked about first. */
export const noScoreEndsTheCard = (reading: Reading, hole: HoleFacts | undefined) =>
  (reading === 'net' || reading === 'gross') && hole?.cap === undefined && hole?.times !== 0

export const pointsWord = (points: number) => `${points} ${points === 1 ? 'point' : 'points'}`

/** "+1", "−2", "level" with a true minus sign. */
export const signed = (figure: number, level = 'level') =>
  figure === 0 ? level : figure > 0 ? `+${figure}` : `−${-figure}`

const HOLE_WORDS = new Map([
  [1, 'hole won'],
  [0, 'hole halved'],
  [-1, 'hole lost'],
])

/** What a score is worth, in words: "2 points", "net 4, level", "hole won". */
export function worth(reading: Reading, hole: HoleFacts, score: Exclude<WrittenScore, null>): string {
  const value = holeValue(reading, hole, score)
  if (hole.times === 0) return 'does not count for the result'
  if (reading === 'points') return `${pointsWord(value as number)}${(hole.times ?? 1) > 1 ? ', counted double' : ''}`
  if (reading === 'par') return HOLE_WORDS.get(value as number) ?? ''
  if (value === 'x' || value === null) return 'the card does not count'
  const over = value - hole.par
  const most = hole.cap !== undefined && (score === 'x' || score > hole.cap) ? `counts as ${hole.cap}, ` : ''
  const against = over === 0 ? 'level par' : `${Math.abs(over)} ${over > 0 ? 'over' : 'under'}`
  return `${most}${reading === 'net' ? `net ${value}, ${against}` : against}`
}

/** What stands beside the name: with the net score where strokes come into it. */
export function said(reading: Reading, hole: HoleFacts, score: Exclude<WrittenScore, null>): string {
  if (score === 'x') return `no score, ${worth(reading, hole, score)}`
  if (reading === 'net' || reading === 'gross') return worth(reading, hole, score)
  return `net ${score - hole.strokes}, ${worth(reading, hole, score)}`
}

const CAPPED = 'Rules of Golf 21.2'
const CLAUSES: Readonly<Record<Reading, string>> = {
  points: 'Rules of Golf 21.1b',
  net: 'Rules of Golf 3.3',
  gross: 'Rules of Golf 3.3',
  par: 'Rules of Golf 21.3b',
}

/** How a figure came about, in a sentence: strokes by index, net, and what that is worth. */
export function workingOf(reading: Reading, hole: HoleFacts & Pick<PackHole, 'strokeIndex'>, score: number | 'x') {
  const strokes = strokesIn(reading, hole)
  const count = Math.abs(strokes)
  const received = `${count === 0 ? 'no' : count} ${count === 1 ? 'stroke' : 'strokes'}${strokes < 0 ? ' given back' : ''}`
  const by = reading === 'gross' ? '' : `, index ${hole.strokeIndex}, ${received}`
  const net = score === 'x' || reading === 'gross' || reading === 'net' ? '' : `net ${score - strokes}, `
  const sentence = `${score === 'x' ? 'No score' : score} on a par ${hole.par}${by}: ${net}${worth(reading, hole, score)}.`
  return { sentence, clause: hole.cap === undefined ? CLAUSES[reading] : CAPPED }
}

export const figureOf = (score: Exclude<WrittenScore, null>) => (score === 'x' ? 'no score' : String(score))

export interface Total {
  /** Null where there is nothing yet, or a stroke-play card without a score on a hole. */
  readonly value: number | null
  readonly gross: number | null
  readonly played: number
}

export function totalOf(reading: Reading, holes: readonly (HoleFacts & { readonly score: WrittenScore })[]): Total {
  const played = holes.filter((hole) => hole.score !== null && hole.times !== 0)
  const values = played.map((hole) => holeValue(reading, hole, hole.score))
  const grosses = played.map((hole) => hole.score)
  const sum = (figures: readonly (number | 'x' | null)[]) =>
    figures.length === 0 || figures.some((each) => typeof each !== 'number')
      ? null
      : (figures as readonly number[]).reduce((all, each) => all + each, 0)
  return { value: sum(values), gross: sum(grosses), played: played.length }
}

export const TOTAL_WORD: Readonly<Record<Reading, string>> = {
  points: 'points',
  net: 'net',
  gross: 'gross',
  par: 'holes up',
}

export const totalFigure = (reading: Reading, total: Total) =>
  total.value === null ? '–' : reading === 'par' ? signed(total.value, '0') : String(total.value)

/** "24 so far", "3 over so far", or nothing before the first hole: always beside the name. */
export function soFar(reading: Reading, holes: Parameters<typeof totalOf>[1]): string {
  const total = totalOf(reading, holes)
  if (total.played === 0) return ''
  if (total.value === null) return 'the card does not count'
  if (reading === 'points' || reading === 'par') return `${totalFigure(reading, total)} so far`
  const par = holes.reduce(
    (sum, hole) => sum + (hole.score === null || hole.times === 0 ? 0 : (hole.level ?? hole.par)),
    0,
  )
  return `${signed(total.value - par)} so far`
}
