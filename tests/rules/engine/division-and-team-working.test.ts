// Which division somebody stands in and why, and how matches add up for a team: both end on the figures of the board.
// The figures are ours, from the four cards of Aldermoss Park; divisions and teams are common practice, no source.

import { describe, expect, it } from 'vitest'
import type { Competition, Day, Division } from '@/lib/rules/day'
import { teamTotal } from '@/lib/rules/matches/team-match'
import { scoreDay } from '@/lib/rules/score-day'
import { divisionWorkings } from '@/lib/rules/working/division-working'
import { teamWorking } from '@/lib/rules/working/team-working'
import { aldermoss } from './aldermoss'

const LOW_AND_HIGH: readonly Division[] = [
  { id: 'd1', name: 'Division 1', handicapTo: 16 },
  { id: 'd2', name: 'Division 2', handicapFrom: 17, handicapTo: 19 },
  { id: 'd3', name: 'Division 3', handicapFrom: 20 },
]

function waysIn(divisions: readonly Division[], more: Partial<Competition> = {}, day: Partial<Day> = {}) {
  const competition = { id: 'c', format: 'stableford', divisions, ...more }
  const whole = aldermoss({ competitions: [competition], ...day })
  return { result: scoreDay(whole)[0]!, ways: divisionWorkings(whole, competition) }
}

const said = (way: ReturnType<typeof waysIn>['ways'] extends ReadonlyMap<string, infer W> ? W : never) =>
  way.divisions.map(({ step }) => [step.label, step.figure, step.sentence])

describe('the working of a division', () => {
  it('holds the playing handicap of this competition against each boundary', () => {
    const { ways } = waysIn(LOW_AND_HIGH)
    const trevennor = ways.get('trevennor')!
    expect(trevennor.handicap).toMatchObject({
      figure: '19',
      label: 'Playing handicap',
      sentence: 'The playing handicap in this competition decides.',
    })
    expect(said(trevennor)).toEqual([
      ['Division 1', 'not in', '19 is more than 16.'],
      ['Division 2', 'in', '19 is from 17 to 19.'],
      ['Division 3', 'not in', '19 is less than 20.'],
    ])
    // At half the allowance the same player plays off 10, and stands elsewhere.
    expect(said(waysIn(LOW_AND_HIGH, { allowance: 50 }).ways.get('trevennor')!)[0]).toEqual([
      'Division 1',
      'in',
      '10 is 16 or less.',
    ])
  })

  it('adds the handicaps of a side up', () => {
    const sides = [{ id: 's', players: ['haldane', 'coldbrook'] }]
    const { ways } = waysIn(LOW_AND_HIGH, { format: 'four-ball-stableford', allowance: 100 }, { sides })
    expect(ways.get('s')!.handicap).toMatchObject({ figure: '19', sum: '1 + 18' })
  })

  it('says whose gender, guest or group keeps an entrant out', () => {
    const players = aldermoss({}).players.map((one) => ({
      ...one,
      guest: one.id === 'coldbrook',
      groups: one.id === 'haldane' ? ['seniors'] : [],
    }))
    const divisions: readonly Division[] = [
      { id: 'w', name: 'Women', gender: 'women' },
      { id: 'g', name: 'Guests', guests: 'only' },
      { id: 'm', name: 'Members', guests: 'none' },
      { id: 's', name: 'Seniors', group: 'seniors' },
      { id: 'e', name: 'Everybody' },
    ]
    const { ways } = waysIn(divisions, {}, { players })
    expect(ways.get('tarrablane')!.handicap).toBeNull()
    expect(said(ways.get('tarrablane')!)).toEqual([
      ['Women', 'in', 'Plays from the women’s tees.'],
      ['Guests', 'not in', 'It is for guests, and tarrablane is a member.'],
      ['Members', 'in', 'No guest.'],
      ['Seniors', 'not in', 'It is for those marked “seniors”, and tarrablane is not.'],
      ['Everybody', 'in', 'Everybody is in it.'],
    ])
    expect(said(ways.get('coldbrook')!).slice(0, 3)).toEqual([
      ['Women', 'not in', 'It is for the women’s tees, and coldbrook plays from others.'],
      ['Guests', 'in', 'A guest.'],
      ['Members', 'not in', 'It is for members, and coldbrook is a guest.'],
    ])
    expect(said(ways.get('haldane')!)[3]).toEqual(['Seniors', 'in', 'Marked “seniors”.'])
  })

  it('says of everybody what the standings say', () => {
    const { result, ways } = waysIn([...LOW_AND_HIGH, { id: 'w', name: 'Women', gender: 'women', handicapTo: 40 }])
    for (const { id, standings } of result.divisions!)
      expect(
        [...ways].filter(([, way]) => way.divisions.find((one) => one.id === id)!.isIn).map(([who]) => who),
      ).toEqual(expect.arrayContaining(standings.map((one) => one.entrant)))
    const places = [...ways.values()].flatMap((way) => way.divisions.filter((one) => one.isIn)).length
    expect(places).toBe(result.divisions!.reduce((sum, one) => sum + one.standings.length, 0))
  })

  it('is empty where there is none', () => {
    expect(divisionWorkings(aldermoss({}), { id: 'main', format: 'stableford' }).size).toBe(0)
  })
})

describe('the working of a team', () => {
  const players = ['a', 'b', 'c', 'd'].map((id) => ({ id, name: id.toUpperCase(), indexTenths: 0, tee: 'yellow-men' }))
  const FOURS = new Array<number>(18).fill(4)
  const teams = [
    { id: 'x', name: 'Gorse', players: ['a', 'c'] },
    { id: 'y', name: 'Heather', players: ['b', 'd'] },
  ]
  const competitions: Competition[] = [
    {
      id: 'first',
      format: 'match',
      matches: [
        { id: '1', a: 'a', b: 'b' },
        { id: '2', a: 'c', b: 'd' },
        // Two of one team: it counts for neither.
        { id: '3', a: 'a', b: 'c' },
      ],
    },
    {
      id: 'second',
      format: 'match',
      matches: [
        { id: '4', a: 'b', b: 'c' },
        { id: '5', a: 'd', b: 'a' },
      ],
    },
  ]
  const day = aldermoss({
    players,
    teams,
    competitions,
    closed: false,
    cards: [
      { player: 'a', scores: FOURS },
      { player: 'b', scores: FOURS },
      { player: 'c', scores: FOURS.map((four, at) => (at < 3 ? 3 : four)) },
      { player: 'd', scores: FOURS.slice(0, 10) },
    ],
  })
  const results = scoreDay(day)
  const sessions = results.map((one) => ({ name: one.competition, matches: one.matches! }))

  it('adds one and a half point match by match, over the sessions', () => {
    const steps = teamWorking(day, 'x', sessions)
    expect(steps.map(({ figure, label, sum, sentence }) => [figure, label, sum, sentence])).toEqual([
      ['½', 'first, match 1: a against b', '0 + ½', 'Halved: half a point.'],
      ['½', 'first, match 2: c against d', undefined, 'Not finished: no point yet.'],
      ['1½', 'second, match 1: c against b', '½ + 1', 'Won, 3&2: one point.'],
      ['1½', 'second, match 2: a against d', undefined, 'Not finished: no point yet.'],
      ['1½', 'Total', '1 × 1 + 1 × ½', 'One won, one halved, none lost; two still to come.'],
    ])
    expect(teamWorking(day, 'nobody', sessions)).toEqual([])
  })

  it('ends on the points of the board', () => {
    for (const line of teamTotal(results, day))
      expect(teamWorking(day, line.team, sessions).at(-1)!.figure).toBe(line.points)
    for (const [at, result] of results.entries())
      for (const line of result.teams!)
        expect(teamWorking(day, line.team, [{ ...sessions[at]!, name: null }]).at(-1)!.figure).toBe(line.points)
  })
})
