import { describe, expect, it } from 'vitest'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import { keysTwice } from '@/lib/facts/json-keys'
import { PUBLISHED_COUNTBACK as formCountback } from '@/lib/facts/terms'
import type { Day } from '@/lib/rules/day'
import { PUBLISHED_COUNTBACK } from '@/lib/rules/ties/published-countback'
import { DAY, dayFile, spoilt } from './day-file-example'

function faultsOf(json: unknown): string[] {
  const parsed = parseDayFile(json)
  return parsed.ok ? [] : parsed.faults.map(({ place, sentence }) => `${place}: ${sentence}`)
}

describe('a day file', () => {
  it('comes back as it was written', () => {
    const parsed = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(DAY))))
    expect(parsed).toEqual({ ok: true, value: DAY })
  })

  it.each([
    [18.4, 184],
    ['18.4', 184],
    ['+2.1', -21],
    [-2.1, -21],
    [0, 0],
    ['+0.4', -4],
    [54, 540],
  ])('reads the index %s as %i tenths', (written, tenths) => {
    const parsed = parseDayFile(spoilt('players.0.handicapIndex', written))
    expect(parsed.ok && parsed.value.players[0]!.indexTenths).toBe(tenths)
  })

  it('takes the edition in force on the date when none is named', () => {
    const file = { ...dayFile(), date: '2024-03-31' }
    Reflect.deleteProperty(file, 'edition')
    const parsed = parseDayFile(file)
    expect(parsed.ok && parsed.value.edition).toBe('2020-gbi')
    const world = parseDayFile({ ...file, region: 'world' })
    expect(world.ok && world.value.edition).toBe('2024')
  })

  it('fills a short card up with holes not played, and takes a day without cards', () => {
    expect(parseDayFile(spoilt('cards.0.scores', [5, 6, 3, 'x', null])).ok).toBe(true)
    expect(parseDayFile(spoilt('cards', undefined)).ok).toBe(true)
  })

  it.each<[string, unknown, string]>([
    ['dayFile', 2, 'dayFile: This is not a day file of version 1'],
    ['players.3.handicapIndex', 'twelve', 'players[3].handicapIndex: Write a handicap index'],
    ['players.3.handicapIndex', 18.44, 'players[3].handicapIndex: Write a handicap index'],
    ['players.3.handicapIndex', 54.1, 'players[3].handicapIndex: Write a handicap index'],
    ['players.3.handicapIndex', undefined, 'players[3].handicapIndex: This is missing.'],
    ['players.1.hat', 'flat', 'players[1].hat: This key is not known here'],
    ['weather', 'fine', 'weather: This key is not known here'],
    ['players.0.tee', 'blue', 'players[0].tee: There is no tee “blue”'],
    ['players.1.id', 'haldane', 'players[1].id: There is already a player “haldane”.'],
    ['date', '2026-02-30', 'date: There is no such day in the calendar.'],
    [
      'course.tees.0.holes.3.strokeIndex',
      5,
      'course.tees[0].holes[3].strokeIndex: Stroke index 5 is already on hole 1',
    ],
    ['course.tees.0.holes.3.hole', 7, 'course.tees[0].holes[3].hole: Holes are written in order: this is hole 4.'],
    ['course.tees.0.slopeRating', 200, 'course.tees[0].slopeRating: A slope rating is a whole number'],
    ['course.tees.0.courseRating', 35.3, 'course.tees[0].courseRating: That is no course rating for 18 holes'],
    ['cards.0.scores.2', 0, 'cards[0].scores[2]: A score is a whole number'],
    ['cards.0.scores.2', 4.5, 'cards[0].scores[2]: A score is a whole number'],
    ['cards.1.player', 'haldane', 'cards[1].player: There is already a card of “haldane”.'],
    ['cards.1.player', 'nobody', 'cards[1].player: There is no player or side “nobody”.'],
    ['cards.0.scores', new Array(19).fill(4), 'cards[0].scores: A card has at most 18 scores.'],
    ['sides.1.players.0', 'haldane', 'sides[1].players[0]: “haldane” is already in side “s1” of competition “pairs”.'],
    ['sides.0.players.1', 'haldane', 'sides[0].players[1]: “haldane” is in this side already.'],
    ['sides.0.id', 'haldane', 'sides[0].id: “haldane” is a player’s id'],
    ['competitions.0.format', 'crazy-golf', 'competitions[0].format: There is no format “crazy-golf”'],
    ['competitions.1.id', 'main', 'competitions[1].id: There is already a competition “main”.'],
    ['competitions.0.allowance', 151, 'competitions[0].allowance: An allowance is a whole percentage'],
    ['competitions.0.allowance', 'all', 'competitions[0].allowance: An allowance is a whole percentage'],
    ['competitions.0.allowance', [60, 40], 'competitions[0].allowance: Stableford takes one percentage'],
    ['competitions.2.matches', undefined, 'competitions[2].matches: A match competition names its matches'],
    ['competitions.2.matches.0.b', 'haldane', 'competitions[2].matches[0].b: Nobody can play a match'],
    ['competitions.2.matches.0.a', 's1', 'competitions[2].matches[0].a: There is no player “s1”.'],
  ])('refuses %s = %j and names the place', (path, value, line) => {
    const lines = faultsOf(spoilt(path, value))
    expect(lines.length).toBeGreaterThan(0)
    expect(
      lines.find((one) => one.startsWith(line)),
      lines.join('\n'),
    ).toBeDefined()
  })

  it.each([[null], [7], ['day'], [[]], [true]])('refuses %j as a whole', (json) => {
    expect(faultsOf(json).every((line) => line.startsWith('day file: '))).toBe(true)
    expect(faultsOf(json).length).toBe(1)
  })
})

describe('a day file with the rarer terms', () => {
  const full: Day = {
    ...DAY,
    players: DAY.players.map((one) => ({ ...one, groups: ['seniors'], playingHandicap: { main: 12 } })),
    sides: [
      { id: 's1', players: ['haldane', 'coldbrook'], ballLostOn: 4 },
      { id: 's2', players: ['trevennor', 'tarrablane'] },
    ],
    cards: [
      ...DAY.cards.map((card) => ({ ...card, penaltyStrokes: { 7: 2 }, startHole: 8 })),
      { player: 's1', scores: [4, 4], round: 2, tee: 'red-women', drives: ['haldane', null] },
    ],
    teams: [
      { id: 'x', name: 'Gorse', players: ['haldane'] },
      { id: 'y', name: 'Heather', players: ['trevennor'] },
    ],
    competitions: [
      {
        id: 'main',
        format: 'Ours',
        custom: {
          side: { from: 2, to: 2 },
          ball: 'own',
          strokes: { kind: 'each-player', off: 'own' },
          value: { kind: 'points', table: { best: -4, points: [6, 5, 4, 3, 2, 1, 0], beyond: 1, noScore: 0 } },
          count: { kind: 'best', take: [2, 1] },
        },
        rounds: [1],
        missing: { kind: 'ghost', overPar: 1, courseHandicap: 20 },
        handicapLimit: { men: 24 },
        divisions: [{ id: 'low', name: 'Low', handicapTo: 30 }],
      },
      {
        id: 'ko',
        format: 'match',
        rounds: [1],
        matches: [
          {
            id: 'm',
            a: 'haldane',
            b: 'trevennor',
            concededHoles: [{ hole: 3, to: 'b' }],
            extraHoles: [{ a: 4, b: 'x' }],
          },
        ],
      },
    ],
  }

  it('comes back as it was written', () => {
    expect(parseDayFile(JSON.parse(JSON.stringify(writeDayFile(full))))).toEqual({ ok: true, value: full })
  })

  it.each<[string, unknown, string]>([
    ['competitions.0.format.count', { kind: 'best', take: [1, 1, 1] }, 'competitions[0].format.count: No more than 2'],
    ['competitions.0.format.ball', 'one', 'competitions[0].format.strokes: One ball has one handicap'],
    ['competitions.0.format.hat', 1, 'competitions[0].format.hat: This key is not known here'],
    ['competitions.0.rounds', undefined, 'competitions[0].rounds: There are cards of several rounds'],
    [
      'competitions.1.missing',
      { kind: 'nothing' },
      'competitions[1].missing: Singles match is played by single players',
    ],
    ['competitions.1.matches.0.walkover', 'c', 'competitions[1].matches[0].walkover: Write "a" or "b".'],
    ['cards.4.round', 1, ''],
    ['cards.4.tee', 'blue', 'cards[4].tee: There is no tee “blue”'],
    ['teams.1.players.0', 'haldane', 'teams[1].players[0]: “haldane” is in a team already.'],
    ['players.0.playingHandicap.cup', 3, 'players[0].playingHandicap.cup: There is no competition “cup”.'],
    ['players.0.playingHandicap.main', 'low', 'players[0].playingHandicap.main: A playing handicap is a whole number'],
  ])('refuses %s = %j and names the place', (path, value, line) => {
    const lines = faultsOf(spoilt(path, value, full))
    if (line === '') expect(lines).toEqual([])
    else
      expect(
        lines.find((one) => one.startsWith(line)),
        lines.join('\n'),
      ).toBeDefined()
  })
})

describe('a day file that cannot be', () => {
  const ko = (match: object) => [{ id: 'm1', a: 'haldane', b: 'trevennor', ...match }]

  it.each<[string, unknown, string]>([
    [
      'sides.0.players',
      ['haldane', 'coldbrook', 'trevennor'],
      'sides[0].players: No competition here takes a side of 3',
    ],
    ['sides.0.ballLostOn', 19, 'sides[0].ballLostOn: A hole is a whole number'],
    [
      'cards',
      [{ player: 'haldane', scores: [4], round: 2 }],
      'competitions[0].rounds: There are only cards of round 2',
    ],
    [
      'competitions.2.matches',
      ko({ walkover: 'a', abandoned: true }),
      'competitions[2].matches[0]: A match ends by a walkover',
    ],
    [
      'competitions.2.matches',
      ko({
        concededHoles: [
          { hole: 3, to: 'a' },
          { hole: 3, to: 'b' },
        ],
      }),
      'competitions[2].matches[0].concededHoles[1].hole: Hole 3 is conceded already.',
    ],
    [
      'competitions.2.matches',
      [...ko({}), { id: 'm2', a: 'trevennor', b: 'haldane' }],
      'competitions[2].matches[1]: “trevennor” and “haldane” have a match here already.',
    ],
    [
      'competitions.0.format',
      'double-point-stableford',
      'competitions[0].namedHoles: Name the holes that count double.',
    ],
    ['competitions.0.countedHoles', [3, 3], 'competitions[0].countedHoles[1]: Hole 3 is named already.'],
    ['competitions.0.ranking', 'everybody', 'competitions[0].ranking: In Stableford nothing is shared inside a group.'],
    ['competitions.0.sideTee', 'red-women', 'competitions[0].sideTee: In Stableford every player has a card'],
    ['competitions.2.partPoints', 'whole', 'competitions[2].partPoints: In Singles match no match has parts.'],
    [
      'competitions.0.ties',
      { steps: [{ kind: 'last', holes: 30 }] },
      'competitions[0].ties.steps[0].holes: A round has 18 holes',
    ],
    [
      'competitions.0.ties',
      { steps: [{ kind: 'last', holes: 9 }, { kind: 'lower-handicap' }, { kind: 'last', holes: 9 }] },
      'competitions[0].ties.steps[2]: This step is tried already, as step 1.',
    ],
    ['date', '1800-06-13', 'date: That is no day of this century.'],
    ['date', '9999-06-13', 'date: That is no day of this century.'],
    ['players.0.name', '  ', 'players[0].name: A name cannot be empty.'],
    ['course.tees.0.name', '', 'course.tees[0].name: A name cannot be empty.'],
  ])('refuses %s = %j', (path, value, line) => {
    const lines = faultsOf(spoilt(path, value))
    expect(
      lines.find((one) => one.startsWith(line)),
      lines.join('\n'),
    ).toBeDefined()
  })

  it('asks for the edition of a day before the first', () => {
    const file = { ...dayFile(), date: '2015-06-13' }
    Reflect.deleteProperty(file, 'edition')
    expect(faultsOf(file)).toEqual([
      'date: No edition was in force before 2020-11-02: name in "edition" the one to count under.',
    ])
    expect(faultsOf({ ...file, edition: '2024' })).toEqual([])
  })

  it('names a round of which no card came, once the day is closed', () => {
    const file = {
      ...dayFile(),
      closed: true,
      competitions: [{ id: 'c', format: 'stableford', rounds: [1, 2] }],
      sides: [],
    }
    expect(faultsOf(file)).toEqual(['competitions[0].rounds[1]: There is no card of round 2.'])
    expect(faultsOf({ ...file, closed: false })).toEqual([])
  })

  it('names a key that stands twice in one object, and no other', () => {
    const text = '{"a": {"x": 1, "y": [{"x": "x"}, {"z": ":,{", "z": 2}]}, "b": [1, 2], "a": 3}'
    expect(keysTwice(text).map(({ place }) => place)).toEqual(['a.y[1].z', 'a'])
    expect(keysTwice(JSON.stringify(dayFile()))).toEqual([])
  })
})

describe('the published countback', () => {
  it('is the same for the form and for the engine', () => {
    expect(formCountback).toEqual(PUBLISHED_COUNTBACK)
  })
})
