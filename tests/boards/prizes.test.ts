// Promise: a prize falls to its place among those who may win it; nobody takes two with an own card, the next steps up
// and the sheet says why; a tie that stands shares.
import { describe, expect, it } from 'vitest'
import { prizesInTurn } from '@/lib/boards/prize-rule'
import { prizesOf } from '@/lib/boards/prizes'
import type { BoardRow, CompetitionBoard } from '@/lib/boards/views'
import type { CompetitionRecord, PrizeRecord } from '@/lib/facts/day-record'
import { type OnePrize, PUBLISHED_COUNTBACK, type SidesPrizes } from '@/lib/facts/terms'
import { asId } from '../setup/ids'

const row = (name: string, place: number | null, score: number, over: Partial<BoardRow> = {}): BoardRow => ({
  place,
  tied: false,
  entrant: name,
  entryIds: [asId(name)],
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
  over: { onePrize?: OnePrize; sidesPrizes?: SidesPrizes; divisions?: CompetitionBoard['divisions'] } = {},
): [CompetitionRecord, CompetitionBoard] {
  const terms = { allowance: 95, allowanceFrom: 'published' as const, ties: PUBLISHED_COUNTBACK, guests }
  return [
    {
      id: asId(id),
      number: 1,
      name: id,
      format: 'stableford',
      terms: { ...terms, onePrize: over.onePrize, sidesPrizes: over.sidesPrizes },
      prizes,
      sides: [],
      pairings: [],
      countedDayIds: [],
    },
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
      ...(over.divisions ? { divisions: over.divisions } : {}),
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
    (id) => id,
  ).map((one) => [one.name, one.winner, one.because])

describe('prizes', () => {
  const rows = [row('Guest Rushgate', 1, 40), row('Trevennor', 2, 38), row('Holmgarth', 3, 37), row('Kilravel', 4, 36)]

  it('leave a guest the guest prize, and say why the next steps up', () => {
    expect(
      won(
        competition('Cup', rows, [prize(1, 'the cup', 1), prize(2, 'second', 2), prize(3, 'best guest', 1, 'guests')]),
      ),
    ).toEqual([
      ['the cup', 'Trevennor', 'Second on the board; Guest Rushgate plays for the guest prize.'],
      ['second', 'Holmgarth', 'Third on the board; Guest Rushgate plays for the guest prize.'],
      ['best guest', 'Guest Rushgate', null],
    ])
  })

  it('for a place go to nobody where each group is a game of its own', () => {
    const [record, board] = competition(
      'Skins',
      [
        row('Trevennor', 1, 9),
        row('Holmgarth', 2, 5),
        row('Kilravel', 1, 4, { tied: true }),
        row('Verrow', 1, 4, { tied: true }),
      ],
      [prize(1, 'most skins', 1)],
    )
    const shared = [
      { groupNumber: 1, entrants: ['Trevennor', 'Holmgarth'] },
      { groupNumber: 2, entrants: ['Kilravel', 'Verrow'] },
    ]
    expect(won([record, { ...board, shared, placesInGroups: true }])).toEqual([
      ['most skins', '–', 'Each group is a game of its own: no place is for the whole field.'],
    ])
    // Ranked over everybody, or one group alone.
    expect(won([record, { ...board, shared }])).toEqual([['most skins', 'Trevennor', null]])
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

  it('of a tie that stands are no more than those who share it, and one of each place', () => {
    const level = [
      row('Trevennor', 1, 38, { tied: true }),
      row('Holmgarth', 1, 38, { tied: true }),
      row('Kilravel', 3, 30),
      row('Coldbrook', 4, 29),
    ]
    const winners = (prizes: readonly PrizeRecord[]) =>
      won(competition('Cup', level, prizes)).map(([name, winner]) => [name, winner])
    expect(winners([prize(1, 'first', 1), prize(2, 'best member', 1, 'members')])).toEqual([
      ['first', 'Trevennor and Holmgarth'],
      ['best member', 'Kilravel'],
    ])
    expect(winners([prize(1, 'first', 1), prize(2, 'second', 2), prize(3, 'member second', 2, 'members')])).toEqual([
      ['first', 'Trevennor and Holmgarth'],
      ['second', 'Trevennor and Holmgarth'],
      ['member second', 'Kilravel'],
    ])
    const [cup, board] = competition('Plate', level, [prize(1, 'the plate', 1)])
    const plate: [CompetitionRecord, CompetitionBoard] = [cup, board]
    expect(won(competition('Cup', level, [prize(1, 'first', 1)]), plate).map(([, winner]) => winner)).toEqual([
      'Trevennor and Holmgarth',
      'Kilravel',
    ])
  })

  it('of a third place are not for two who share the first two places behind somebody with a prize', () => {
    const level = [
      row('Ashgill', 1, 40),
      row('Trevennor', 2, 38, { tied: true }),
      row('Holmgarth', 2, 38, { tied: true }),
      row('Kilravel', 4, 30),
    ]
    const cup = competition('Cup', [row('Ashgill', 1, 40)], [prize(1, 'the cup', 1)])
    const medal = competition('Medal', level, [prize(1, 'one', 1), prize(2, 'two', 2), prize(3, 'three', 3)])
    expect(won(cup, medal).map(([, winner]) => winner)).toEqual([
      'Ashgill',
      'Trevennor and Holmgarth',
      'Trevennor and Holmgarth',
      'Kilravel',
    ])
  })

  const singles = (over: { onePrize?: OnePrize; sidesPrizes?: SidesPrizes }) =>
    competition('Cup', rows.slice(1), [prize(1, 'the cup', 1)], 'guest-prize-only', over)
  const side = (one: string, other: string, place: number) =>
    row(`${one} and ${other}`, place, 45 - place, { entryIds: [asId(one), asId(other)] })
  const pairs = () =>
    competition(
      'Pairs',
      [side('Trevennor', 'Tarrablane', 1), side('Haldane', 'Coldbrook', 2)],
      [prize(1, 'best pair', 1), prize(2, 'second pair', 2)],
    )

  it('of a pair are apart from those of its players unless the terms count them', () => {
    expect(won(singles({}), pairs()).map(([name, winner]) => [name, winner])).toEqual([
      ['the cup', 'Trevennor'],
      ['best pair', 'Trevennor and Tarrablane'],
      ['second pair', 'Haldane and Coldbrook'],
    ])
  })

  it('of a pair count for both where the terms say so: it is passed over, and the sheet says whom it is about', () => {
    expect(won(singles({ sidesPrizes: 'counted' }), pairs())).toEqual([
      ['the cup', 'Trevennor', null],
      [
        'best pair',
        'Haldane and Coldbrook',
        'Second on the board; Trevennor and Tarrablane passed over: Trevennor already has the cup, and the prize of a side is not split.',
      ],
      [
        'second pair',
        '–',
        'Too few cards for this place. Haldane and Coldbrook passed over: Haldane already has best pair, and the prize of a side is not split.',
      ],
    ])
  })

  it('of a pair that come first keep its players from a prize of their own', () => {
    const [record, board] = pairs()
    const first: [CompetitionRecord, CompetitionBoard] = [
      { ...record, terms: { ...record.terms, sidesPrizes: 'counted' } },
      board,
    ]
    expect(won(first, singles({})).at(-1)).toEqual([
      'the cup',
      'Holmgarth',
      'Third on the board; Trevennor already has best pair.',
    ])
  })

  it('are said with their rule, what it means for pairs, and whose turn comes first', () => {
    const [cup] = singles({ sidesPrizes: 'counted' })
    const [pair] = pairs()
    const fourBall = { ...pair, format: 'four-ball-stableford' }
    expect(prizesInTurn([cup, fourBall])).toBe(
      'One prize a player: the prizes are given in the order of the list, and the next in place steps up. ' +
        'The prize of a pair or a team counts as a prize of each of its players: it is not split, so the side is passed over when one of them has a prize. ' +
        'In turn: Cup (the cup), then Pairs (best pair, second pair).',
    )
    expect(prizesInTurn([cup])).toBe(
      'One prize a player: the prizes are given in the order of the list, and the next in place steps up.',
    )
    expect(prizesInTurn([{ ...cup, terms: { ...cup.terms, onePrize: 'as-many' } }, fourBall])).toBe(
      'A player takes as many prizes as are won.',
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

  const worth = (number: number, name: string, pence: number): PrizeRecord => ({
    ...prize(number, name, 1),
    valuePence: pence,
  })
  const members = rows.slice(1).map((one, at) => ({ ...one, place: at + 1 }))

  it('go out most valuable first where the terms say so, and stay in the order of the list', () => {
    const by = (onePrize: OnePrize) =>
      won(
        competition('Cup', members, [worth(1, 'the cup', 1000)], 'guest-prize-only', { onePrize }),
        competition('Medal', members, [worth(1, 'the medal', 4000)]),
      ).map(([name, winner]) => [name, winner])
    expect(by('by-order')).toEqual([
      ['the cup', 'Trevennor'],
      ['the medal', 'Holmgarth'],
    ])
    expect(by('by-value')).toEqual([
      ['the cup', 'Holmgarth'],
      ['the medal', 'Trevennor'],
    ])
    expect(by('as-many')).toEqual([
      ['the cup', 'Trevennor'],
      ['the medal', 'Trevennor'],
    ])
  })

  const seniors = [
    {
      id: 'd1',
      name: 'Seniors',
      sentence: 'Everybody marked “senior”.',
      rows: ['Kilravel', 'Trevennor'].map((entrant, at) => ({
        entrant,
        place: at + 1,
        tied: false,
        tieBroken: null,
        tieSentence: null,
      })),
    },
  ]

  it('of a division go by its own places, and count as one prize like the others', () => {
    const inSeniors = (place: number) => ({ ...prize(2, `seniors ${place}`, place), division: 'd1' })
    expect(
      won(
        competition('Cup', members, [prize(1, 'the cup', 1), inSeniors(1), inSeniors(2)], 'guest-prize-only', {
          divisions: seniors,
        }),
      ),
    ).toEqual([
      ['the cup', 'Trevennor', null],
      ['seniors 1', 'Kilravel', null],
      ['seniors 2', '–', 'Too few cards for this place. Trevennor already has the cup.'],
    ])
  })

  it('show who was passed over on the way to the winner', () => {
    const all = [
      competition('Cup', rows, [prize(1, 'the cup', 1)]),
      competition('Medal', rows, [prize(1, 'the medal', 1)]),
    ]
    const [, medal] = prizesOf(
      all.map(([record]) => record),
      all.map(([, board]) => board),
      isGuest,
      (id) => id,
    )
    expect(medal?.working?.map((step) => [step.label, step.sentence])).toEqual([
      ['the medal', 'It is for everybody but guests: the 1st of those who may win it.'],
      ['Guest Rushgate', 'May not win it: guests play for the guest prize.'],
      ['Trevennor', 'Holds the cup already: the next one steps up.'],
      ['Holmgarth', 'Steps up and wins it.'],
    ])
  })

  it('of a division that is no part of the terms any more are said to be so', () => {
    expect(won(competition('Cup', members, [{ ...prize(1, 'lost', 1), division: 'gone' }]))).toEqual([
      ['lost', '–', 'The division of this prize is no part of the terms any more.'],
    ])
  })
})
