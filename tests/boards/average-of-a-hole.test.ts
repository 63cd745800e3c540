// Promise: the average of a hole on a published sheet is rounded exactly, on both sides of nothing.
// Half a hundredth away from zero: common practice, no source.
import { expect, it } from 'vitest'
import { averageOf } from '@/lib/boards/result-sheet'

it.each([
  [[], null],
  [[1, 2], 1.5],
  [[0, 0, 0, 0, 0, 0, 0, 1], 0.13],
  [[0, 0, 0, 0, 0, 0, 0, -1], -0.13],
  [[2, 2, 1], 1.67],
] as const)('%j averages %s', (values, average) => {
  expect(averageOf(values)).toBe(average)
})
