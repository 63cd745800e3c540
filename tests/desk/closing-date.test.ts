// Promise: entries close as many days before the day as they did, whatever date is chosen, and
// never before today while the day is still to come; a half-typed date moves nothing.

import { expect, it } from 'vitest'
import { closingWith } from '@/app/desk/[society]/_day-form/closing-date'

it('moves with the date of the day', () => {
  expect(closingWith('2026-12-18', '2026-12-28', '2026-11-30', '2026-11-01')).toBe('2026-11-20')
  expect(closingWith('2026-02-18', '2026-02-28', '2028-03-10', '2026-01-01')).toBe('2028-02-29')
})

it('stays where a date cannot be read', () => {
  expect(closingWith('', '2026-12-28', '2026-11-30', '2026-11-01')).toBe('')
  expect(closingWith('2026-12-18', '2026-12-28', '', '2026-11-01')).toBe('2026-12-18')
})

it('is not in the past for a day that is today or later, and is left where it falls for a day of the past', () => {
  expect(closingWith('2026-12-18', '2026-12-28', '2026-11-30', '2026-11-30')).toBe('2026-11-30')
  expect(closingWith('2026-12-18', '2026-12-28', '2026-12-05', '2026-11-30')).toBe('2026-11-30')
  expect(closingWith('2026-12-18', '2026-12-28', '2026-11-28', '2026-11-30')).toBe('2026-11-18')
})
