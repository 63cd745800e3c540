import { describe, expect, it } from 'vitest'
import { changesBetween, keepChanges, MARKED_FOR_MS, spokenSummary } from '@/app/(board)/_board/changes'
import { screenBoard } from '@/app/(board)/_board/screen-board'
import { boardAt, type Moment } from './day-of-four'

const shown = (moment: Moment, c = 1) => screenBoard(boardAt(moment), c, 'Europe/London')!

describe('what changed between two boards', () => {
  it('says nothing when nothing changed', () => {
    const board = shown({ holes: { trevennor: 12 } })
    expect(changesBetween(board, board, 0)).toEqual([])
  })

  it('says where a player came up from, and to which place', () => {
    // After 17 holes Tarrablane has 31 and Haldane 30; the last two holes of Trevennor lift him over both.
    const before = shown({ holes: { trevennor: 15 } })
    const after = shown({ holes: { trevennor: 18 } })
    const place = (board: typeof before) => board.rows.find((row) => row.entrant === 'trevennor')!.place!
    expect(place(after)).toBe(1)
    expect(place(before)).toBeGreaterThan(1)
    const changes = changesBetween(before, after, 1_000)
    expect(changes.map(({ entrant }) => entrant)).toEqual(['trevennor'])
    expect(changes[0]!.words).toMatch(/^up from (2nd|3rd|4th)$/)
    expect(changes[0]!.spoken).toMatch(/^Trevennor, 38 points, up from (2nd|3rd|4th) to 1st$/)
  })

  it('marks only whose own card moved, not who was overtaken', () => {
    const changes = changesBetween(shown({ holes: { trevennor: 15 } }), shown({ holes: { trevennor: 18 } }), 0)
    expect(changes.some(({ entrant }) => entrant === 'coldbrook')).toBe(false)
  })

  it('greets a first hole', () => {
    const before = shown({ holes: { haldane: 0, coldbrook: 0, trevennor: 0, tarrablane: 0 } })
    const after = shown({ holes: { haldane: 1, coldbrook: 0, trevennor: 0, tarrablane: 0 } })
    expect(changesBetween(before, after, 0)).toMatchObject([{ entrant: 'haldane', words: 'first hole in' }])
  })

  it('marks a side when either partner moves it', () => {
    const before = shown({ holes: { haldane: 17, coldbrook: 17 } }, 2)
    const after = shown({ holes: { haldane: 18, coldbrook: 18 } }, 2)
    expect(changesBetween(before, after, 0).map(({ entrant }) => entrant)).toEqual(['s1'])
  })

  it('compares nothing across two competitions', () => {
    expect(changesBetween(shown({}), shown({}, 2), 0)).toEqual([])
  })
})

describe('the five minutes', () => {
  const change = (entrant: string, words: string, at: number) => ({
    entrant,
    words,
    spoken: `${entrant}, ${words}`,
    at,
  })

  it('forgets a mark when its time is over', () => {
    const kept = [change('a', 'just now', 0), change('b', 'just now', 1_000)]
    expect(keepChanges(kept, [], MARKED_FOR_MS).map(({ entrant }) => entrant)).toEqual(['b'])
    expect(keepChanges(kept, [], MARKED_FOR_MS + 1_000)).toEqual([])
  })

  it('keeps "up from 14th" when a further hole moves nothing', () => {
    const kept = keepChanges([change('a', 'up from 14th', 0)], [change('a', 'just now', 2_000)], 2_000)
    expect(kept).toEqual([{ entrant: 'a', words: 'up from 14th', spoken: 'a, just now', at: 2_000 }])
  })

  it('lets a newer rise replace an older one', () => {
    const kept = keepChanges([change('a', 'up from 14th', 0)], [change('a', 'up from 9th', 2_000)], 2_000)
    expect(kept[0]!.words).toBe('up from 9th')
  })

  it('reads out three names and counts the rest', () => {
    const five = ['a', 'b', 'c', 'd', 'e'].map((name) => change(name, 'just now', 0))
    expect(spokenSummary(five)).toBe('a, just now; b, just now; c, just now; and 2 more.')
    expect(spokenSummary([])).toBe('')
  })
})
