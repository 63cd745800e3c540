// The second way for sides of six: the engine agrees on every random day, whatever the terms.
import { expect, test, vi } from 'vitest'
import { DAYS } from './agreement'
import { disagreementsOf, formatsOf } from './formats-by-side'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 1_200_000 })

test(`${DAYS} random days for each of ${formatsOf(6).length} formats`, () => {
  expect(disagreementsOf(6)).toEqual([])
})
