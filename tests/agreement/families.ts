// Every family of formats, as days are called: which competitions share a day, and what its groups have to be.

import type { CompetitionInput } from '@/lib/facts/commands'
import { lotFrom } from '@/lib/rules/draw/lot'
import { proposeCompetition } from '@/lib/society/call-day'
import { DAY } from '../society/setup/world'

export interface Family {
  readonly name: string
  /** One of these lists is chosen by lot. */
  readonly formats: readonly (readonly string[])[]
  /** Players in a group of the draw; four unless the game wants another number. */
  readonly groupSize?: 2 | 3 | 4
  readonly teams?: true
  readonly rounds?: 2
}

export const FAMILIES: readonly Family[] = [
  {
    name: 'singles',
    formats: [
      ['medal', 'gross', 'stableford'],
      ['par', 'maximum-score', 'modified-points'],
      ['stableford', 'double-point-stableford'],
    ],
  },
  {
    name: 'pairs',
    formats: [
      ['four-ball-stableford', 'stableford'],
      ['four-ball-medal'],
      ['pairs-aggregate-stableford'],
      ['four-ball-par', 'medal'],
    ],
  },
  { name: 'foursomes and greensomes', formats: [['foursomes-medal'], ['greensomes-stableford'], ['pinehurst-medal']] },
  { name: 'scrambles', formats: [['scramble-2'], ['scramble-3'], ['scramble-4'], ['scramble-4-stableford']] },
  {
    name: 'teams',
    formats: [['best-2-of-4-stableford'], ['waltz', 'medal'], ['one-two-three-four'], ['best-3-of-4-medal'], ['own']],
  },
  { name: 'yellow ball', formats: [['yellow-ball'], ['yellow-ball', 'stableford'], ['yellow-ball-doubled']] },
  { name: 'skins', formats: [['skins'], ['skins-not-carried', 'medal'], ['medal', 'skins']] },
  { name: 'split sixes', formats: [['split-sixes'], ['split-sixes-clear-win', 'stableford']], groupSize: 3 },
  { name: 'matches', formats: [['match'], ['four-ball-match'], ['match', 'stableford'], ['foursomes-match']] },
  { name: 'three-part and total matches', formats: [['three-part-match'], ['total-of-two-match']] },
  { name: 'team matches', formats: [['match'], ['four-ball-match', 'match']], teams: true },
  { name: 'two rounds', formats: [['stableford'], ['medal', 'four-ball-stableford']], rounds: 2 },
]

/** Two scores of the team count on the first nine, three on the second; on the tee of a short team the best counts again. */
const OWN = {
  side: { from: 2, to: 4 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'strokes' },
  count: {
    kind: 'by-stretch',
    stretches: [
      { to: 9, take: [1, 1] },
      { to: 18, take: [1, 1, 1] },
    ],
  },
} as const

const isTeam = (format: string) =>
  /^(best|waltz|one-two|yellow|own|four-ball|pairs)/.test(format) && !format.includes('match')

export function competitionOf(format: string, players: number, holes: 9 | 18, seed: number): CompetitionInput {
  const lot = lotFrom(seed)
  const proposed = proposeCompetition(format === 'own' ? 'best-2-of-4-medal' : format, DAY, players, holes)
  const short =
    lot(2) === 0 ? { kind: 'lowest-again' as const } : { kind: 'ghost' as const, overPar: 1, courseHandicap: 20 }
  return {
    ...proposed,
    ...(format === 'own' ? { name: 'Our own game', format: 'Our own game' } : {}),
    terms: {
      ...proposed.terms,
      ...(format === 'own' ? { custom: structuredClone(OWN) as unknown as CompetitionInput['terms']['custom'] } : {}),
      ...(isTeam(format) && lot(3) > 0 ? { missing: short } : {}),
      ...(format.startsWith('scramble') && lot(2) === 0 ? { minimumDrives: 2 } : {}),
      ...(format === 'double-point-stableford' ? { namedHoles: [2, 5] } : {}),
      ...(lot(4) === 0 && !format.includes('match') ? { handicapLimit: { men: 18, women: 24 } } : {}),
    },
  }
}
