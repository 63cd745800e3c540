// What a form saw of the day when it was opened, in a few words each; two glances show what another desk changed.

import { clockInWords } from '@/lib/boards/dates-in-words'
import type { DayRecord } from '@/lib/facts/day-record'
import { fullName } from '@/lib/facts/person-name'
import { count, list } from './words'

/** People by the id of their entry: two of one name are two. Everything else in words. */
type People = Readonly<Record<string, string>>

export type Glance = Readonly<Record<string, string | People>>

export function glanceOf(day: DayRecord): Glance {
  const nameOf = new Map(day.entries.map((entry) => [entry.id, fullName(entry)]))
  const withStatus = (status: string) =>
    Object.fromEntries(
      day.entries.filter((entry) => entry.status === status).map((entry) => [entry.id, nameOf.get(entry.id) ?? '']),
    )
  return {
    name: day.name,
    date: day.date,
    course: day.round.courseName,
    'first tee': `${clockInWords(day.round.firstTee)}, every ${day.round.intervalMinutes} minutes`,
    status: day.calledOff ? `called off: ${day.calledOff.reason}` : day.status,
    competitions: list(day.competitions.map((one) => `${one.name} (${one.format}, ${String(one.terms.allowance)} %)`)),
    entered: withStatus('entered'),
    waiting: withStatus('waiting'),
    withdrawn: withStatus('withdrawn'),
    groups: day.groups
      .map((group) => `${group.number}: ${list(group.entryIds.map((id) => nameOf.get(id) ?? ''))}`)
      .join('; '),
    'start sheet': day.startPublishedAt ? 'published' : 'not published',
    'result sheets': count(day.publications.length, 'sheet'),
  }
}

export function whatChanged(before: Glance, now: Glance): readonly string[] {
  return Object.keys(now).flatMap((key) => {
    const was = before[key]
    const is = now[key] ?? ''
    if (was === undefined || was === is) return []
    if (typeof was === 'string' || typeof is === 'string')
      return typeof was === typeof is ? [`${sentence(key)}: ${is || 'none'} (was ${was || 'none'}).`] : []
    const come = Object.keys(is).flatMap((id) => (id in was ? [] : [is[id] ?? '']))
    const gone = Object.keys(was).flatMap((id) => (id in is ? [] : [was[id] ?? '']))
    return [
      come.length > 0 ? `Now ${key}: ${list(come)}.` : '',
      gone.length > 0 ? `No longer ${key}: ${list(gone)}.` : '',
    ].filter(Boolean)
  })
}

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

const isPeople = (value: unknown): value is People =>
  typeof value === 'object' && value !== null && Object.values(value).every((one) => typeof one === 'string')

/** From the hidden field of a form; anything odd in it counts as nothing seen. */
export function readGlance(text: string): Glance {
  try {
    const value: unknown = JSON.parse(text)
    if (typeof value !== 'object' || value === null) return {}
    return Object.fromEntries(
      Object.entries(value).filter(
        (pair): pair is [string, string | People] => typeof pair[1] === 'string' || isPeople(pair[1]),
      ),
    )
  } catch {
    return {}
  }
}
