// Promise: the desk types how a match ended as golfers say it, and it counts without the scores of the holes.

import { describe, expect, it } from 'vitest'
import { readEnding, resultIn } from '@/app/desk/[society]/days/[day]/matches/read-ending'
import { boardOf } from '@/lib/boards/board'
import { faultsOf } from '@/lib/boards/current-card'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { endingInWords } from '@/lib/boards/match-ending-words'
import { endingFaults, type MatchEnding } from '@/lib/facts/match-ending'
import { smallRecord } from '../boards/small-record'

const form = (fields: Readonly<Record<string, string>>) => readEnding({ get: (name) => fields[name] ?? '' })
const EIGHTEEN = { holes: 18, firstHole: 1 }

describe('the result of a match', () => {
  it('is read as it is said', () => {
    expect(['3 and 2', '3&2', '3/2', ' 10 AND 8 ', '1 up'].map(resultIn)).toEqual([
      { up: 3, left: 2 },
      { up: 3, left: 2 },
      { up: 3, left: 2 },
      { up: 10, left: 8 },
      { up: 1, left: 0 },
    ])
    expect(['', 'three', '3 2', 'up'].map(resultIn)).toEqual([null, null, null, null])
  })

  it('needs a winner, and a winner a result', () => {
    expect(form({ how: 'won a', result: '3 and 2' })).toEqual({ ending: { result: { winner: 'a', up: 3, left: 2 } } })
    expect(form({ how: 'halved' })).toEqual({ ending: { result: { winner: null, up: 0, left: 0 } } })
    expect(form({ how: 'won b' })).toHaveProperty('faults.0.place', 'result')
    expect(form({ how: '', result: '3 and 2' })).toHaveProperty('faults.0.place', 'result')
  })

  it('can be one of a match on eighteen holes', () => {
    const faults = (up: number, left: number) => endingFaults({ result: { winner: 'a', up, left } }, EIGHTEEN).length
    expect([faults(3, 2), faults(10, 8), faults(4, 2), faults(1, 0), faults(2, 0)]).toEqual([0, 0, 0, 0, 0])
    expect([faults(2, 2), faults(5, 2), faults(3, 0), faults(11, 9), faults(0, 0)]).toEqual([1, 1, 1, 1, 1])
    expect(endingFaults({ walkover: 'a', result: { winner: 'a', up: 3, left: 2 } }, EIGHTEEN)).toHaveLength(1)
  })

  it('stands on the board, and asks nothing more of cards on which nothing is written', () => {
    const ending: MatchEnding = { result: { winner: 'b', up: 3, left: 2 } }
    const day = smallRecord({
      people: ['Storrey', 'Haldane'],
      competitions: [{ format: 'match', pairings: [{ a: 'Storrey', b: 'Haldane', ending }] }],
    })
    const [match] = boardOf(day, new Date('2031-06-14T18:00:00Z')).competitions[0]!.matches
    expect(match).toMatchObject({ winner: 'd-Haldane', result: '3&2', finished: true })
    expect(faultsOf(cardsAsTheyStand(day).get('d-Storrey')!)).toEqual([])
    expect(endingInWords(ending, 'Storrey', 'Haldane')).toBe('Haldane won 3 and 2')
  })
})
