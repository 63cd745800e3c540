// Formats of pairs in which each plays an own ball: the engine and the second way agree on every random day.
import { describe, expect, test, vi } from 'vitest'
import { DAYS, disagreements } from './agreement'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 600_000 })

describe(`${DAYS} random days`, () => {
  test('four-ball Stableford, medal and par', () => {
    const competitions = [
      { id: 'stableford', format: 'four-ball-stableford' },
      { id: 'medal', format: 'four-ball-medal' },
      { id: 'par', format: 'four-ball-par' },
    ]
    expect(disagreements({ competitions, sideSize: 2 })).toEqual([])
  })
})
