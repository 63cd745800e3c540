// Formats in which everybody plays alone: the engine and the second way agree on every random day.
import { describe, expect, test, vi } from 'vitest'
import type { MaximumScore } from '@/lib/rules/day'
import { DAYS, disagreements } from './agreement'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 600_000 })

describe(`${DAYS} random days`, () => {
  test('Stableford, medal, gross and par', () => {
    const competitions = ['stableford', 'medal', 'gross', 'par'].map((format) => ({ id: format, format }))
    expect(disagreements({ competitions, sideSize: 1 })).toEqual([])
  })

  test('maximum score: net double bogey, double par and a fixed figure', () => {
    const maxima: MaximumScore[] = [{ kind: 'net-double-bogey' }, { kind: 'double-par' }, { kind: 'fixed', strokes: 7 }]
    for (const maximum of maxima) {
      const competitions = [{ id: 'maximum', format: 'maximum-score', maximum }]
      expect(disagreements({ competitions, sideSize: 1 }, DAYS / 2)).toEqual([])
    }
  })

  test('a singles match, closed and still out', () => {
    const competitions = [{ id: 'match', format: 'match', matches: [{ id: 'm1', a: 'p1', b: 'p2' }] }]
    expect(disagreements({ competitions, sideSize: 1 })).toEqual([])
    expect(disagreements({ competitions, sideSize: 1, closed: false }, DAYS / 4)).toEqual([])
  })

  test('points and holes while cards are still out', () => {
    const competitions = [
      { id: 'stableford', format: 'stableford' },
      { id: 'par', format: 'par' },
    ]
    expect(disagreements({ competitions, sideSize: 1, closed: false }, DAYS / 4)).toEqual([])
  })
})
