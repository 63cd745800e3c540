// Promise: "in" means handed in or accepted, on the board, in its sentence, in the bar and at the desk alike; the counts of
// a day's cards add up, nobody who has not begun is forgotten, and a leader whose round is over is not among those to come.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { barTurns } from '@/app/(board)/_board/bar-pages'
import { groupsOut } from '@/app/(board)/_board/groups-out'
import { mySentence } from '@/app/(board)/_board/my-words'
import { startLines } from '@/app/(board)/_board/not-started'
import { screenBoard } from '@/app/(board)/_board/screen-board'
import { boardOf } from '@/lib/boards/board'
import { isIn, isRound } from '@/lib/boards/card-progress'
import { cardsOnTheirWay } from '@/lib/boards/cards-on-their-way'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { inWords } from '@/lib/boards/in-words'
import { countsOf } from '@/lib/boards/what-is-due'
import { CARD_STATES, type CardState, type DayRecord, type RulingRecord } from '@/lib/facts/day-record'
import type { CardId } from '@/lib/facts/ids'
import { asId } from '../setup/ids'
import { smallRecord } from './small-record'

const PEOPLE = ['Ash', 'Birch', 'Cedar', 'Damson', 'Elder', 'Fir', 'Gean', 'Hazel']
const GROUPS = [PEOPLE.slice(0, 4), PEOPLE.slice(4)]
const PAIRS = [PEOPLE.slice(0, 2), PEOPLE.slice(2, 4), PEOPLE.slice(4, 6), PEOPLE.slice(6)]
const NOW = new Date('2031-06-14T14:00:00Z')

interface Player {
  readonly holes: number
  readonly state: CardState
  readonly gross: number
}

function dayOf(players: readonly Player[]): DayRecord {
  const record = smallRecord({
    people: PEOPLE,
    groups: GROUPS,
    scores: Object.fromEntries(PEOPLE.map((name, at) => [name, Array(players[at]!.holes).fill(players[at]!.gross)])),
    competitions: [{ format: 'stableford' }, { format: 'four-ball-stableford', sides: PAIRS }],
  })
  return { ...record, cards: record.cards.map((card, at) => ({ ...card, state: players[at]!.state })) }
}

/** Only a whole card can have left its player's hands. */
const noReturn = (cardId: CardId, number: number): RulingRecord => ({
  id: asId(`ruling-${number}`),
  number,
  cardId,
  kind: 'no-return',
  hole: null,
  value: null,
  clause: '',
  reason: 'It never came in.',
  byName: 'M Secretary',
  ruledAt: NOW,
  replaces: null,
})

const player = fc
  .record({
    holes: fc.constantFrom(0, 0, 3, 11, 17, 18, 18, 18),
    state: fc.constantFrom(...CARD_STATES),
    gross: fc.integer({ min: 3, max: 6 }),
  })
  .map((one): Player => ({ ...one, state: one.holes === 18 ? one.state : 'out' }))
const players = fc.array(player, { minLength: 8, maxLength: 8 })
const same = (holes: number, state: CardState = 'out'): Player => ({ holes, state, gross: 4 })

/** Number in a sentence, as it is written there. */
const numberIn = (words: RegExp, text: string): number => {
  const said = words.exec(text)?.[1]
  if (said === undefined) return 0
  const number = Array.from({ length: 100 }, (_, at) => at).find((at) => inWords(at) === said.toLowerCase())
  return number ?? Number(said)
}

describe('cards that are in', () => {
  it('a card is in as soon as it is handed in, and not only when it is accepted', () => {
    const states: CardState[] = ['handed-in', 'handed-in', 'handed-in', 'taken-in', 'out', 'out', 'out', 'out']
    const record = dayOf(states.map((state, at) => same(at < 6 ? 18 : at === 6 ? 11 : 0, state)))
    const board = boardOf(record, NOW)
    expect([board.cards, board.cardsIn, board.cardsToSign]).toEqual([8, 4, 2])
    expect(countsOf(record, null)).toMatchObject({ cards: 8, cardsIn: 4, cardsAccepted: 1 })
    expect(board.competitions[0]!.rows.map((row) => row.progress?.state).sort()).toEqual(
      ['accepted', 'finished', 'finished', 'handed-in', 'handed-in', 'handed-in', 'not-started', 'on-hole'].sort(),
    )
  })

  it('the headline says who has still to finish and which cards want a signature', () => {
    const begun = dayOf([same(18, 'handed-in'), same(18), same(18), same(18), same(0), same(0), same(0), same(0)])
    const lead = {
      ...begun,
      facts: begun.facts.map((fact) => (fact.cardId === 'card-d-Birch' ? { ...fact, score: 3 } : fact)),
    }
    const [singles, pairs] = boardOf(lead, NOW).competitions
    expect(singles!.sentence).toBe('Birch leads on 54 with four players still to finish and three cards to be signed.')
    // The headline of the pairs is about pairs.
    expect(pairs!.sentence).toBe(
      'Ash and Birch lead on 54 with two pairs still to finish and three cards to be signed.',
    )
    expect(groupsOut(screenBoard(boardOf(lead, NOW), 1, 'Europe/London')!)).toBe(
      'Group 2 has not started. One of 8 cards is in, and three more are finished, not signed.',
    )
  })

  it('says of a day closed without some cards how many never came', () => {
    const states: CardState[] = ['taken-in', 'taken-in', 'taken-in', 'taken-in', 'taken-in', 'out', 'out', 'out']
    const record = dayOf(states.map((state, at) => same(at < 6 ? 18 : 0, state)))
    const rulings = record.cards
      .filter((card) => card.state === 'out')
      .map((card, at) => noReturn(asId(card.id), at + 1))
    const screen = screenBoard(boardOf({ ...record, status: 'closed', rulings }, NOW), 1, 'Europe/London')!
    expect(groupsOut(screen)).toBe('Five of 8 cards are in; three were not returned.')
    expect(countsOf({ ...record, status: 'closed', rulings }, null)).toMatchObject({
      cardsIn: 5,
      cardsAccepted: 5,
      cardsNotReturned: 3,
    })
    const [one] = rulings
    const still = screenBoard(boardOf({ ...record, rulings: [one!] }, NOW), 1, 'Europe/London')!
    expect(groupsOut(still)).toContain('Five of 8 cards are in; one was not returned.')
  })

  it('counts every card of a random day once, and says the same numbers everywhere', () => {
    fc.assert(
      fc.property(players, (all) => {
        const record = dayOf(all)
        const way = cardsOnTheirWay(record, cardsAsTheyStand(record))
        expect(way.notStarted + way.onCourse + way.toSign + way.in).toBe(way.cards)
        const board = boardOf(record, NOW)
        const counted = all.filter(({ state }) => state !== 'out').length
        expect(board.cardsIn).toBe(counted)
        expect(countsOf(record, null).cardsIn).toBe(counted)

        const [singles] = board.competitions
        const screen = screenBoard(board, 1, 'Europe/London')!
        const text = singles!.sentence ?? ''
        if (all.some(({ holes }) => holes > 0)) {
          expect(numberIn(/(\w+) players? still to finish/, text)).toBe(all.filter(({ holes }) => holes < 18).length)
          expect(numberIn(/(\w+) cards? to be signed/, text)).toBe(way.toSign)
          expect(text.includes('every card in')).toBe(counted === 8)
        }
        const caption = groupsOut(screen)
        if (counted > 0 && counted < 8) expect(numberIn(/(\w+) of 8 cards/, caption)).toBe(counted)
        for (const group of board.groups)
          if (!group.started) expect(caption).toMatch(new RegExp(`No group has started|${group.number}.* not started`))

        // Whoever leads and is round is never among those to come; each row is in one place on the page.
        for (const row of singles!.rows) {
          expect(row.progress).toBeDefined()
          expect(isRound(row.progress!)).toBe(row.holesPlayed === 18)
          expect(isIn(row.progress!)).toBe(row.handedIn)
        }
        const waiting = startLines(screen).flatMap(({ rows }) => rows)
        expect(waiting).toHaveLength(all.filter(({ holes }) => holes === 0).length)
        const inBar = barTurns([screen]).flatMap(({ shown }) => (shown.kind === 'rows' ? shown.rows : []))
        expect(inBar.length + waiting.length).toBe(8)
        expect(inBar.every((row) => row.holesPlayed > 0)).toBe(true)
      }),
      { numRuns: 60 },
    )
  })
})

describe('a comparison of two cards', () => {
  it('is made on the same holes, and says on how many', () => {
    const all = PEOPLE.map(
      (_, at): Player => ({ holes: at === 0 ? 18 : at === 1 ? 11 : 0, state: 'out', gross: at === 0 ? 3 : 4 }),
    )
    const screen = screenBoard(boardOf(dayOf(all), NOW), 1, 'Europe/London')!
    const birch = screen.rows.find((row) => row.entrant === 'd-Birch')!
    // Eleven holes: 33 points against 22 at the same time; the 54 of the whole round say nothing about it.
    expect(mySentence(screen, birch)).toBe(
      '2nd with 22 points after 11 holes, eleven points behind Ash after the same 11 holes.',
    )
  })

  it('may find the one behind ahead', () => {
    const all = PEOPLE.map(
      (_, at): Player => ({ holes: at === 0 ? 18 : at === 1 ? 3 : 0, state: 'out', gross: at === 0 ? 4 : 3 }),
    )
    const screen = screenBoard(boardOf(dayOf(all), NOW), 1, 'Europe/London')!
    expect(mySentence(screen, screen.rows.find((row) => row.entrant === 'd-Birch')!)).toMatch(
      /three points ahead of Ash after the same 3 holes\.$/,
    )
  })
})
