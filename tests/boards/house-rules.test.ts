// House rules nobody chose are said where the day needs them, and nowhere else.
import { describe, expect, it } from 'vitest'
import { houseRulesSaid } from '@/lib/boards/house-rules'
import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { SideId } from '@/lib/facts/ids'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { asId } from '../setup/ids'
import { randomRecord } from './random-record'

const format = (id: string) => FORMATS.find((one) => one.id === id)!

/** A record of the book with sides of so many entries, on the tees the record has. */
function said(id: string, size: number, terms: Partial<CompetitionRecord['terms']> = {}, more: object = {}) {
  const record: DayRecord = randomRecord(7)
  const [one] = record.competitions
  const entryIds = record.entries.slice(0, size).map((entry) => entry.id)
  const sides = [{ id: asId<SideId>('s'), number: 1, name: null, entryIds }]
  const result = { standings: [], allowanceFrom: 'published, Appendix C', ...more }
  const tees = record.tees.map((tee) => tee.id)
  const entries = record.entries.map((entry, at) => ({ ...entry, roundTeeId: tees[at % tees.length]! }))
  return houseRulesSaid(
    { entries, tees: record.tees },
    { sides, terms: { ...one!.terms, ...terms } },
    result,
    format(id),
  )
}

describe('house rules', () => {
  it('of a side on different tees, and of one that is short', () => {
    expect(said('scramble-4', 3, { missing: undefined, dividedBy: undefined })).toEqual([
      'A side on different tees plays to the card with the lowest par of its players’ tees.',
      'A side of three takes the published figure for three.',
    ])
    expect(said('scramble-4', 3, { missing: { kind: 'ghost', overPar: 1, courseHandicap: 20 } })).toHaveLength(1)
    expect(said('four-ball-stableford', 2)).toEqual([])
  })

  it('of a ball that is lost, unless the terms say it', () => {
    expect(said('yellow-ball', 4)).toEqual([
      'Once the named ball is lost the score of the player in turn counts nothing.',
    ])
    expect(said('yellow-ball', 4, { ballLost: 'side-out' })).toEqual([])
  })

  it('of parts between teams, and of games in several groups', () => {
    expect(said('three-part-match', 1, {}, { teams: [] })).toEqual([
      'Between teams each part of a match is worth a point.',
    ])
    expect(said('three-part-match', 1)).toEqual([])
    expect(said('skins', 1, {}, { standings: [{ group: 1 }] })).toEqual([
      'Each group is a game of its own, with its own places.',
    ])
  })
})
