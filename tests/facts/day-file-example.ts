// The four-card day at Aldermoss Park as a day file.

import { writeDayFile } from '@/lib/facts/day-file'
import type { Day } from '@/lib/rules/day'
import { aldermoss } from '../rules/engine/aldermoss'

export const DAY: Day = {
  ...aldermoss({
    closed: false,
    sides: [
      { id: 's1', players: ['haldane', 'coldbrook'] },
      { id: 's2', players: ['trevennor', 'tarrablane'] },
    ],
    competitions: [
      { id: 'main', format: 'stableford', allowance: 95 },
      { id: 'pairs', format: 'four-ball-stableford' },
      { id: 'ko', format: 'match', matches: [{ id: 'm1', a: 'haldane', b: 'trevennor' }] },
    ],
  }),
  courseName: 'Aldermoss Park',
}

/** A fresh document a test may spoil. */
export function dayFile(day: Day = DAY): Record<string, unknown> {
  return JSON.parse(JSON.stringify(writeDayFile(day)))
}

/** The document with the value at a path, such as `players.0.tee`, replaced; undefined takes it out. */
export function spoilt(path: string, value: unknown, day: Day = DAY): unknown {
  const file = dayFile(day)
  const steps = path.split('.')
  const last = steps.pop()!
  let here: unknown = file
  for (const step of steps) here = Reflect.get(here as object, step)
  if (value === undefined) Reflect.deleteProperty(here as object, last)
  else Reflect.set(here as object, last, value)
  return file
}
