// Promise: a prize falls to its place among those who may win it; nobody takes two with an own card, the next steps up
// and the sheet says why; a tie that stands shares.
import { describe, expect, it } from 'vitest'
import { prizesOf } from '@/lib/boards/prizes'
import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'
import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'

const row = (name: string, place: number | null, score: number, over: Partial<BoardRow> = {}): BoardRow => ({
  place,
  tied: false,
  entrant: name,
  entryIds: [name],
  name,
  note: null,
  playingHandicap: 10,
  score,
  againstLevel: score - 36,
  out: null,
  in: null,
  gross: null,
  holesPlayed: 18,
  last: null,
  holes: [],
  noPlace: null,
  tieBroken: null,
  tieSentence: null,
  notAgreed: [],
  handedIn: true,
  groupNumber: 1,
  ...over,
})

const prize = (number: number, name: string, place: number, eligible: PrizeRecord['eligible'] = 'everybody') => ({
  number,
  name,
  place,
  eligible,
  valuePence: 1000,
})

function competition(
  id: string,
  rows: readonly BoardRow[],
  prizes: readonly PrizeRecord[],
  guests: 'for-every-prize' | 'guest-prize-only' = 'guest-prize-only',
): [CompetitionRecord, CompetitionBoard] {
  const terms = { allowance: 95, allowanceFrom: 'published' as const, ties: PUBLISHED_COUNTBACK, guests }
  return [
    { id, number: 1, name: id, format: 'stableford', terms, prizes, sides: [], pairings: [], countedDayIds: [] },
    {
      id,
      name: id,
      format: 'stableford',
      formatName: 'Stableford',
      allowance: '95 %',
      allowanceFrom: '',
      tieRule: '',
      unit: 'points',
      better: 'high',
      rows,
      matches: [],
      names: {},
    },
  ]
}

const isGuest = (id: string) => id.startsWith('Guest')
const won = (...all: [CompetitionRecord, CompetitionBoard][]) =>
  prizesOf(
    all.map(([record]) => record),
    all.map(([, board]) => board),
    isGuest,
  ).map((one) => [one.name, one.winner, one.because])

describe('prizes', () => {
  const rows = [row('Guest Rushgate', 1, 40), row('Trevennor', 2, 38), row('Holmgarth', 3, 37), row('Kilravel', 4, 36)]

  it('leave a guest the guest prize, and say why the next steps up', () => {
    expect(
      won(
        competition('Cup', rows, [prize(1, 'the cup', 1), prize(2, 'second', 2), prize(3, 'best guest', 1, 'guests')]),
      ),
    ).toEqual([
      ['the cup', 'Trevennor', 'Second on the board; guests play for the guest prize.'],
      ['second', 'Holmgarth', 'Third on the board; guests play for the guest prize.'],
      ['best guest', 'Guest Rushgate', null],
    ])
  })

  it('let a guest win where the terms say so, and then not the guest prize as well', () => {
    const both = [...rows, row('Guest Maddock', 5, 30)]
    const prizes = [prize(1, 'the cup', 1), prize(2, 'best guest', 1, 'guests')]
    expect(won(competition('Cup', both, prizes, 'for-every-prize'))).toEqual([
      ['the cup', 'Guest Rushgate', null],
      ['best guest', 'Guest Maddock', 'Fifth on the board; Guest Rushgate already has the cup.'],
    ])
  })

  it('give one prize a player across the competitions of a day', () => {
    const members = rows.slice(1).map((one, at) => ({ ...one, place: at + 1 }))
    expect(
      won(
        competition('Cup', members, [prize(1, 'the cup', 1)]),
        competition('Medal', members, [prize(1, 'the medal', 1), prize(2, 'medal second', 2)]),
      ),
    ).toEqual([
      ['the cup', 'Trevennor', null],
      ['the medal', 'Holmgarth', 'Second on the board; Trevennor already has the cup.'],
      ['medal second', 'Kilravel', 'Third on the board; Holmgarth already has the medal.'],
    ])
  })

  it('are shared by those whose tie stands', () => {
    const level = [
      row('Trevennor', 1, 38, { tied: true }),
      row('Holmgarth', 1, 38, { tied: true }),
      row('Kilravel', 3, 30),
    ]
    expect(won(competition('Cup', level, [prize(1, 'first', 1), prize(2, 'second', 2), prize(3, 'third', 3)]))).toEqual(
      [
        ['first', 'Trevennor and Holmgarth', 'First on the board; level, and the tie stands: shared.'],
        ['second', 'Trevennor and Holmgarth', 'First on the board; level, and the tie stands: shared.'],
        ['third', 'Kilravel', null],
      ],
    )
  })

  it('stay on the table when nobody may win them', () => {
    expect(
      won(competition('Cup', [row('Trevennor', null, 0)], [prize(1, 'first', 1), prize(2, 'g', 1, 'guests')])),
    ).toEqual([
      ['first', '–', 'Nobody returned a card.'],
      ['g', '–', 'No guest returned a card.'],
    ])
  })
})
