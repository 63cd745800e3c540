// Haldane, Coldbrook, Trevennor and Tarrablane at Aldermoss Park: the pack their phone gets, and their gross scores.
// Invented people on an invented course.

import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import type { Gender } from '@/lib/rules/day'
import { asId } from '../setup/ids'

//           hole parM parW yellow red siM siW
const COURSE: readonly (readonly number[])[] = [
  [1, 4, 4, 348, 312, 5, 7],
  [2, 5, 5, 479, 428, 11, 3],
  [3, 3, 3, 146, 127, 17, 15],
  [4, 4, 4, 389, 338, 1, 9],
  [5, 4, 4, 326, 281, 13, 17],
  [6, 5, 5, 502, 439, 7, 1],
  [7, 4, 4, 355, 309, 9, 11],
  [8, 3, 3, 162, 133, 15, 13],
  [9, 4, 4, 371, 331, 3, 5],
  [10, 4, 4, 337, 298, 10, 12],
  [11, 4, 4, 377, 329, 4, 6],
  [12, 3, 3, 134, 112, 18, 16],
  [13, 4, 5, 408, 392, 2, 14],
  [14, 5, 5, 468, 417, 14, 2],
  [15, 4, 4, 339, 291, 8, 8],
  [16, 3, 3, 171, 142, 12, 10],
  [17, 4, 4, 318, 274, 16, 18],
  [18, 5, 5, 489, 432, 6, 4],
]

const strokesOn = (playing: number, index: number) => {
  const size = Math.abs(playing)
  const base = Math.floor(size / 18)
  const rest = size % 18
  return playing >= 0 ? base + (index <= rest ? 1 : 0) : -(base + (index > 18 - rest ? 1 : 0))
}

function card(
  entryId: EntryId,
  firstName: string,
  familyName: string,
  gender: Gender,
  playingHandicap: number,
  markerId: EntryId,
): PackCard {
  return {
    cardId: asId(`card-${entryId}`),
    entryId,
    firstName,
    familyName,
    guestOf: null,
    tee: { name: gender === 'men' ? 'Yellow' : 'Red', gender },
    playingHandicap,
    markerId,
    state: 'out',
    holes: COURSE.map(([hole = 0, parM = 0, parW = 0, yellow = 0, red = 0, siM = 0, siW = 0]) => {
      const strokeIndex = gender === 'men' ? siM : siW
      return {
        hole,
        par: gender === 'men' ? parM : parW,
        strokeIndex,
        yards: gender === 'men' ? yellow : red,
        strokes: strokesOn(playingHandicap, strokeIndex),
      }
    }),
    written: {},
    ruled: {},
    signatures: [],
  }
}

export const FOUR = ['haldane', 'coldbrook', 'trevennor', 'tarrablane'] as const

export function aldermossPack(changes: Partial<CardPack> = {}): CardPack {
  return {
    packVersion: 1,
    society: 'Fernbrake Golf Society',
    societySlug: 'fernbrake',
    dayId: asId('day-spring-cup'),
    daySlug: 'spring-cup',
    dayName: 'Spring Cup',
    date: '2026-04-25',
    course: 'Aldermoss Park',
    status: 'in-play',
    group: { id: asId('group-3'), number: 3, startTime: '12:52', startHole: 1 },
    reading: 'points',
    mainCompetition: 'Spring Cup',
    cards: [
      card(asId('haldane'), 'Corin', 'Haldane', 'men', 1, asId('tarrablane')),
      card(asId('coldbrook'), 'Emrys', 'Coldbrook', 'men', 17, asId('haldane')),
      card(asId('trevennor'), 'Jago', 'Trevennor', 'men', 19, asId('coldbrook')),
      card(asId('tarrablane'), 'Una', 'Tarrablane', 'women', 24, asId('trevennor')),
    ],
    scoreVersion: 0,
    dayVersion: 1,
    ...changes,
  }
}

export const GROSS: Readonly<Record<(typeof FOUR)[number], readonly number[]>> = {
  haldane: [4, 5, 4, 5, 4, 5, 4, 3, 4, 4, 5, 3, 4, 5, 5, 3, 5, 5],
  coldbrook: [5, 6, 3, 6, 5, 6, 4, 4, 6, 5, 5, 4, 6, 6, 4, 3, 5, 7],
  trevennor: [5, 5, 4, 5, 5, 7, 5, 3, 5, 5, 5, 3, 6, 6, 6, 4, 4, 6],
  tarrablane: [5, 6, 5, 7, 4, 7, 5, 5, 6, 6, 5, 4, 7, 6, 5, 4, 6, 6],
}

/** Points of each card at these handicaps, out and in: worked by hand. */
export const POINTS: Readonly<Record<(typeof FOUR)[number], number>> = {
  haldane: 32,
  coldbrook: 35,
  trevennor: 38,
  tarrablane: 34,
}
