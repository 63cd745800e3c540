// The four cards of a spring day at an invented course, with the figures reckoned by hand, as a day file.

const PAR_MEN = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const PAR_WOMEN = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 5, 5, 4, 3, 4, 5]
const INDEX_MEN = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const INDEX_WOMEN = [7, 3, 15, 9, 17, 1, 11, 13, 5, 12, 6, 16, 14, 2, 8, 10, 18, 4]

function holes(pars: readonly number[], indexes: readonly number[]) {
  return pars.map((par, at) => ({ hole: at + 1, par, strokeIndex: indexes[at]! }))
}

export const FOUR_CARDS = {
  dayFile: 1,
  date: '2026-04-25',
  course: {
    name: 'Aldermoss Park',
    tees: [
      {
        id: 'yellow-men',
        name: 'Yellow',
        gender: 'men',
        courseRating: 69.2,
        slopeRating: 125,
        holes: holes(PAR_MEN, INDEX_MEN),
      },
      {
        id: 'red-women',
        name: 'Red',
        gender: 'women',
        courseRating: 70.9,
        slopeRating: 125,
        holes: holes(PAR_WOMEN, INDEX_WOMEN),
      },
    ],
  },
  players: [
    { id: 'haldane', name: 'Corin Haldane', handicapIndex: 3.1, tee: 'yellow-men' },
    { id: 'coldbrook', name: 'Emrys Coldbrook', handicapIndex: 18.4, tee: 'yellow-men' },
    { id: 'trevennor', name: 'Jago Trevennor', handicapIndex: 20.7, tee: 'yellow-men' },
    { id: 'tarrablane', name: 'Una Tarrablane', handicapIndex: 24.7, tee: 'red-women' },
  ],
  sides: [
    { id: 'first', players: ['haldane', 'coldbrook'] },
    { id: 'second', players: ['trevennor', 'tarrablane'] },
  ],
  cards: [
    { player: 'haldane', scores: [4, 5, 4, 5, 4, 5, 4, 3, 4, 4, 5, 3, 4, 5, 5, 3, 5, 5] },
    { player: 'coldbrook', scores: [5, 6, 3, 6, 5, 6, 4, 4, 6, 5, 5, 4, 6, 6, 4, 3, 5, 7] },
    { player: 'trevennor', scores: [5, 5, 4, 5, 5, 7, 5, 3, 5, 5, 5, 3, 6, 6, 6, 4, 4, 6] },
    { player: 'tarrablane', scores: [5, 6, 5, 7, 4, 7, 5, 5, 6, 6, 5, 4, 7, 6, 5, 4, 6, 6] },
  ],
  competitions: [
    { id: 'cup', format: 'stableford', allowance: 95 },
    { id: 'pairs', format: 'four-ball-stableford' },
  ],
}

/** A fresh copy to change at will. */
export function fourCards(): typeof FOUR_CARDS {
  return structuredClone(FOUR_CARDS)
}
