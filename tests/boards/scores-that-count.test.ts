// Promise: phone and printed card say how many scores of a side count on this hole, as the format counts them.

import { describe, expect, it } from 'vitest'
import { countsInShort, scoresThatCount, takeOnHole, variesByHole } from '@/lib/boards/scores-that-count'
import { countRuleInWords } from '@/lib/boards/terms-in-words'
import { competitionTerms, PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { formatOf } from '@/lib/rules/formats/catalogue'
import type { CountChoice } from '@/lib/rules/formats/format'

const countOf = (id: string): CountChoice => formatOf(id)!.count
const on = (id: string, size: number, holes: readonly number[]) =>
  holes.map((hole) => scoresThatCount(countOf(id), hole, size))

describe('scores that count on a hole', () => {
  it('in a waltz: one, two, three in turn', () => {
    expect(on('waltz', 4, [1, 2, 3, 4])).toEqual([
      'The best score counts here',
      'The best two scores count here',
      'The best three scores count here',
      'The best score counts here',
    ])
    expect([1, 2, 3, 18].map((hole) => takeOnHole(countOf('waltz'), hole).length)).toEqual([1, 2, 3, 3])
    expect(variesByHole(countOf('waltz'))).toBe(true)
  })

  it('in one, two, three, four: by stretches, and all four at the end', () => {
    expect(on('one-two-three-four', 4, [6, 7, 12, 18])).toEqual([
      'The best score counts here',
      'The best two scores count here',
      'The best three scores count here',
      'All four scores count here',
    ])
  })

  it('in best two of four the same everywhere, with a yellow ball that and the best of the others', () => {
    expect(on('best-2-of-4-stableford', 4, [1, 18])).toEqual(Array(2).fill('The best two scores count here'))
    expect(variesByHole(countOf('best-2-of-4-stableford'))).toBe(false)
    expect(on('yellow-ball', 4, [1])).toEqual(['The yellow ball’s score and the best score of the others count here'])
    expect(on('yellow-ball-doubled', 4, [1])[0]).toContain('twice')
    expect(on('pairs-aggregate-stableford', 2, [1])).toEqual(['Both scores count here'])
  })

  it('in short, where several competitions share one line of the phone', () => {
    const short = (id: string, hole: number, size = 4, lost = false) => countsInShort(countOf(id), hole, size, lost)
    expect([1, 2, 3].map((hole) => short('waltz', hole))).toEqual(['the best', 'the best two', 'the best three'])
    expect(short('waltz', 3, 3)).toBe('all three')
    expect(short('yellow-ball', 1)).toBe('the ball and the best other')
    expect(short('yellow-ball-doubled', 1)).toBe('the ball twice and the best other')
    expect(short('yellow-ball', 1, 4, true)).toBe('only the best other')
    expect(short('yellow-ball-doubled', 1, 4, true)).toBe('the player in turn and the best other')
  })

  it('the format of the day says its rule among the terms; singles, matches and one ball have none', () => {
    const rule = (format: string) =>
      countRuleInWords({
        name: 'Cup',
        format,
        terms: competitionTerms.parse({
          allowance: 85,
          allowanceFrom: 'house-choice',
          ties: PUBLISHED_COUNTBACK,
          guests: 'guest-prize-only',
        }),
      })
    expect(rule('waltz')).toEqual([formatOf('waltz')!.sentence])
    for (const none of ['stableford', 'match', 'four-ball-match', 'scramble-of-four']) expect(rule(none)).toEqual([])
  })
})
