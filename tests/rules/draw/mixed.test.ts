// The mixed draw (common practice, no source): a low, a high and what lies between in every group, with any number of
// guests. The bound: cut the field into bands (one player of each band a group). Players of one band in two groups differ
// by no more than the width of the band, and all the bands together are as wide as the field, so the means of two groups
// differ by at most (1 + u) / s of the field's range: s players in the larger group, u of them without one of their band
// in the other. Without guests u is 0 for groups of one size and 1 between sizes: the least any dealing promises for every
// field. A host and guest of one band add what they displace, at home and in the one group that goes short, and no more.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Drawn, drawGroups } from '@/lib/rules/draw/groups'
import { bandsOf } from '@/lib/rules/draw/mixed'

interface Field {
  readonly players: readonly Drawn[]
  readonly groupSize: 2 | 3 | 4
  readonly seed: number
  readonly smaller: 'first' | 'last'
}

const fieldWith = (mostGuests: number) =>
  fc
    .record({
      handicaps: fc.array(fc.integer({ min: -5, max: 54 }), { minLength: 4, maxLength: 90 }),
      guests: fc.array(fc.record({ host: fc.nat(), handicap: fc.integer({ min: 0, max: 54 }) }), {
        maxLength: mostGuests,
      }),
      groupSize: fc.constantFrom<2 | 3 | 4>(2, 3, 4),
      seed: fc.nat(),
      smaller: fc.constantFrom<'first' | 'last'>('first', 'last'),
    })
    .map(
      ({ handicaps, guests, ...how }): Field => ({
        ...how,
        players: [
          ...handicaps.map((handicap, at) => ({ id: `m${at}`, handicap, hostId: null })),
          ...guests.map(({ host, handicap }, at) => ({
            id: `g${at}`,
            handicap,
            hostId: `m${host % handicaps.length}`,
          })),
        ],
      }),
    )

function drawn({ players, groupSize, seed, smaller }: Field) {
  const groups = drawGroups(players, { way: 'by-handicap-mixed', groupSize, seed, smaller })
  const largest = Math.max(...groups.map((group) => group.length))
  const ranked = players
    .map((player, entered) => ({ ...player, entered }))
    .sort((a, b) => (a.handicap ?? 0) - (b.handicap ?? 0) || a.entered - b.entered)
  const band = bandsOf(
    ranked.map(({ id }) => id),
    groups.length,
    largest,
  )
  const handicap = new Map(players.map((player) => [player.id, player.handicap ?? 0]))
  return {
    groups,
    bands: groups.map((group) => group.map((id) => band.get(id) ?? -1)),
    mean: groups.map((group) => group.reduce((sum, id) => sum + (handicap.get(id) ?? 0), 0) / group.length),
    range: Math.max(...handicap.values()) - Math.min(...handicap.values()),
    band,
    largest,
  }
}

const twice = (bands: readonly number[]) => bands.length - new Set(bands).size

/** Players of the larger group for whom the other has nobody of the same band. */
function unmatched(a: readonly number[], b: readonly number[]): number {
  return a.length - new Set(a.filter((band) => b.includes(band))).size
}

function partiesOf(players: readonly Drawn[]): readonly (readonly string[])[] {
  const hosts = new Set(players.flatMap((player) => (player.hostId === null ? [] : [player.hostId])))
  return [...hosts].map((host) => [
    host,
    ...players.filter((player) => player.hostId === host).map((player) => player.id),
  ])
}

describe('mixed by handicap', () => {
  it('holds the bound for the means of any two groups, with any number of guests', () => {
    fc.assert(
      fc.property(fieldWith(30), (field) => {
        const { bands, mean, range } = drawn(field)
        for (const [a, of] of bands.entries())
          for (const [b, other] of bands.entries()) {
            if (of.length < other.length) continue
            const most = (range * (1 + unmatched(of, other))) / of.length
            expect(Math.abs(mean[a]! - mean[b]!)).toBeLessThanOrEqual(most + 1e-9)
          }
      }),
      { numRuns: 200 },
    )
  })

  it('puts no two of a band together without guests, and a low and a high into every group', () => {
    fc.assert(
      fc.property(fieldWith(0), (field) => {
        const { bands, largest } = drawn(field)
        for (const group of bands) {
          expect(twice(group)).toBe(0)
          expect(group).toContain(0)
          expect(group).toContain(largest - 1)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('doubles a band with guests only where they force it, and at most once more for each', () => {
    fc.assert(
      fc.property(fieldWith(9), (field) => {
        const { bands, band, groups, largest } = drawn(field)
        const parties = partiesOf(field.players)
        const full = groups.filter((group) => group.length === largest).length
        // More parties than full groups, or a party larger than a group: those sit together or in a smaller group.
        fc.pre(parties.length <= full && parties.every((party) => party.length <= largest))
        const forced = parties.reduce((sum, party) => sum + twice(party.map((id) => band.get(id) ?? -1)), 0)
        const all = bands.reduce((sum, group) => sum + twice(group), 0)
        // Somebody with two or three guests fills most of a group, which leaves less to choose for the others.
        const crowds = parties.reduce((sum, party) => sum + party.length - 2, 0)
        expect(all).toBeLessThanOrEqual(2 * forced + crowds)
        for (const party of parties) expect(groups.some((group) => party.every((id) => group.includes(id)))).toBe(true)
      }),
      { numRuns: 300 },
    )
  })

  it('deals 26 members and a guest as it deals 27 members', () => {
    const handicaps = [
      -1, 4, 6, 6, 7, 7, 8, 9, 10, 12, 12, 13, 14, 15, 16, 17, 17, 18, 18, 20, 20, 20, 23, 24, 28, 32, 35,
    ]
    const players: Drawn[] = handicaps.map((handicap, at) => ({
      id: `m${at}`,
      handicap,
      hostId: at === 13 ? 'm5' : null,
    }))
    for (let seed = 1; seed <= 20; seed++) {
      const { bands, groups } = drawn({ players, groupSize: 4, seed, smaller: 'last' })
      expect(bands.map((group) => twice(group))).toEqual([0, 0, 0, 0, 0, 0, 0])
      expect(groups.find((group) => group.includes('m13'))).toContain('m5')
    }
  })
})

describe('grouped by handicap', () => {
  it('keeps like with like: the players without guests go in order of handicap, group after group', () => {
    fc.assert(
      fc.property(fieldWith(30), ({ players, ...how }) => {
        const groups = drawGroups(players, { ...how, way: 'by-handicap-banded' })
        const inParty = new Set(partiesOf(players).flat())
        const of = new Map(players.map((player) => [player.id, player.handicap ?? 0]))
        const alone = groups.map((group) => group.filter((id) => !inParty.has(id)).map((id) => of.get(id) ?? 0))
        // The highest of a group is never above the lowest of a later one: a group takes a run of the list.
        const flat = alone.flat()
        expect(flat).toEqual(flat.toSorted((a, b) => a - b))
      }),
      { numRuns: 200 },
    )
  })
})
