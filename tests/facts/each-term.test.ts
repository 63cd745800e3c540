// Promise: each term of a competition is proved to change some result. A term that is added has no example here, and this
// file no longer compiles: give it the smallest competition in which it matters, with the term and without.

import { describe, expect, it } from 'vitest'
import { parseDayFile } from '@/lib/facts/day-file'
import type { rarerTerms } from '@/lib/facts/rarer-terms'
import type { CompetitionTerms } from '@/lib/facts/terms'
import { scoreDay } from '@/lib/rules/score-day'
import { fourCards } from '../rules/four-cards'

type Day = ReturnType<typeof fourCards>
type Competition = Readonly<Record<string, unknown>> & { readonly format: string }

interface Example {
  readonly competition: Competition
  /** What the term says, twice: the results differ. Undefined: not said. */
  readonly says: readonly [unknown, unknown]
  readonly day?: (day: Day) => unknown
}

/** Terms about words, prizes and guests: the score has nothing of them, these tests have. */
type AboutPrizes = 'allowanceFrom' | 'allowanceReason' | 'guests' | 'onePrize' | 'sidesPrizes' | 'custom'
type Term = keyof typeof rarerTerms | Exclude<keyof CompetitionTerms, keyof typeof rarerTerms | AboutPrizes>

const cards = (change: (card: Day['cards'][number], at: number) => object) => (day: Day) => ({
  ...day,
  cards: day.cards.map((card, at) => ({ ...card, ...change(card, at) })),
})
const levelCards = cards((_, at) => ({
  // Level at the end, not after the last nine.
  scores: Array.from({ length: 18 }, (_hole, hole) => (hole < 9 ? 4 + (at % 2) : 5 - (at % 2))),
}))
const onlyHoles = (day: Day) => ({
  ...cards(({ scores }) => ({ scores: scores.map((one, hole) => (hole < 14 ? one : null)) }))(day),
  closed: true,
})
/** One ball of a side: its card in place of the players' own. */
const sideCards =
  (more: object = {}) =>
  (day: Day) => ({
    ...day,
    cards: day.sides.map((side, at) => ({ player: side.id, scores: day.cards[at]!.scores, ...more })),
  })
const threeInTwoSides = (day: Day) => ({
  ...day,
  sides: [
    { id: 'first', players: ['haldane', 'coldbrook', 'trevennor'], competitions: ['c'] },
    { id: 'second', players: ['tarrablane'], competitions: ['c'] },
  ],
})
const match = { matches: [{ id: 'm', a: 'haldane', b: 'coldbrook' }] }

const EACH: Readonly<Record<Term, Example>> = {
  allowance: { competition: { format: 'stableford' }, says: [95, 50] },
  ties: {
    competition: { format: 'medal', allowance: 0 },
    says: [{ steps: [{ kind: 'last', holes: 9 }] }, { steps: [] }],
    day: levelCards,
  },
  maximum: {
    competition: { format: 'maximum-score' },
    says: [
      { kind: 'fixed', strokes: 4 },
      { kind: 'fixed', strokes: 9 },
    ],
  },
  handicapLimit: { competition: { format: 'stableford' }, says: [{ men: 10 }, undefined] },
  dividedBy: { competition: { format: 'scramble-2' }, says: [10, 4], day: sideCards() },
  matchDifference: {
    competition: { format: 'match', ...match },
    says: ['unrounded', 'rounded'],
    day: (day) => ({
      ...day,
      // 2.9 x 125 / 113 + 69.2 - 72 = 0.41, and 16.6 gives 15.56: the difference is 16 of the rounded, 15 of the unrounded.
      players: day.players.map((player, at) => ({ ...player, handicapIndex: [2.9, 16.6, 20.7, 24.7][at] })),
    }),
  },
  extraHoleStrokes: {
    competition: { format: 'match', matches: [{ ...match.matches[0], extraHoles: [{ a: 5, b: 5 }] }] },
    says: ['none', 'as-on-the-card'],
    // Five strokes, on the holes with stroke index 1 to 5: level after eighteen, and the first extra hole is one of them.
    day: (day) => ({
      ...cards((_, at) => ({
        scores: day.course.tees[0]!.holes.map(({ strokeIndex }) => (at === 1 && strokeIndex <= 5 ? 5 : 4)),
      }))(day),
      players: day.players.map((player, at) => ({ ...player, playingHandicap: { c: at === 1 ? 5 : 0 } })),
    }),
  },
  namedHoles: { competition: { format: 'double-point-stableford' }, says: [[2, 17], [3]] },
  countedHoles: { competition: { format: 'stableford' }, says: [[1, 2, 3], undefined] },
  notPlayed: { competition: { format: 'medal' }, says: ['level', 'no-score'], day: onlyHoles },
  missing: {
    competition: { format: 'best-2-of-4-stableford' },
    says: [{ kind: 'lowest-again' }, { kind: 'nothing' }],
    day: threeInTwoSides,
  },
  ballLost: {
    competition: { format: 'yellow-ball' },
    says: ['named-score-nothing', 'counts-once'],
    day: (day) => ({
      ...day,
      sides: [{ id: 'all', players: day.players.map(({ id }) => id), ballLostOn: 4 }],
    }),
  },
  sideTee: {
    competition: { format: 'foursomes-medal', allowance: 50 },
    says: ['red-women', 'yellow-men'],
    day: (day) => sideCards()({ ...day, sides: [day.sides[1]!] }),
  },
  partPoints: {
    competition: { format: 'three-part-match', matches: [{ id: 'm', a: 'haldane', b: 'coldbrook' }] },
    says: ['whole', 'each-part'],
    day: (day) => ({
      ...day,
      teams: [
        { id: 'home', name: 'Home', players: ['haldane'] },
        { id: 'away', name: 'Away', players: ['coldbrook'] },
      ],
    }),
  },
  ranking: {
    competition: {
      format: 'skins',
      groups: [
        ['haldane', 'coldbrook'],
        ['trevennor', 'tarrablane'],
      ],
    },
    says: ['everybody', 'in-group'],
  },
  minimumDrives: {
    competition: { format: 'scramble-2' },
    says: [12, undefined],
    day: sideCards({ drives: Array.from({ length: 18 }, () => 'haldane') }),
  },
  divisions: {
    competition: { format: 'stableford' },
    says: [[{ id: 'low', name: 'Low', handicapTo: 20 }], undefined],
  },
}

function resultOf({ competition, day = (one) => one }: Example, term: string, said: unknown): string {
  const changed = day(fourCards()) as Day
  const terms = said === undefined ? {} : { [term]: said }
  const file = parseDayFile({ ...changed, competitions: [{ id: 'c', ...competition, ...terms }] })
  if (!file.ok) throw new Error(JSON.stringify(file))
  return JSON.stringify(scoreDay(file.value))
}

describe('a term of a competition changes a result:', () => {
  it.each(Object.entries(EACH))('%s', (term, example) => {
    const [one, other] = example.says.map((said) => resultOf(example, term, said))
    expect(one).not.toBe(other)
  })
})
