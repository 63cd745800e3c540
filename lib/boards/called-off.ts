// A day that was called off, in the one sentence that board, sheet, card and desk say; and what keeps a day from being
// deleted.

import type { DayRecord } from '@/lib/facts/day-record'
import { asSentence, capital, counted, listed } from './in-words'

/** "Called off: the course is waterlogged." */
export function calledOffSentence(reason: string): string {
  return `Called off: ${asSentence(reason)}`
}

type Hanging = Pick<
  DayRecord,
  'entries' | 'groups' | 'cards' | 'publications' | 'rulings' | 'dayRulings' | 'playStops' | 'teams'
>

/** One sentence for each thing that would be lost with the day; empty: it may be deleted. */
export function whatHangsOn(day: Hanging, addedUpWith: readonly string[]): readonly string[] {
  const said: string[] = []
  const add = (many: number, one: string, rest: string) => {
    if (many > 0) said.push(`${counted(many, one)} ${rest}.`)
  }
  const withdrawn = day.entries.filter((entry) => entry.status === 'withdrawn').length
  add(day.entries.length - withdrawn, 'player', 'entered')
  add(withdrawn, 'player', 'entered and withdrawn')
  add(day.groups.length, 'group', 'drawn')
  add(day.cards.length, 'card', 'made out')
  add(day.rulings.length + (day.dayRulings?.length ?? 0), 'ruling', 'given')
  add(day.playStops?.length ?? 0, 'stop of play', 'told to the course')
  add(day.publications.length, 'result sheet', 'published')
  if (addedUpWith.length > 0) said.push(`It is added up with ${listed([...addedUpWith])}.`)
  return said.map(capital)
}
