import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Groups,
  lonely,
  MOST_IN_A_GROUP,
  movedTo,
  pairings,
  placeOf,
  shifted,
  without,
} from '@/app/desk/[society]/days/[day]/draw/groups'
import { asId } from '../setup/ids'

const drawn: Groups = [
  [asId('a'), asId('b'), asId('c'), asId('d')],
  [asId('e'), asId('f'), asId('g')],
]

describe('moving players between groups', () => {
  it('puts a player at the end of a group with room', () => {
    expect(movedTo(drawn, asId('a'), 1)).toEqual([
      ['b', 'c', 'd'],
      ['e', 'f', 'g', 'a'],
    ])
  })

  it('exchanges with the player in the seat when the group is full', () => {
    expect(movedTo(drawn, asId('e'), 0, 1)).toEqual([
      ['a', 'e', 'c', 'd'],
      ['b', 'f', 'g'],
    ])
  })

  it('changes the order inside a group, and stays inside it', () => {
    expect(shifted(drawn, asId('b'), -1)[0]).toEqual(['b', 'a', 'c', 'd'])
    expect(shifted(drawn, asId('a'), -1)).toEqual(drawn)
  })

  it('names groups of one', () => {
    expect(lonely([[asId('a')], [asId('b'), asId('c')]])).toEqual([1])
  })

  it('loses nobody, doubles nobody and fills no group beyond four, whatever is moved', () => {
    const players = ['a', 'b', 'c', 'd', 'e', 'f', 'g']
    const move = fc.record({
      who: fc.constantFrom(...players),
      to: fc.nat(1),
      seat: fc.option(fc.nat(4), { nil: undefined }),
    })
    fc.assert(
      fc.property(fc.array(move, { maxLength: 30 }), (moves) => {
        const after = moves.reduce<Groups>((now, { who, to, seat }) => movedTo(now, asId(who), to, seat), drawn)
        expect(after.flat().sort()).toEqual(players)
        for (const group of after) expect(group.length).toBeLessThanOrEqual(MOST_IN_A_GROUP)
      }),
    )
  })

  it('takes a player out and says so', () => {
    expect(placeOf(without(drawn, asId('c')), asId('c'))).toBeNull()
  })
})

describe('pairing a group', () => {
  it('offers the three ways to pair four, each player once', () => {
    const ways = pairings([asId('a'), asId('b'), asId('c'), asId('d')], 2)
    expect(ways).toHaveLength(3)
    for (const way of ways) expect(way.flat().sort()).toEqual(['a', 'b', 'c', 'd'])
  })

  it('leaves one alone in a three, each in turn', () => {
    expect(pairings([asId('a'), asId('b'), asId('c')], 2).map((way) => way[1]?.[0])).toEqual(['c', 'b', 'a'])
  })

  it('takes the whole group as one side for a team of four', () => {
    expect(pairings([asId('a'), asId('b'), asId('c'), asId('d')], 4)).toEqual([[['a', 'b', 'c', 'd']]])
  })
})
