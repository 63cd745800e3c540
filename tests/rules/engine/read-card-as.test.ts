// Any card under any format: the reading of a card is what a competition of that format would have said.

import { describe, expect, it } from 'vitest'
import { FORMATS, formatOf } from '@/lib/rules/formats/catalogue'
import { matchBetween } from '@/lib/rules/matches/match'
import { readableAs, readCardAs } from '@/lib/rules/readings/read-card-as'
import { scoreDay } from '@/lib/rules/score-day'
import { randomDay } from '../reference/random-day'
import { aldermoss } from './aldermoss'

describe('a card read as another format', () => {
  it('says what the competition would have said, with its place in the field', () => {
    const day = aldermoss({ competitions: [] })
    for (const { id } of readableAs(1)) {
      const asked = scoreDay({ ...day, competitions: [{ id: 'reading', format: id }] })[0]!
      for (const standing of asked.standings) {
        expect(readCardAs(day, standing.players, id)?.standing).toEqual(standing)
      }
    }
  })

  it('shows the handicap and the total, and every hole', () => {
    const reading = readCardAs(aldermoss({ competitions: [] }), ['trevennor'], 'medal')!
    expect(reading.steps.map(({ label }) => label)).toEqual([
      'Handicap figure',
      'Course handicap',
      'Playing handicap',
      'Out',
      'In',
      'Total',
    ])
    expect(reading.steps.at(-1)!.figure).toBe(String(reading.standing.score))
    expect(reading.holeWorking(7)?.hole).toBe(7)
    expect(reading.holeWorking(19)).toBeNull()
  })

  it('puts any two cards together as a pair', () => {
    const day = aldermoss({ competitions: [], sides: [] })
    const reading = readCardAs(day, ['trevennor', 'haldane'], 'four-ball-stableford')!
    const asked = scoreDay({
      ...day,
      sides: [{ id: 's', players: ['trevennor', 'haldane'] }],
      competitions: [{ id: 'c', format: 'four-ball-stableford' }],
    })[0]!.standings[0]!
    expect(reading.standing.score).toBe(asked.score)
    expect(reading.standing.holes.map(({ value }) => value)).toEqual(asked.holes.map(({ value }) => value))
  })

  it('answers null for a match, a game of shares, a wrong number and a stranger', () => {
    const day = aldermoss({})
    expect(readCardAs(day, ['haldane'], 'match')).toBeNull()
    expect(readCardAs(day, ['haldane'], 'skins')).toBeNull()
    expect(readCardAs(day, ['haldane'], 'four-ball-medal')).toBeNull()
    expect(readCardAs(day, ['nobody'], 'medal')).toBeNull()
    expect(readCardAs(day, ['haldane'], 'no such format')).toBeNull()
  })

  it('has an answer for every format that fits, on days nobody would plan', () => {
    for (let seed = 1; seed <= 8; seed += 1) {
      const day = randomDay(seed, { competitions: [], sideSize: 4, shortSides: true, everything: true })
      for (const { id, side } of FORMATS.filter(({ isMatch, value }) => !isMatch && value.kind !== 'shared')) {
        const players = day.players.slice(0, side.to).map((one) => one.id)
        expect(readCardAs(day, players, id)?.standing.players).toEqual(players)
      }
    }
  })
})

describe('any four cards as a match', () => {
  it('is the four-ball of two sides made of the same players', () => {
    const day = aldermoss({})
    const fourBall = formatOf('four-ball-match')!
    const apart = matchBetween(day, ['haldane', 'trevennor'], ['coldbrook', 'tarrablane'], fourBall)!
    const sides = [
      { id: 'x', players: ['haldane', 'trevennor'] },
      { id: 'y', players: ['coldbrook', 'tarrablane'] },
    ]
    const matches = [{ id: 'm', a: 'x', b: 'y' }]
    const asked = scoreDay({ ...day, sides, competitions: [{ id: 'c', format: 'four-ball-match', matches }] })[0]!
    expect(apart.holes).toEqual(asked.matches![0]!.holes)
    expect(apart.strokes).toEqual(asked.matches![0]!.strokes)
    expect(apart.result).toBe(asked.matches![0]!.result)
  })
})
