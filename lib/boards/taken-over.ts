// What a new day's form took over from the last day, said where it stands: nobody calls a shotgun start without noticing.

import type { CallDay } from '@/lib/facts/commands'
import { clockInWords } from './dates-in-words'
import { listed } from './in-words'

export interface TakenOver {
  readonly course: string
  readonly start: string
  readonly competitions: string
}

/** `from`: the day it was taken over from. */
export function takenOver(
  from: string,
  day: Pick<CallDay, 'startKind' | 'firstTee' | 'intervalMinutes' | 'holes' | 'places' | 'competitions'>,
  courseName: string,
): TakenOver {
  const shotgun = day.startKind === 'shotgun'
  const start = [
    shotgun ? `shotgun start at ${clockInWords(day.firstTee)}` : `tee times from ${clockInWords(day.firstTee)}`,
    ...(shotgun ? [] : [`${day.intervalMinutes} minutes between groups`]),
    `${day.holes ?? 18} holes`,
    ...(day.places ? [`${day.places} places`] : []),
  ]
  const names = day.competitions.map(({ name }) => name)
  return {
    course: `As on ${from}: ${courseName} and its tees.`,
    start: `As on ${from}: ${start.join(', ')}.`,
    competitions: `As on ${from}: ${listed(names)}, with ${names.length === 1 ? 'its' : 'their'} terms and prizes.`,
  }
}
