// Promise: before anybody is withdrawn the screen says what becomes of the group, the partner, the match, the team, the
// guest and the waiting list.

import { describe, expect, it } from 'vitest'
import { type DrawnDay, ifWithdrawn } from '@/lib/boards/withdrawal'
import type { EntryId, PersonId } from '@/lib/facts/ids'
import { asId } from '../setup/ids'

const ids = (...names: string[]): EntryId[] => names.map((one) => asId(one))
const entry = (id: string, over: Partial<DrawnDay['entries'][number]> = {}) => ({
  id: asId<EntryId>(id),
  personId: asId<PersonId>(`p-${id}`),
  hostId: null,
  name: `Player ${id.toUpperCase()}`,
  kind: 'member' as const,
  status: 'entered' as const,
  indexTenths: 180,
  hasScores: false,
  ...over,
})

const day = (over: Partial<DrawnDay> = {}): DrawnDay => ({
  status: 'frozen',
  isPublished: false,
  places: null,
  entries: ['a', 'b', 'c', 'd'].map((id) => entry(id)),
  groups: [],
  competitions: [],
  teams: [],
  ...over,
})

const said = (of: DrawnDay, ...ids: string[]) =>
  ifWithdrawn(
    of,
    ids.map((one) => asId(one)),
  ).sentences

const group = { number: 2, startTime: '10:08', entryIds: ids('a', 'b', 'c') }
const pairs = {
  name: 'Pairs',
  arePartners: true,
  sides: [
    { id: 's1', entryIds: ids('a', 'b') },
    { id: 's2', entryIds: ids('c', 'd') },
  ],
  matches: [],
}

describe('what a withdrawal comes to', () => {
  it('is nothing when nobody is chosen, and little before the draw', () => {
    expect(ifWithdrawn(day(), [])).toEqual({ against: [], sentences: [] })
    expect(said(day(), 'a')).toEqual(['You can enter them again afterwards.'])
  })

  it('says who is left of the group, and that one alone has no marker', () => {
    expect(said(day({ groups: [group] }), 'a')[0]).toBe('Group 2, 10.08 am: Player B and Player C play on.')
    expect(said(day({ groups: [group] }), 'a', 'b')[0]).toContain('only Player C is left')
    expect(said(day({ groups: [group] }), 'a', 'b', 'c')[0]).toBe('Group 2, 10.08 am: nobody is left in it.')
  })

  it('says that the start sheet changes only when it is out and the player is on it', () => {
    const out = day({ groups: [group], isPublished: true })
    expect(said(out, 'a').join(' ')).toContain('The start sheet everybody sees changes at once')
    expect(said(out, 'd').join(' ')).not.toContain('start sheet')
  })

  it('names the partner, and the opponents of a match between sides', () => {
    expect(said(day({ competitions: [pairs] }), 'a')[0]).toBe('Pairs: Player B has no partner.')
    const match = { ...pairs, matches: [{ a: 's1', b: 's2', isDecided: false }] }
    expect(said(day({ competitions: [match] }), 'a')[1]).toContain('Player C and Player D have no match')
    const given = { ...pairs, matches: [{ a: 's1', b: 's2', isDecided: true }] }
    expect(said(day({ competitions: [given] }), 'a')[0]).toContain('against Player C and Player D stands')
  })

  it('names the opponent of a match of singles', () => {
    const singles = { name: 'Cup', arePartners: false, sides: [], matches: [{ a: 'a', b: 'b', isDecided: false }] }
    expect(said(day({ competitions: [singles] }), 'b')[0]).toContain('Player A has no opponent')
    expect(said(day({ competitions: [singles] }), 'a', 'b')).toHaveLength(1)
  })

  it('says who moves up, who is fewer, and whose host does not play', () => {
    const entries = [
      entry('a'),
      entry('b'),
      entry('g', { kind: 'guest', hostId: asId('p-a') }),
      entry('w', { status: 'waiting' }),
      entry('x', { status: 'waiting', indexTenths: null }),
    ]
    const full = day({ entries, places: 3, teams: [{ name: 'Reds', entryIds: ids('a', 'b') }] })
    const sentences = said(full, 'a')
    expect(sentences).toContain('Player W moves up from the waiting list.')
    expect(sentences).toContain('Team Reds: 1 of 2 are left.')
    expect(sentences.join(' ')).toContain('Player G stays, as the guest of somebody who does not play')
  })

  it('stands against taking out a card with scores', () => {
    const entries = [entry('a', { hasScores: true }), entry('b')]
    expect(ifWithdrawn(day({ entries }), ids('a', 'b')).against).toEqual([
      'Player A has scores on the card: rule the card withdrawn instead, under Returns.',
    ])
  })
})
