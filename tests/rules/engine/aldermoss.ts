// The four-card day at Aldermoss Park, worked out by hand: the course, the players and their cards.

import type { Card, Day, Hole, Player, Tee } from '@/lib/rules/day'

const MEN = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const WOMEN = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 5, 5, 4, 3, 4, 5]
const SI_MEN = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const SI_WOMEN = [7, 3, 15, 9, 17, 1, 11, 13, 5, 12, 6, 16, 14, 2, 8, 10, 18, 4]

const holes = (pars: readonly number[], indexes: readonly number[]): Hole[] =>
  pars.map((par, i) => ({ hole: i + 1, par, strokeIndex: indexes[i]! }))

export const YELLOW: Tee = {
  id: 'yellow-men',
  name: 'Yellow',
  gender: 'men',
  courseRatingTenths: 692,
  slopeRating: 125,
  holes: holes(MEN, SI_MEN),
}
export const RED: Tee = {
  id: 'red-women',
  name: 'Red',
  gender: 'women',
  courseRatingTenths: 709,
  slopeRating: 125,
  holes: holes(WOMEN, SI_WOMEN),
}

const player = (id: string, indexTenths: number, tee: string): Player => ({ id, name: id, indexTenths, tee })
const card = (id: string, scores: readonly number[]): Card => ({ player: id, scores })

export const PLAYERS: readonly Player[] = [
  player('haldane', 31, 'yellow-men'),
  player('coldbrook', 184, 'yellow-men'),
  player('trevennor', 207, 'yellow-men'),
  player('tarrablane', 247, 'red-women'),
]

export const CARDS: readonly Card[] = [
  card('haldane', [4, 5, 4, 5, 4, 5, 4, 3, 4, 4, 5, 3, 4, 5, 5, 3, 5, 5]),
  card('coldbrook', [5, 6, 3, 6, 5, 6, 4, 4, 6, 5, 5, 4, 6, 6, 4, 3, 5, 7]),
  card('trevennor', [5, 5, 4, 5, 5, 7, 5, 3, 5, 5, 5, 3, 6, 6, 6, 4, 4, 6]),
  card('tarrablane', [5, 6, 5, 7, 4, 7, 5, 5, 6, 6, 5, 4, 7, 6, 5, 4, 6, 6]),
]

export function aldermoss(more: Partial<Day>): Day {
  return {
    date: '2026-06-13',
    edition: '2024',
    tees: [YELLOW, RED],
    players: PLAYERS,
    sides: [],
    cards: CARDS,
    competitions: [{ id: 'main', format: 'stableford' }],
    closed: true,
    ...more,
  }
}
