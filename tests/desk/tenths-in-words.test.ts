// Promise: what is stored in tenths or pence is refused in the figures somebody typed: 54.0 and never 540. Every schema of
// the desk's acts is walked, so that a new field of that kind cannot be forgotten.

import { expect, it } from 'vitest'
import { z } from 'zod'
import * as commands from '@/lib/facts/commands'
import { parseInput } from '@/lib/society/parse-input'

interface Found {
  readonly where: string
  readonly schema: z.ZodType
}

function inSmallUnits(schema: unknown, where: string): readonly Found[] {
  if (schema instanceof z.ZodObject)
    return Object.entries(schema.shape).flatMap(([key, inner]) =>
      /(Tenths|Pence)$/.test(key)
        ? [{ where: `${where}.${key}`, schema: inner }]
        : inSmallUnits(inner, `${where}.${key}`),
    )
  if (schema instanceof z.ZodArray) return inSmallUnits(schema.element, where)
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault)
    return inSmallUnits(schema.unwrap(), where)
  return []
}

const fields = Object.entries(commands).flatMap(([name, schema]) => inSmallUnits(schema, name))

it('finds the fields there are', () => {
  expect(fields.map((one) => one.where)).toEqual(
    expect.arrayContaining([
      'keepPerson.indexTenths',
      'keepCourse.tees.courseRatingTenths',
      'enterGuest.claimedTenths',
      'callDay.competitions.prizes.valuePence',
    ]),
  )
})

it.each(fields)('$where is refused in the figures that were typed', ({ schema }) => {
  for (const beyond of [-9_999_999, 9_999_999]) {
    const answer = parseInput(schema, beyond)
    expect(answer.ok).toBe(false)
    if (answer.ok) continue
    expect(answer.sentence.replace('£10,000', '')).not.toMatch(/\d{3}|It (may|must) be/)
  }
})

it('says how high a handicap may be', () => {
  const answer = parseInput(commands.indexTenths, 813)
  expect(answer.ok ? '' : answer.sentence).toBe('A handicap may be at most 54.0.')
})
