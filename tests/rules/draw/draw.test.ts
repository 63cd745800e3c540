// Draw (house practice): everybody once, never alone, guest with host, the same lot the same groups.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { groupSizes } from '@/lib/rules/draw/group-sizes'
import { type Drawn, drawGroups } from '@/lib/rules/draw/groups'
import { intervalCaution } from '@/lib/rules/draw/interval'
import { lotFrom, shuffled } from '@/lib/rules/draw/lot'
import { markersOf } from '@/lib/rules/draw/markers'
import { pairsOf } from '@/lib/rules/draw/pairs'
import { shotgunHoles, starts } from '@/lib/rules/draw/starts'

const WAYS = ['random', 'by-handicap-mixed', 'by-handicap-banded', 'entry-order'] as const
const PARS = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]

/** Members first, then guests, each with a host. */
const field = fc
  .record({
    members: fc.array(fc.option(fc.integer({ min: -5000, max: 60000 }), { nil: null }), {
      minLength: 2,
      maxLength: 90,
    }),
    hosts: fc.array(fc.nat(), { maxLength: 20 }),
  })
  .map(({ members, hosts }): Drawn[] => [
    ...members.map((handicap, at) => ({ id: `m${at}`, handicap, hostId: null })),
    ...hosts.map((host, at) => ({ id: `g${at}`, handicap: 10000, hostId: `m${host % members.length}` })),
  ])

const terms = fc.record({
  way: fc.constantFrom(...WAYS),
  groupSize: fc.constantFrom<2 | 3 | 4>(2, 3, 4),
  seed: fc.nat(),
  smaller: fc.constantFrom<'first' | 'last'>('first', 'last'),
})

describe('group sizes', () => {
  it.each([
    [24, [4, 4, 4, 4, 4, 4]],
    [27, [4, 4, 4, 4, 4, 4, 3]],
    [26, [4, 4, 4, 4, 4, 3, 3]],
    [25, [4, 4, 4, 4, 3, 3, 3]],
    [9, [3, 3, 3]],
    [5, [3, 2]],
    [2, [2]],
    [1, []],
  ])('%i players in fours', (players, sizes) => {
    expect(groupSizes(players, 4, 'last')).toEqual(sizes)
  })

  // Common practice, no source: one odd player at most.
  it.each([
    [4, [4]],
    [5, [3, 2]],
    [6, [4, 2]],
    [7, [4, 3]],
    [9, [4, 3, 2]],
    [10, [4, 4, 2]],
    [11, [4, 4, 3]],
  ])('%i players in fours of partners', (players, sizes) => {
    expect(groupSizes(players, 4, 'last', true)).toEqual(sizes)
    expect(groupSizes(players, 4, 'first', true)).toEqual([...sizes].reverse())
  })

  it('puts the threes first when asked', () => {
    expect(groupSizes(26, 4, 'first')).toEqual([3, 3, 4, 4, 4, 4, 4])
  })

  it('adds up, and leaves nobody alone', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 300 }),
        fc.constantFrom<2 | 3 | 4>(2, 3, 4),
        fc.boolean(),
        (players, size, inPairs) => {
          const sizes = groupSizes(players, size, 'last', inPairs)
          if (inPairs && size === 4) expect(sizes.filter((one) => one % 2 === 1).length).toBe(players % 2)
          expect(sizes.reduce((sum, one) => sum + one, 0)).toBe(players)
          expect(Math.min(...sizes)).toBeGreaterThanOrEqual(2)
          expect(Math.max(...sizes)).toBeLessThanOrEqual(size === 2 ? 3 : size)
        },
      ),
    )
  })
})

describe('the draw', () => {
  it('places everybody once, in groups of the right sizes', () => {
    fc.assert(
      fc.property(field, terms, (players, how) => {
        const groups = drawGroups(players, how)
        expect(groups.map((group) => group.length)).toEqual(groupSizes(players.length, how.groupSize, how.smaller))
        expect(groups.flat().sort()).toEqual(players.map((player) => player.id).sort())
      }),
    )
  })

  it('is the same for the same lot', () => {
    fc.assert(
      fc.property(field, terms, (players, how) => {
        expect(drawGroups(players, how)).toEqual(drawGroups(players, how))
      }),
      { numRuns: 30 },
    )
  })

  it('keeps a guest with the host, when there are a few guests among many', () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 60 }), fc.nat(), fc.constantFrom(...WAYS), (members, seed, way) => {
        const players: Drawn[] = Array.from({ length: members }, (_, at) => ({
          id: `m${at}`,
          handicap: at * 500,
          hostId: null,
        }))
        for (const host of [1, 5, 8]) players.push({ id: `g${host}`, handicap: 12000, hostId: `m${host}` })
        const groups = drawGroups(players, { way, groupSize: 4, seed, smaller: 'last' })
        for (const host of [1, 5, 8]) expect(groups.find((group) => group.includes(`g${host}`))).toContain(`m${host}`)
      }),
    )
  })

  it('another lot is another draw, by handicap mixed too', () => {
    const players: Drawn[] = Array.from({ length: 24 }, (_, at) => ({
      id: `m${at}`,
      handicap: at * 1000,
      hostId: null,
    }))
    for (const way of ['random', 'by-handicap-mixed'] as const) {
      const draws = new Set(
        [1, 2, 3, 4, 5].map((seed) =>
          JSON.stringify(drawGroups(players, { way, groupSize: 4, seed, smaller: 'last' })),
        ),
      )
      expect(draws.size).toBe(5)
    }
  })

  it('mixed puts one of each quarter of the list into every group of four', () => {
    const players: Drawn[] = Array.from({ length: 24 }, (_, at) => ({
      id: `m${at}`,
      handicap: at * 1000,
      hostId: null,
    }))
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        for (const group of drawGroups(players, { way: 'by-handicap-mixed', groupSize: 4, seed, smaller: 'last' })) {
          const quarters = group.map((id) => Math.floor(Number(id.slice(1)) / 6)).sort()
          expect(quarters).toEqual([0, 1, 2, 3])
        }
      }),
    )
  })

  it('banded goes from the lowest to the highest, in order of entry as they came', () => {
    const players: Drawn[] = [9, 3, 7, 1, 5, 8, 2, 6].map((handicap) => ({
      id: `h${handicap}`,
      handicap,
      hostId: null,
    }))
    const how = { groupSize: 4 as const, seed: 0, smaller: 'last' as const }
    expect(drawGroups(players, { ...how, way: 'by-handicap-banded' })).toEqual([
      ['h1', 'h2', 'h3', 'h5'],
      ['h6', 'h7', 'h8', 'h9'],
    ])
    expect(drawGroups(players, { ...how, way: 'entry-order' })).toEqual([
      ['h9', 'h3', 'h7', 'h1'],
      ['h5', 'h8', 'h2', 'h6'],
    ])
  })
})

describe('the lot', () => {
  it('is fair: each of six comes up about as often, first as well as last', () => {
    const first = new Map<number, number>()
    for (let seed = 0; seed < 6000; seed++) {
      const [one] = shuffled([0, 1, 2, 3, 4, 5], lotFrom(seed))
      first.set(one!, (first.get(one!) ?? 0) + 1)
    }
    for (const count of first.values()) expect(Math.abs(count - 1000)).toBeLessThan(150)
  })

  it('gives the same numbers for ever', () => {
    const lot = lotFrom(1987)
    expect(Array.from({ length: 6 }, () => lot(1000))).toMatchInlineSnapshot(`
      [
        456,
        725,
        341,
        496,
        598,
        353,
      ]
    `)
  })
})

describe('starts', () => {
  it('counts the interval from the first tee, past the hour', () => {
    expect(
      starts(7, { kind: 'tee-times', firstTee: '10:00', intervalMinutes: 10, pars: PARS, firstHole: 1 })?.map(
        (one) => one.time,
      ),
    ).toEqual(['10:00', '10:10', '10:20', '10:30', '10:40', '10:50', '11:00'])
  })

  it('starts a shotgun at once from different holes, second groups never on a par three', () => {
    const nine = starts(9, { kind: 'shotgun', firstTee: '09:30', intervalMinutes: 10, pars: PARS, firstHole: 1 })
    expect(nine?.every((one) => one.time === '09:30')).toBe(true)
    expect(nine?.map((one) => one.hole)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    for (let groups = 19; groups <= 32; groups++) {
      const holes = shotgunHoles(groups, { pars: PARS, firstHole: 1 })!
      for (const hole of [3, 8, 12, 16]) expect(holes.filter((one) => one === hole)).toHaveLength(1)
      expect(Math.max(...holes.map((hole) => holes.filter((one) => one === hole).length))).toBe(2)
    }
    expect(shotgunHoles(33, { pars: PARS, firstHole: 1 })).toBeNull()
  })

  it('starts on the flags of the second nine where that is played', () => {
    const nine = { firstTee: '17:30', intervalMinutes: 10, pars: PARS.slice(9), firstHole: 10 }
    expect(starts(2, { ...nine, kind: 'tee-times' })?.map((one) => one.hole)).toEqual([10, 10])
    expect(starts(3, { ...nine, kind: 'shotgun' })?.map((one) => one.hole)).toEqual([10, 11, 12])
    // The tenth group joins on the par five, the fourteenth.
    expect(starts(10, { ...nine, kind: 'shotgun' })?.map((one) => one.hole)).toEqual([
      10, 11, 12, 13, 14, 14, 15, 16, 17, 18,
    ])
  })
})

describe('inside a group', () => {
  const four = ['a', 'b', 'c', 'd'].map((id) => ({ id, hostId: null as string | null }))

  it('pairs first with second and third with fourth, a guest with the host', () => {
    expect(pairsOf(four, 2)).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ])
    const withGuest = four.map((one) => (one.id === 'c' ? { ...one, hostId: 'a' } : one))
    expect(pairsOf(withGuest, 2)).toEqual([
      ['a', 'c'],
      ['b', 'd'],
    ])
    expect(pairsOf(four.slice(0, 3), 2)).toEqual([['a', 'b']])
    expect(pairsOf(four, 4)).toEqual([['a', 'b', 'c', 'd']])
    expect(pairsOf(four, 1)).toEqual([])
  })

  it('leaves a side alone that is still together, and pairs who is left', () => {
    expect(pairsOf(four, 2, [['a', 'd']])).toEqual([
      ['a', 'd'],
      ['b', 'c'],
    ])
    expect(pairsOf(four, 2, [['a', 'x']])).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ])
  })

  it('has each card marked by another of the group, once', () => {
    expect([...markersOf(['a', 'b', 'c'])]).toEqual([
      ['a', 'b'],
      ['b', 'c'],
      ['c', 'a'],
    ])
    expect([...markersOf(['a'])]).toEqual([['a', null]])
    expect([...markersOf([])]).toEqual([])
  })
})

describe('the interval', () => {
  it('is cautioned when it is shorter than advised for the largest group', () => {
    expect(intervalCaution(2, 8)).toBeNull()
    expect(intervalCaution(3, 10)).toBeNull()
    expect(intervalCaution(4, 11)).toBeNull()
    expect(intervalCaution(2, 7)).toContain('8 or more')
    expect(intervalCaution(3, 9)).toContain('10 or more')
    expect(intervalCaution(4, 10)).toContain('11 or more')
  })
})
