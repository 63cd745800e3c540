// Promise: sentences of the board agree with one and with many, whoever they are about.

import { describe, expect, it } from 'vitest'
import { hasHandicaps, noteBesideGuest, shortNote } from '@/app/(board)/_board/words'
import { gamesOf } from '@/lib/boards/games-of-groups'
import { isSeveral, listedSides, withoutStop } from '@/lib/boards/in-words'
import { leadSentence } from '@/lib/boards/lead-sentence'
import type { CompetitionBoard } from '@/lib/boards/views'

describe('one and many', () => {
  it('names sides in a row without running them into each other', () => {
    expect(listedSides(['Trevennor', 'Verrow'])).toBe('Trevennor and Verrow')
    expect(listedSides(['Trevennor and Verrow', 'Ashgill and Storrey'])).toBe(
      'Trevennor and Verrow, and Ashgill and Storrey',
    )
    expect(listedSides(['A and B', 'C and D', 'E and F'])).toBe('A and B, C and D, and E and F')
    expect(isSeveral('Ashgill, Verrow and Storrey')).toBe(true)
    expect(isSeveral('Ashgill')).toBe(false)
  })

  it('says of one match, two and more that they are finished', () => {
    const said = (finished: readonly boolean[]) =>
      leadSentence(
        { status: 'in-play', round: {}, entries: [{ status: 'entered' }] } as unknown as Parameters<
          typeof leadSentence
        >[0],
        { matches: finished.map((one) => ({ finished: one })), rows: [] } as unknown as CompetitionBoard,
        {} as Parameters<typeof leadSentence>[2],
        {} as Parameters<typeof leadSentence>[3],
      )
    expect(said([true])).toBe('The match is finished.')
    expect(said([false])).toBe('The match is not finished.')
    expect(said([true, true])).toBe('Both matches are finished.')
    expect(said([true, true, true])).toBe('All three matches are finished.')
    expect(said([true, false, false])).toBe('One of three matches finished.')
  })

  it('a typed reason brings no second full stop, and a note is not always a guest', () => {
    expect(withoutStop('85 % is usual.')).toBe('85 % is usual')
    expect(shortNote('guest of Storrey, group 2')).toBe('guest, group 2')
    expect(noteBesideGuest('guest of Storrey')).toBeNull()
    expect(noteBesideGuest('guest of Storrey, group 2')).toBe('group 2')
    expect(noteBesideGuest('yellow ball home')).toBe('yellow ball home')
  })

  it('has no column of handicaps where nobody has one', () => {
    expect(hasHandicaps({ format: 'waltz', rows: [{ playingHandicap: null }] })).toBe(false)
    expect(hasHandicaps({ format: 'gross', rows: [{ playingHandicap: 0 }] })).toBe(false)
    expect(hasHandicaps({ format: 'stableford', rows: [{ playingHandicap: 0 }] })).toBe(true)
  })
})

describe('a game inside groups', () => {
  const row = (entrant: string, place: number | null) => ({ entrant, place })
  const rows = [row('a', 1), row('b', 2), row('c', 1), row('d', null)]
  const shared = [
    { groupNumber: 1, entrants: ['a', 'b'] },
    { groupNumber: 2, entrants: ['c', 'd'] },
  ]

  it('has a list of its own for each group, also before anybody of one has a place', () => {
    expect(
      gamesOf({ shared, placesInGroups: true }, rows).map(({ groupNumber, rows: list }) => [groupNumber, list.length]),
    ).toEqual([
      [1, 2],
      [2, 2],
    ])
  })

  it('is one list where everybody is ranked, and on a sheet of before', () => {
    expect(gamesOf({ shared }, rows)).toEqual([{ groupNumber: null, rows }])
  })
})
