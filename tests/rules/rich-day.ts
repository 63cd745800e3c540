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

const SCORED_BY = 'maximum sideTee handicapLimit dividedBy namedHoles missing ballLost'.split(' ')

/** The same terms once more, as those the first round was played under. */
function withRoundTerms<One extends { readonly rounds: readonly number[] }>(one: One) {
  const scored = Object.entries(one).filter(([key]) => SCORED_BY.includes(key))
  if (scored.length === 0 || !one.rounds.includes(1)) return one
  const others = 'roundTerms' in one && Array.isArray(one.roundTerms) ? one.roundTerms : []
  return { ...one, roundTerms: [...others, { round: 1, ...Object.fromEntries(scored) }] }
}

export function richDay() {
  const day = fourCards()
  const [haldane, ...others] = day.cards
  return {
    ...day,
    edition: '2024',
    region: 'gbi',
    closed: true,
    course: {
      ...day.course,
      tees: day.course.tees.map((tee) => ({ ...tee, holes: tee.holes.map((hole) => ({ ...hole, yards: 348 })) })),
    },
    players: day.players.map((player, at) => ({
      ...player,
      guest: at === 3,
      groups: at < 2 ? ['seniors'] : [],
      ...(at === 1 ? { playingHandicap: { cup: 17, '*': 18 } } : {}),
      ...(at === 2 ? { courseHandicap: 21, handicapIndexBefore: 19.8 } : {}),
    })),
    sides: [
      ...day.sides.map((side, at) => (at === 0 ? { ...side, name: 'First out' } : side)),
      { id: 'gone', players: ['tremayne'], competitions: ['foursomes'] },
      { id: 'all', players: ['haldane', 'coldbrook', 'trevennor'], competitions: ['ball'], ballLostOn: 12 },
    ],
    cards: [
      { ...haldane, penaltyStrokes: { 7: 2 }, penaltyPoints: 2, startHole: 4, round: 1 },
      ...others.map((card, at) => ({
        ...card,
        startHole: 4,
        ...(at === 0 ? {} : { outcome: at === 1 ? 'withdrawn' : 'no-return' }),
      })),
      // One ball for the side, and whose drive it was.
      { player: 'first', scores: [4, 4, 3, 5, 'x'], drives: ['haldane', null, 'coldbrook', 'haldane'] },
      { player: 'second', scores: [] },
      { player: 'coldbrook', scores: [], round: 2, missed: true },
      {
        player: 'haldane',
        scores: [4, 5, null, 'x'],
        round: 2,
        tee: 'red-women',
        handicapIndex: '+0.4',
        playingHandicap: 4,
        courseHandicap: 5,
      },
    ],
    absent: [
      { id: 'tremayne', name: 'Bryn Tremayne' },
      { id: 'nobody', name: 'A pair that withdrew' },
    ],
    teams: [
      { id: 'home', name: 'Home', players: ['haldane', 'coldbrook', 'tremayne'] },
      { id: 'away', name: 'Away', players: ['trevennor', 'tarrablane'] },
    ],
    competitions: [
      {
        id: 'cup',
        format: 'stableford',
        allowance: 95,
        rounds: [1, 2],
        roundTerms: [
          {
            round: 2,
            allowance: 100,
            handicapLimit: { men: 24 },
            countedHoles: [1, 2, 3],
            notPlayed: 'level',
          },
        ],
        handicapLimit: { men: 28, women: 36 },
        divisions: [
          { id: 'low', name: 'Low', handicapFrom: 0, handicapTo: 12, guests: 'none', group: 'seniors' },
          { id: 'women', name: 'Women', gender: 'women' },
        ],
        ties: {
          steps: [
            { kind: 'last', holes: 9 },
            { kind: 'holes', from: 4, to: 12 },
            { kind: 'first-nine-last', holes: 3 },
            { kind: 'lower-handicap' },
            { kind: 'higher-handicap' },
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
        ranking: 'everybody',
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
          { id: 'm2', a: 'second', b: 'gone', walkover: 'a' },
          { id: 'm3', a: 'nobody', b: 'first', concededBy: 'a' },
        ],
      },
      {
        id: 'singles',
        name: 'Three-part match',
        format: 'three-part-match',
        partPoints: 'whole',
        extraHoleStrokes: 'none',
        rounds: [1],
        matches: [
          { id: 's1', a: 'haldane', b: 'coldbrook', concededBy: 'b' },
          { id: 's2', a: 'trevennor', b: 'tarrablane', abandoned: true },
          { id: 's3', a: 'coldbrook', b: 'tremayne', walkover: 'a' },
          { id: 's4', a: 'haldane', b: 'tarrablane', result: { winner: 'a', up: 3, left: 2 } },
        ],
      },
      { id: 'capped', format: 'maximum-score', maximum: { kind: 'fixed', strokes: 8 }, rounds: [1, 2] },
      { id: 'double-par', format: 'maximum-score', maximum: { kind: 'double-par' }, rounds: [1] },
      { id: 'net-double', format: 'maximum-score', maximum: { kind: 'net-double-bogey' }, rounds: [1] },
      { id: 'doubled', format: 'double-point-stableford', namedHoles: [2, 17], rounds: [1] },
      {
        id: 'ghosts',
        format: 'four-ball-stableford',
        missing: { kind: 'ghost', overPar: 1, courseHandicap: 20 },
        rounds: [1],
      },
      { id: 'again', format: 'four-ball-par', missing: { kind: 'lowest-again' }, rounds: [1] },
      { id: 'short', format: 'four-ball-medal', missing: { kind: 'nothing' }, rounds: [1] },
      {
        id: 'scramble',
        format: 'scramble-2',
        dividedBy: 4,
        sideTee: 'red-women',
        minimumDrives: 3,
        notPlayed: 'level',
        rounds: [1],
      },
    ].map(withRoundTerms),
  }
}
