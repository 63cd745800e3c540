// Competitions of a day in which nobody has a result: a sheet that says so is published only when the officer wants it.

import type { DayRecord } from '@/lib/facts/day-record'
import { formatIn } from './format-of-competition'
import { inWords, listed } from './in-words'
import { sizeOfShare } from './shared-games'
import type { CompetitionBoard, DayBoard } from './views'

export interface EmptyCompetition {
  readonly name: string
  /** "Nobody has a result in Split Sixes: no group has the three players it is for." */
  readonly sentence: string
}

export function emptyCompetitions(record: DayRecord, board: DayBoard): readonly EmptyCompetition[] {
  return record.competitions.flatMap((one) => {
    const shown = board.competitions.find(({ id }) => id === one.id)
    if (shown && hasResult(shown)) return []
    return [{ name: one.name, sentence: `Nobody has a result in ${one.name}: ${whyEmpty(one, shown)}.` }]
  })
}

function hasResult({ rows, matches }: CompetitionBoard): boolean {
  return (
    rows.some((row) => row.place !== null) ||
    matches.some(({ finished, holes }) => finished || holes.some(({ up }) => up !== null))
  )
}

function whyEmpty(one: DayRecord['competitions'][number], shown: CompetitionBoard | undefined): string {
  const format = formatIn(one)
  if (format?.isMatch) {
    if (format.sideSize > 1 && one.sides.length === 0) return 'no sides are made'
    return one.pairings.length === 0 && !shown?.matches.length ? 'nobody is paired' : 'no match was played'
  }
  if (format && format.sideSize > 1 && one.sides.length === 0) return 'no sides are made'
  const size = format ? sizeOfShare(format) : null
  if (shown && shown.rows.length === 0 && size !== null) return `no group has the ${inWords(size)} players it is for`
  if (format?.value.kind === 'shared' && !shown?.rows.length) return 'no group shares it'
  return 'no card was returned'
}

/** At the head of a sheet that went out all the same. */
export function withoutSentence(empty: readonly EmptyCompetition[], reason: string): string {
  return `Published without a result in ${listed(empty.map(({ name }) => name))}, because: ${reason}`
}
