import { describe, expect, it } from 'vitest'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
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
    ['competitions.0.format', 'crazy-golf', 'competitions[0].format: There is no format “crazy-golf”.'],
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
