// Keying a paper card by keyboard alone: what each key does to the card. Plain values, so that it can be tried without
// a browser.

import type { WrittenScore } from '@/lib/facts/score-fact'
import { shownHole } from '@/lib/rules/hole-numbers'

export interface Keying {
  readonly scores: readonly WrittenScore[]
  /** Place of the hole under the hand, from 0. */
  readonly at: number
  /** Where the last figure was written: "+" makes that one a stroke more. */
  readonly last: number | null
}

export function beginKeying(scores: readonly WrittenScore[]): Keying {
  const empty = scores.indexOf(null)
  return { scores, at: empty === -1 ? 0 : empty, last: null }
}

const MOST = 30

/** The card after a key, or null when the key means nothing here and belongs to the browser. */
export function pressed(now: Keying, key: string): Keying | null {
  const end = now.scores.length - 1
  if (/^[1-9]$/.test(key)) return wrote(now, Number(key))
  if (/^[0xXnN]$/.test(key)) return wrote(now, 'x')
  if (/^[tT*]$/.test(key)) return wrote(now, 10)
  if (key === '+' || key === '=') return oneMore(now)
  if (key === 'ArrowLeft') return { ...now, at: Math.max(0, now.at - 1) }
  if (key === 'ArrowRight') return { ...now, at: Math.min(end, now.at + 1) }
  if (key === 'Home') return { ...now, at: 0 }
  if (key === 'End') return { ...now, at: end }
  if (key === 'Delete') return { ...now, scores: now.scores.with(now.at, null), last: null }
  if (key === 'Backspace') {
    const place = now.scores[now.at] === null ? Math.max(0, now.at - 1) : now.at
    return { scores: now.scores.with(place, null), at: place, last: null }
  }
  return null
}

function wrote(now: Keying, score: WrittenScore): Keying {
  const end = now.scores.length - 1
  return { scores: now.scores.with(now.at, score), at: Math.min(end, now.at + 1), last: now.at }
}

function oneMore(now: Keying): Keying {
  const place = now.last ?? now.at
  const score = now.scores[place]
  if (typeof score !== 'number' || score >= MOST) return now
  return { ...now, scores: now.scores.with(place, score + 1), last: place }
}

export interface KeyedAhead {
  readonly now: Keying
  /** What stands in the field for the total of the paper, behind the last hole. */
  readonly paper: string
  /** S was pressed: both signatures stand on the paper. */
  readonly signed: boolean
}

/** Keys in a row, as the fields would take them one by one: holes, then the total of the paper, and S. */
export function keyedAhead(from: Keying, written: string, keys: readonly string[]): KeyedAhead {
  let now = from
  let paper = written
  let signed = false
  for (const key of keys) {
    const all = now.last === now.scores.length - 1 && !now.scores.includes(null)
    if (key === 's' || key === 'S') signed = !signed
    else if (all && /^[0-9]$/.test(key)) paper = `${paper}${key}`.slice(0, 3)
    else if (all && key === 'Backspace') paper = paper.slice(0, -1)
    else if (!all || paper === '') now = pressed(now, key) ?? now
  }
  return { now, paper, signed }
}

/** The book has moved on under the hand: its new figures are taken, except where something else was keyed. */
export function caughtUp(now: Keying, before: readonly WrittenScore[], book: readonly WrittenScore[]): Keying {
  const scores = now.scores.map((score, place) => (score === (before[place] ?? null) ? (book[place] ?? null) : score))
  return { ...now, scores }
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

/** Enter: what still stands between the keyed card and taking it in, in a sentence; null when nothing does. */
export function wantsBeforeEnter(run: Run, paper: number | null): string | null {
  const { open, gross } = run
  if (open.length === 1) return `Hole ${open[0]} has no figure yet. No score is 0 or X.`
  if (open.length > 1)
    return `${open.length} holes have no figure yet, the first is hole ${open[0]}. No score is 0 or X.`
  if (paper === null || paper === gross) return null
  return `The paper says ${paper}, and ${gross} is keyed. Look again, or press Enter once more to take it in as keyed.`
}

/** What the total on the paper says about what was keyed. */
export function againstPaper(run: Run, paper: number | null, what: string): string | null {
  if (paper === null) return null
  const left = paper - run.gross
  const [first] = run.open
  if (first === undefined) {
    if (left === 0) return `${what} agrees, ${paper}.`
    return `${what} is ${run.gross} keyed and ${paper} on the paper: ${Math.abs(left)} ${left > 0 ? 'too few' : 'too many'}.`
  }
  if (left < run.open.length) return `${what}: already ${run.gross} keyed, the paper says ${paper}. Look again.`
  return run.open.length === 1
    ? `${what}: hole ${first} must be ${left}.`
    : `${what}: holes ${run.open.join(', ')} must come to ${left}.`
}
