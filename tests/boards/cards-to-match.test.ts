// Promise: the cards that can be compared are the cards there are: everybody's own, or one a side where a side plays one ball;
// two of those meet off the handicap of their side. The card of a side's ball is not read as anybody's own.
import { expect, it } from 'vitest'
import { cardReadAs } from '@/lib/boards/card-read-as'
import { cardsToMatch, matchSheetOf } from '@/lib/boards/match-sheet'
import { playerCardOf } from '@/lib/boards/player-card'
import { asId } from '../setup/ids'
import { holes, smallRecord } from './small-record'

const PEOPLE = ['Verrow', 'Ashgill', 'Storrey', 'Coldbrook']
const SIDES = [PEOPLE.slice(0, 2), PEOPLE.slice(2)]
const day = (format: string, sides: readonly (readonly string[])[] = []) =>
  smallRecord({
    people: PEOPLE,
    scores: {
      Verrow: [3, ...holes(17, 4)],
      Storrey: holes(18, 4),
      ...(sides.length > 0 ? {} : { Ashgill: holes(18, 5) }),
    },
    competitions: [{ format, sides }],
  })

it('are everybody, by family name, with own balls', () => {
  expect(cardsToMatch(day('stableford')).map(({ name }) => name)).toEqual([
    'A Ashgill',
    'C Coldbrook',
    'S Storrey',
    'V Verrow',
  ])
})

it('are the sides, once each, where a side plays one ball, and meet as such', () => {
  for (const format of ['foursomes-medal', 'greensomes-stableford']) {
    const record = day(format, SIDES)
    expect(cardsToMatch(record)).toEqual([
      { entryId: 'd-Verrow', name: 'Verrow and Ashgill' },
      { entryId: 'd-Storrey', name: 'Storrey and Coldbrook' },
    ])
    // Either partner stands for the side; one hole won and seventeen halved.
    for (const player of ['d-Verrow', 'd-Ashgill']) {
      const sheet = matchSheetOf(record, [player], ['d-Storrey'])!
      expect(sheet).toMatchObject({ match: { result: '1 up', finished: true } })
      expect([sheet.a.name, sheet.b.name]).toEqual(['Verrow and Ashgill', 'Storrey and Coldbrook'])
      expect(sheet.working.length).toBeGreaterThan(0)
    }
    expect(matchSheetOf(record, ['d-Verrow'], ['d-Ashgill'])).toBeNull()
    expect(playerCardOf(record, asId('d-Verrow'))!.others).toEqual([
      { entryId: 'd-Storrey', name: 'Storrey and Coldbrook' },
    ])
  }
})

it('is not offered to be read as a card of singles', () => {
  const record = day('foursomes-medal', SIDES)
  const offered = playerCardOf(record, asId('d-Verrow'))!.readableAs.map(({ format }) => format)
  expect(offered).not.toContain('stableford')
  expect(cardReadAs(record, asId('d-Verrow'), 'stableford', null)).toBeNull()
  expect(playerCardOf(day('stableford'), asId('d-Verrow'))!.readableAs.map(({ format }) => format)).toContain('medal')
})
