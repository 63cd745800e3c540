// The record cut into days: a spring of cards taken in is one line until somebody opens it.

import { capital, counted } from '@/lib/boards/in-words'
import type { ActLine } from '@/lib/boards/record-of-acts'

export interface RecordDay {
  /** "Monday 9 November 2026". */
  readonly day: string
  readonly lines: readonly ActLine[]
  /** "Four acts: took a card in (3), closed a day". */
  readonly sum: string
  /** The newest day stands open, and those before it while they are short. */
  readonly open: boolean
}

const SEEN_AT_ONCE = 12
const ACTS_NAMED = 3

/** Newest day first, and in a day the newest act; `dayOf` tells a moment's day by the society's clock. */
export function daysOfRecord(lines: readonly ActLine[], dayOf: (at: string) => string): readonly RecordDay[] {
  const newest = [...lines].sort((a, b) => (a.at === b.at ? b.id - a.id : a.at < b.at ? 1 : -1))
  const days = new Map<string, ActLine[]>()
  for (const line of newest) {
    const day = dayOf(line.at)
    days.set(day, [...(days.get(day) ?? []), line])
  }
  let before = 0
  return [...days].map(([day, ofDay]) => {
    const open = before === 0 || before + ofDay.length <= SEEN_AT_ONCE
    before += ofDay.length
    return { day, lines: ofDay, sum: sumOf(ofDay), open }
  })
}

function sumOf(lines: readonly ActLine[]): string {
  const times = new Map<string, number>()
  for (const { did } of lines) times.set(did, (times.get(did) ?? 0) + 1)
  const most = [...times].sort((a, b) => b[1] - a[1])
  const named = most.slice(0, ACTS_NAMED).map(([did, count]) => (count === 1 ? did : `${did} (${count})`))
  const more = most.length > ACTS_NAMED ? ', and more' : ''
  return `${capital(counted(lines.length, 'act'))}: ${named.join(', ')}${more}`
}
