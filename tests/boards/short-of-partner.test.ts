// Promise: whoever of a side does not count is named: a partner whose card was not returned (Rules of Golf 3.3b(2), 23.2b),
// and a player for whom the draw left no partner. The board, its working and the list before the close agree.

import { expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { cardWorkingOf } from '@/lib/boards/card-working'
import { namesOf } from '@/lib/boards/entrant-names'
import { countingAlone, withoutPartnerAtDraw } from '@/lib/boards/short-of-partner'
import type { DayRecord, RulingKind, RulingRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { asId } from '../setup/ids'
import { smallRecord } from './small-record'

const NOON = new Date('2031-06-14T12:00:00Z')
const fours = Array.from({ length: 18 }, () => 4)
const played = smallRecord({
  status: 'closed',
  people: ['Ashgill', 'Verrow', 'Storrey', 'Coldbrook', 'Elverstone'],
  scores: { Ashgill: [3, 3, ...fours.slice(2)], Verrow: fours, Storrey: fours, Coldbrook: fours, Elverstone: fours },
  competitions: [
    { format: 'stableford' },
    {
      format: 'four-ball-stableford',
      sides: [
        ['Ashgill', 'Verrow'],
        ['Storrey', 'Coldbrook'],
      ],
    },
  ],
})

const ruled = (kind: RulingKind): DayRecord => ({ ...played, rulings: [ruling(kind)] })

function ruling(kind: RulingKind): RulingRecord {
  return {
    id: asId('r'),
    number: 1,
    cardId: asId('card-d-Ashgill'),
    kind,
    hole: null,
    value: null,
    clause: '',
    reason: 'It never came in.',
    byName: 'M Secretary',
    ruledAt: NOON,
    replaces: null,
  }
}

const pairs = (record: DayRecord) => boardOf(record, NOON).competitions[1]!
const pairOf = (record: DayRecord) => pairs(record).rows.find((row) => row.name === 'Ashgill and Verrow')!

it('counts a card that was not returned for nobody, and names it', () => {
  expect(pairOf(played)).toMatchObject({ score: 38, place: 1, note: null })
  expect(pairOf(ruled('no-return'))).toMatchObject({
    score: 36,
    note: 'Ashgill’s card was not returned and does not count',
  })
  expect(pairOf(ruled('withdrawn'))).toMatchObject({ score: 38, note: null })
})

it('says it in the working of a hole', () => {
  const working = cardWorkingOf(ruled('no-return'), asId('d-Verrow'), { competition: 2, hole: 1 }, 'Europe/London')
  const steps = JSON.stringify(working)
  expect(steps).toContain('A Ashgill card not returned, V Verrow 2')
})

it('says before the close whose partner will count alone', () => {
  const out: EntryId[] = [asId('d-Ashgill'), asId('d-Storrey'), asId('d-Coldbrook')]
  const said = countingAlone(played, out, namesOf(played))
  expect(said).toEqual([
    `${played.competitions[1]!.name}: Verrow counts alone, without Ashgill.`,
    `${played.competitions[1]!.name}: Storrey and Coldbrook take no place.`,
  ])
})

it('names on the draw, the board and the sheet whoever has no partner', () => {
  const names = namesOf(played)
  expect(pairs(played).moreTerms).toContain('No partner, and so no place: Elverstone.')
  expect(played.competitions.flatMap((one) => withoutPartnerAtDraw(played, one, names))).toHaveLength(1)
  expect(withoutPartnerAtDraw(played, played.competitions[1]!, names)[0]).toMatch(/^Elverstone has no partner in /)
})
