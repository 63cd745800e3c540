// Promise: the day that is spoilt has every key the day file knows and every kind of a thing that comes in kinds, so that
// no key is left out of the fuzzing. Walks the schema.
import { expect, test } from 'vitest'
import type { z } from 'zod'
import { parseDayFile } from '@/lib/facts/day-file'
import { dayFileSchema } from '@/lib/facts/day-file-schema'
import { richDay } from './rich-day'

interface Def {
  readonly type: string
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>
  readonly element?: z.core.$ZodType
  readonly innerType?: z.core.$ZodType
  readonly options?: readonly z.core.$ZodType[]
  readonly in?: z.core.$ZodType
  readonly valueType?: z.core.$ZodType
  readonly values?: readonly unknown[]
}

/** Every key with its way from the top, and every kind: "competitions.ties.steps.kind lot". */
function keysOf(schema: z.core.$ZodType, way: string): string[] {
  // A format of five choices has tests and a walk of its own.
  if (way === 'competitions.format') return []
  const def = schema._zod.def as unknown as Def
  if (def.shape)
    return Object.entries(def.shape).flatMap(([key, value]) => {
      const here = way === '' ? key : `${way}.${key}`
      const { type, values = [] } = value._zod.def as unknown as Def
      return key === 'kind' && type === 'literal' ? [`${here} ${values[0]}`] : [here, ...keysOf(value, here)]
    })
  const inside = [def.element, def.innerType, def.in, def.valueType, ...(def.options ?? [])]
  return inside.flatMap((one) => (one === undefined ? [] : keysOf(one, way)))
}

function keysIn(value: unknown, way: string): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => keysIn(one, way))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inside]) => {
    const here = way === '' ? key : `${way}.${key}`
    return key === 'kind' ? [`${here} ${inside}`] : [here, ...keysIn(inside, here)]
  })
}

test('the rich day has every key of the day file, and can be read', () => {
  const there = new Set(keysIn(richDay(), ''))
  const wanted = [...new Set(keysOf(dayFileSchema, ''))]
  expect(wanted.length).toBeGreaterThan(90)
  expect(wanted.filter((key) => !there.has(key))).toEqual([])
  const read = parseDayFile(JSON.parse(JSON.stringify(richDay())))
  expect(read.ok ? [] : read.faults).toEqual([])
})
