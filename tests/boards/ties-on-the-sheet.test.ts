// Promise: every tie is told on the sheet, broken or standing, of the whole field and of each division.

import { expect, it } from 'vitest'
import { tiesOf } from '@/lib/boards/result-sheet'
import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'

type Place = readonly [entrant: string, place: number | null, tied?: 'tied', sentence?: string]

const placed = ([entrant, place, tied, sentence]: Place) => ({
  entrant,
  place,
  tied: tied === 'tied',
  tieBroken: null,
  tieSentence: sentence ?? null,
})
const SCORES: Readonly<Record<string, number>> = { Ash: 40, Beck: 38, Cole: 38, Dale: 38, Eden: 30, Firth: 30 }
const row = (place: Place) => ({ ...placed(place), score: SCORES[place[0]] ?? null }) as BoardRow

const board = (rows: readonly Place[], divisions: readonly (readonly [string, readonly Place[]])[]) =>
  ({
    name: 'Cup',
    unit: 'points',
    rows: rows.map(row),
    divisions: divisions.map(([name, of]) => ({ id: name, name, sentence: '', rows: of.map(placed) })),
  }) as unknown as CompetitionBoard

const names = {
  full: (id: string) => id,
  short: (id: string) => id,
  entrant: (id: string) => id,
  entrantShort: (id: string) => id,
  note: () => null,
}

it('tells a tie of a division that is none of the field, and one that stands in both', () => {
  const cup = board(
    [
      ['Ash', 1],
      ['Beck', 2, undefined, 'Beck above Cole, both 38: last nine 20 to 18.'],
      ['Cole', 3, undefined, 'Cole above Dale, both 38: last six 12 to 11.'],
      ['Dale', 4],
      ['Eden', 5, 'tied'],
      ['Firth', 5, 'tied'],
    ],
    [
      [
        'Division 1',
        [
          ['Beck', 1, undefined, 'Beck above Dale, both 38: last nine 20 to 17.'],
          ['Dale', 2],
        ],
      ],
      [
        'Division 2',
        [
          ['Ash', 1],
          ['Eden', 2, 'tied'],
          ['Firth', 2, 'tied'],
        ],
      ],
      ['Seniors', [['Cole', 1]]],
    ],
  )
  expect(tiesOf(cup, true, names)).toEqual([
    'Cup, 2nd: Beck above Cole, both 38: last nine 20 to 18.',
    'Cup, 3rd: Cole above Dale, both 38: last six 12 to 11.',
    'Cup, 5th shared: Eden and Firth, both 30.',
    'Cup, Division 1, 1st: Beck above Dale, both 38: last nine 20 to 17.',
    'Cup, Division 2, 2nd shared: Eden and Firth, both 30.',
  ])
  expect(tiesOf(cup, false, names)[0]).toBe('2nd: Beck above Cole, both 38: last nine 20 to 18.')
})

it('tells nothing of those without a place', () => {
  expect(tiesOf(board([['Ash', null, 'tied']], [['Division 1', [['Ash', null, 'tied']]]]), true, names)).toEqual([])
})
