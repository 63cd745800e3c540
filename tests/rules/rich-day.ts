// One small day file with something of everything the format allows, for spoiling.
import { fourCards } from './four-cards'

const OWN_FORMAT = {
  name: 'Two counting',
  side: { from: 1, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: { best: -2, points: [4, 3, 2, 1, 0], beyond: 1, noScore: 0 } },
  count: {
    kind: 'by-stretch',
    stretches: [
      { to: 9, take: [1] },
      { to: 18, take: [1, 1] },
    ],
  },
}

export function richDay() {
  const day = fourCards()
  const [haldane, ...others] = day.cards
  return {
    ...day,
    edition: '2024',
    closed: true,
    players: day.players.map((player, at) => ({ ...player, guest: at === 3, groups: at < 2 ? ['seniors'] : [] })),
    sides: [
      ...day.sides,
      { id: 'all', players: ['haldane', 'coldbrook', 'trevennor'], competitions: ['ball'], ballLostOn: 12 },
    ],
    cards: [
      { ...haldane, penaltyStrokes: { 7: 2 }, startHole: 4, round: 1 },
      ...others.map((card) => ({ ...card, startHole: 4 })),
      {
        player: 'haldane',
        scores: [4, 5, null, 'x'],
        round: 2,
        tee: 'red-women',
        handicapIndex: '+0.4',
        playingHandicap: 4,
      },
    ],
    teams: [
      { id: 'home', name: 'Home', players: ['haldane', 'coldbrook'] },
      { id: 'away', name: 'Away', players: ['trevennor', 'tarrablane'] },
    ],
    competitions: [
      {
        id: 'cup',
        format: 'stableford',
        allowance: 95,
        rounds: [1, 2],
        handicapLimit: { men: 28, women: 36 },
        divisions: [{ id: 'low', name: 'Low', handicapFrom: 0, handicapTo: 12, guests: 'none', group: 'seniors' }],
        ties: {
          steps: [
            { kind: 'last', holes: 9 },
            { kind: 'lot', seed: 7 },
            { kind: 'play-off', order: ['haldane', 'coldbrook'] },
          ],
          holesCount: 'as-played',
          fractions: 'rounded',
        },
      },
      { id: 'ball', format: 'yellow-ball', ballLost: 'counts-once', missing: { kind: 'drawn', seed: 3 }, rounds: [1] },
      {
        id: 'own',
        format: OWN_FORMAT,
        allowance: 85,
        entrants: ['first', 'second'],
        countedHoles: [1, 2, 3, 18],
        rounds: [1],
      },
      {
        id: 'skins',
        format: 'skins',
        groups: [
          ['haldane', 'coldbrook'],
          ['trevennor', 'tarrablane'],
        ],
        rounds: [1],
      },
      {
        id: 'foursomes',
        format: 'greensomes-match',
        allowance: [60, 40],
        matchDifference: 'rounded',
        rounds: [1],
        matches: [
          { id: 'm1', a: 'first', b: 'second', concededHoles: [{ hole: 3, to: 'a' }], extraHoles: [{ a: 4, b: 'x' }] },
        ],
      },
      { id: 'scramble', format: 'scramble-2', dividedBy: 4, minimumDrives: 3, notPlayed: 'level', rounds: [1] },
    ],
  }
}
