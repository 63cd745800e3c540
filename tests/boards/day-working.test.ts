// Promise: the points of a team and the divisions open into steps that end on the figures of the board. Days made up by
// lot; the invented data are ours.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { cardWorkingOf } from '@/lib/boards/card-working'
import { dayWorkingOf } from '@/lib/boards/day-working'
import type { DayRecord } from '@/lib/facts/day-record'
import { randomRecord } from './random-record'

const NOW = new Date('2031-06-14T15:00:00Z')
const days = Array.from({ length: 24 }, (_, seed) => randomRecord(seed))

const DIVISIONS = [
  { id: 'low', name: 'Division 1', handicapTo: 14 },
  { id: 'high', name: 'Division 2', handicapFrom: 15 },
  { id: 'women', name: 'Women', gender: 'women' as const },
]

const inDivisions = (record: DayRecord): DayRecord => ({
  ...record,
  competitions: record.competitions.map((one) => ({ ...one, terms: { ...one.terms, divisions: DIVISIONS } })),
})

describe('the points of a team', () => {
  it('open into its matches, of one competition and of the whole day', () => {
    let tried = 0
    for (const record of days) {
      const board = boardOf(record, NOW)
      for (const line of board.teams ?? []) {
        const working = dayWorkingOf(record, { team: line.team, competition: null })
        if (board.competitions.every((one) => !one.teams)) continue
        expect(working).toMatchObject({ title: line.name, figure: line.points, of: 'All matches' })
        expect(working!.steps.at(-1)!.figure).toBe(line.points)
        tried++
      }
      for (const [at, competition] of board.competitions.entries())
        for (const line of competition.teams ?? []) {
          const working = dayWorkingOf(record, { team: line.team, competition: at + 1 })!
          expect(working).toMatchObject({ of: competition.name, figure: line.points })
          expect(working.steps.filter((step) => step.sentence.startsWith('Won')).length).toBe(line.won)
          expect(JSON.stringify(working.steps)).not.toContain(line.team)
        }
    }
    expect(tried).toBeGreaterThan(5)
  })

  it('are not there for a team or a competition that is not', () => {
    expect(dayWorkingOf(days[0]!, { team: 'nobody', competition: null })).toBeNull()
    expect(dayWorkingOf(days[0]!, { team: 'nobody', competition: 99 })).toBeNull()
  })
})

describe('a division', () => {
  it('says of each of its rows by which handicap and boundary it is there', () => {
    let tried = 0
    for (const record of days.map(inDivisions))
      for (const [at, competition] of boardOf(record, NOW).competitions.entries())
        for (const division of competition.divisions ?? []) {
          const working = dayWorkingOf(record, { division: division.id, competition: at + 1 })!
          expect(working).toMatchObject({ title: division.name, sentence: division.sentence, d: division.id })
          expect(working.figure).toBe(String(division.rows.length))
          const rows = working.steps.slice(0, -1)
          expect(rows).toHaveLength(division.rows.length)
          for (const step of rows) {
            if (division.id === 'low') expect(step.sentence).toBe(`${step.figure} is 14 or less.`)
            if (division.id === 'high') expect(step.sentence).toBe(`${step.figure} is 15 or more.`)
            tried++
          }
        }
    expect(tried).toBeGreaterThan(50)
    expect(dayWorkingOf(days[0]!, { division: 'low', competition: 1 })).toBeNull()
  })

  it('stands in the working of a total, in or not in', () => {
    let tried = 0
    for (const record of days.slice(0, 15).map(inDivisions))
      for (const [at, competition] of boardOf(record, NOW).competitions.entries())
        for (const row of competition.rows.slice(0, 2)) {
          const whole = cardWorkingOf(record, row.entryIds[0]!, { competition: at + 1, hole: null }, 'Europe/London')!
          const isIn = (id: string) => competition.divisions!.find((one) => one.id === id)!.rows
          for (const { id, name } of DIVISIONS)
            expect(whole.divisions!.find((step) => step.label === name)!.figure).toBe(
              isIn(id).some((one) => one.entrant === row.entrant) ? 'in' : 'not in',
            )
          tried++
        }
    expect(tried).toBeGreaterThan(10)
    const plain = days.find((one) => boardOf(one, NOW).competitions[0]?.rows.length)!
    const first = boardOf(plain, NOW).competitions[0]!.rows[0]!.entryIds[0]!
    expect(cardWorkingOf(plain, first, { competition: 1, hole: null }, 'Europe/London')!.divisions).toBeUndefined()
  })
})
