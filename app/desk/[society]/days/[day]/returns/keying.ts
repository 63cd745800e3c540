// Keying a paper card by keyboard alone: what each key does to the card. Plain values, so that it can be tried without
// a browser. Behind the last hole comes the box for the paper's total: from there no figure reaches a hole again until
// the hand is put on one.

import type { PaperTotals } from '@/lib/facts/day-record'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { shownHole } from '@/lib/rules/hole-numbers'

/** The totals written on the paper, as typed: up to three digits each. */
export interface Paper {
  readonly out: string
  readonly in: string
  readonly total: string
}

export const NO_PAPER: Paper = { out: '', in: '', total: '' }

export interface Keying {
  readonly scores: readonly WrittenScore[]
  /** Place of the hole under the hand, from 0; behind the last hole stands the total of the paper. */
  readonly at: number
  /** Where the last figure was written: "+" makes that one a stroke more. */
  readonly last: number | null
  /** The card has been gone through once: a hole written from now on is a correction, and the hand goes on to the total. */
  readonly through: boolean
  readonly paper: Paper
  /** The book as each figure here was written over it: what somebody else changes on a hole after that is a clash. */
  readonly base: readonly WrittenScore[]
}

export function beginKeying(scores: readonly WrittenScore[], paper: Paper = NO_PAPER): Keying {
  const empty = scores.indexOf(null)
  return { scores, at: empty === -1 ? 0 : empty, last: null, through: false, paper, base: scores }
}

/** Is the hand in the box for the total? */
export const atTotal = ({ at, scores }: Keying) => at === scores.length

const MOST = 30

/** The card after a key, or null when the key means nothing here and belongs to the browser. */
export function pressed(now: Keying, key: string): Keying | null {
  if (atTotal(now)) return pressedInTotal(now, key)
  const end = now.scores.length - 1
  if (/^[1-9]$/.test(key)) return wrote(now, Number(key))
  if (/^[0xXnN]$/.test(key)) return wrote(now, 'x')
  if (/^[tT*]$/.test(key)) return wrote(now, 10)
  if (key === '+' || key === '=') return oneMore(now)
  if (key === 'ArrowLeft') return handOn(now, Math.max(0, now.at - 1))
  if (key === 'ArrowRight') return handOn(now, now.at + 1)
  if (key === 'Home') return { ...now, at: 0, through: false }
  if (key === 'End') return handOn(now, end)
  if (key === 'Delete') return { ...now, scores: now.scores.with(now.at, null), last: null }
  if (key === 'Backspace') {
    const place = now.scores[now.at] === null ? Math.max(0, now.at - 1) : now.at
    return { ...now, scores: now.scores.with(place, null), at: place, last: null }
  }
  return null
}

/** Digits are the total's. A second key is needed before anything is a hole's again, but for "+" on the hole just written. */
function pressedInTotal(now: Keying, key: string): Keying | null {
  const end = now.scores.length - 1
  const { total } = now.paper
  if (/^[0-9]$/.test(key)) return withPaper(now, 'total', `${total}${key}`)
  if ((key === '+' || key === '=') && total === '' && now.last === end) return oneMore(now)
  if (key === 'Delete') return withPaper(now, 'total', '')
  if (key === 'Backspace' && total !== '') return withPaper(now, 'total', total.slice(0, -1))
  if (key === 'Backspace' || key === 'ArrowLeft' || key === 'End') return handOn(now, end)
  if (key === 'Home') return { ...now, at: 0, last: null, through: false }
  // Anything else a hole would take is no part of a total, and must not be typed into its box either.
  return /^([xXnNtT*+=]|ArrowRight)$/.test(key) ? now : null
}

/** The hand is put on a hole, by an arrow or with the mouse. On a card without a gap that is a correction of this one hole. */
export function handOn(now: Keying, at: number): Keying {
  if (at === now.at) return now
  return { ...now, at, through: now.through || !now.scores.includes(null) }
}

/** What was typed as a total of the paper. */
export function withPaper(now: Keying, part: keyof Paper, text: string): Keying {
  return { ...now, last: null, paper: { ...now.paper, [part]: text.replace(/\D/g, '').slice(0, 3) } }
}

/** Where the hand goes after a hole: to the next one the first time through, to a hole still open or to the total after that. */
function wrote(now: Keying, score: WrittenScore): Keying {
  const scores = now.scores.with(now.at, score)
  const through = now.through || now.at === scores.length - 1
  const open = scores.indexOf(null, now.at)
  const at = through && now.at < scores.length - 1 ? (open === -1 ? scores.length : open) : now.at + 1
  return { ...now, scores, at, last: now.at, through }
}

function oneMore(now: Keying): Keying {
  const place = now.last ?? now.at
  const score = now.scores[place]
  if (typeof score !== 'number' || score >= MOST) return now
  return { ...now, scores: now.scores.with(place, score + 1), last: place }
}

/** A hole typed into without keys of its own: by the keyboard on a screen, or pasted. A hole takes 30 strokes at the most. */
export function typed(now: Keying, place: number, text: string): Keying | null {
  const score = readKeyed(text)
  if (score === 'unreadable') return null
  return { ...now, scores: now.scores.with(place, score), at: place, last: place }
}

export interface KeyedAhead {
  readonly now: Keying
  /** S was pressed: both signatures stand on the paper. */
  readonly signed: boolean
}

/** Keys in a row, as the fields would take them one by one: holes, then the total of the paper, and S. */
export function keyedAhead(from: Keying, keys: readonly string[]): KeyedAhead {
  let now = from
  let signed = false
  for (const key of keys) {
    if (key === 's' || key === 'S') signed = !signed
    else now = pressed(now, key === 'Tab' ? 'ArrowRight' : key) ?? now
  }
  return { now, signed }
}

/** The book has moved on under the hand: its new figures are taken, except where something else was keyed. */
export function caughtUp(now: Keying, book: readonly WrittenScore[]): Keying {
  const theirs = (place: number) => book[place] ?? null
  const wasLeft = (place: number) => now.scores[place] === now.base[place]
  const scores = now.scores.map((score, place) => (wasLeft(place) ? theirs(place) : score))
  const base = now.base.map((was, place) => (scores[place] === theirs(place) ? theirs(place) : was))
  return { ...now, scores, base }
}

/** Places where somebody else has written something since, and something else stands here. */
export function clashes(now: Keying, book: readonly WrittenScore[]): readonly number[] {
  return now.scores.flatMap((score, place) => {
    const theirs = book[place] ?? null
    return score !== theirs && now.base[place] !== theirs ? [place] : []
  })
}

/** Settles every clash: with what stands here, or with what the book has. */
export function settled(now: Keying, book: readonly WrittenScore[], whose: 'mine' | 'theirs'): Keying {
  const places = clashes(now, book)
  const over = (line: readonly WrittenScore[]) =>
    line.map((score, place) => (places.includes(place) ? (book[place] ?? null) : score))
  return { ...now, base: over(now.base), scores: whose === 'theirs' ? over(now.scores) : now.scores }
}

/** As the book has the totals of the paper, ready for their boxes. */
export function paperOf(totals: PaperTotals): Paper {
  const text = (total: number | null) => (total === null ? '' : String(total))
  return { out: text(totals.out), in: text(totals.in), total: text(totals.total) }
}

/** What stands in a field of the form, also when it was typed without script: "5", "n", "–" or nothing. */
export function readKeyed(text: string): WrittenScore | 'unreadable' {
  const clean = text.trim().toLowerCase()
  if (clean === '') return null
  if (['0', 'n', 'x', '-', '–', 'nr'].includes(clean)) return 'x'
  const strokes = /^\d{1,2}$/.test(clean) ? Number(clean) : 0
  return strokes >= 1 && strokes <= MOST ? strokes : 'unreadable'
}

export const shownKeyed = (score: WrittenScore): string => (score === null ? '' : score === 'x' ? '–' : String(score))

export interface Run {
  readonly gross: number
  readonly keyed: number
  /** Numbers of the holes without a figure. */
  readonly open: readonly number[]
}

/** Running gross of the holes from a place to another; a hole with no score adds nothing. */
export function runOf(scores: readonly WrittenScore[], from = 0, to = scores.length, firstHole = 1): Run {
  const part = scores.slice(from, to)
  const strokes = part.filter((score): score is number => typeof score === 'number')
  return {
    gross: strokes.reduce((sum, one) => sum + one, 0),
    keyed: part.filter((score) => score !== null).length,
    open: part.flatMap((score, place) => (score === null ? [shownHole({ firstHole }, from + place)] : [])),
  }
}

/** The same where some holes need no score, because the match was over before them. */
export const without = (run: Run, notNeeded: readonly number[]): Run => ({
  ...run,
  open: run.open.filter((hole) => !notNeeded.includes(hole)),
})

/** The total written on the paper, or null while there is none to compare with. */
export const paperTotal = (text: string): number | null => (text === '' ? null : Number(text))

/** Which holes still have no score, in a sentence; null when none. */
export function openInWords({ open }: Run): string | null {
  if (open.length === 0) return null
  if (open.length === 1) return `Hole ${open[0]} has no score yet. Press 0 or X where the player has none.`
  return `${open.length} holes have no score yet, the first is hole ${open[0]}. Press 0 or X where the player has none.`
}

/** Does a complete run come to another figure than the paper? */
export const differs = (run: Run, text: string): boolean =>
  run.open.length === 0 && text !== '' && Number(text) !== run.gross

/** What the total on the paper says about what was keyed. */
export function againstPaper(run: Run, paper: number | null, what: string): string | null {
  if (paper === null) return null
  const left = paper - run.gross
  const [first] = run.open
  if (first === undefined) {
    if (left === 0) return `${what} agrees, ${paper}.`
    return `The paper says ${paper}, the holes come to ${run.gross}. One of them may be keyed wrong, or the paper is added wrong.`
  }
  if (left < run.open.length) return `${what}: already ${run.gross} keyed, the paper says ${paper}. Look again.`
  return run.open.length === 1
    ? `${what}: hole ${first} must be ${left}.`
    : `${what}: holes ${run.open.join(', ')} must come to ${left}.`
}

/** One line of scores, such as "5 4 _ –": as a draft keeps it, and as the form carries the card it was opened on. */
export const lineOf = (scores: readonly WrittenScore[]) => scores.map((score) => shownKeyed(score) || '_').join(' ')

export function readLine(line: string, holes: number): readonly WrittenScore[] | null {
  const read: WrittenScore[] = []
  for (const text of line.split(' ')) {
    const score = readKeyed(text === '_' ? '' : text)
    if (score === 'unreadable') return null
    read.push(score)
  }
  return line !== '' && read.length === holes ? read : null
}
