// Promise: every match on a board opens, of players and of sides, on the terms of its competition, and what opens ends on
// the figures of the board. Days made up by lot; the invented data are ours.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { matchSentence, resultNamed } from '@/lib/boards/match-sentences'
import { competitionMatchSheet, matchSheetOf } from '@/lib/boards/match-sheet'
import type { DayRecord } from '@/lib/facts/day-record'
import type { MatchResult } from '@/lib/rules/standings'
import { randomRecord } from './random-record'

const NOW = new Date('2031-06-14T15:00:00Z')

/** The matches of many days with their competition's number. */
function matchesOf(record: DayRecord) {
  return boardOf(record, NOW).competitions.flatMap((competition, at) =>
    competition.matches.map((match) => ({ number: at + 1, competition, match })),
  )
}

const days = Array.from({ length: 60 }, (_, seed) => randomRecord(seed))

describe('a match of the board', () => {
  it('opens with the figures of the board, whoever plays it', () => {
    const seen = { singles: 0, sides: 0, oneBall: 0, parts: 0 }
    for (const record of days)
      for (const { number, competition, match } of matchesOf(record)) {
        const sheet = competitionMatchSheet(record, { competition: number, match: match.id, hole: null })!
        expect(sheet.match).toEqual(match)
        expect(sheet.allowance).toBe(competition.allowance)
        expect(sheet.of).toMatchObject({ number, name: competition.name })
        const strokes = sheet.working.filter((step) => step.label.startsWith('Strokes for'))
        if (strokes.length > 0) expect(strokes.map((step) => Number(step.figure))).toEqual(Object.values(match.strokes))
        const balls = [sheet.a, sheet.b].flatMap((side) => side.partners ?? [side])
        expect(balls.map((ball) => ball.strokes)).toEqual(Object.values(match.strokes))
        if (match.parts) expect(sheet.outcome.length).toBeGreaterThanOrEqual(match.parts.length)
        expect(sheet.outcome.length).toBeGreaterThan(0)
        if (match.parts) seen.parts++
        if (sheet.a.partners) seen.sides++
        else if (sheet.a.short.includes(' and ')) seen.oneBall++
        else seen.singles++
      }
    // The lot has dealt each kind: the promise was tried on all of them.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0)
  })

  it('opens each of its holes, and no hole that is not there', () => {
    for (const record of days.slice(0, 20))
      for (const { number, match } of matchesOf(record).slice(0, 2)) {
        const { holes } = match
        for (const { hole, up } of [holes[0]!, holes.at(-1)!]) {
          const sheet = competitionMatchSheet(record, { competition: number, match: match.id, hole })!
          const state = sheet.opened!.steps.find((step) => step.label === `Match after hole ${hole}`)
          expect(state === undefined).toBe(up === null)
        }
        expect(competitionMatchSheet(record, { competition: number, match: match.id, hole: 19 })).toBeNull()
        expect(competitionMatchSheet(record, { competition: number, match: 'nobody', hole: null })).toBeNull()
      }
  })

  it('keeps to the published terms where two cards are put together after the event', () => {
    const record = days.find((one) => one.cards.length > 3)!
    const [a, b] = record.cards.map((card) => card.entryId)
    const sheet = matchSheetOf(record, [a!], [b!], 1)!
    expect(sheet.of).toBeNull()
    expect(sheet.opened!.hole).toBe(1)
    expect(sheet.working.at(-1)!.label).toMatch(/^Strokes for/)
    expect(matchSheetOf(record, [a!], [a!])).toBeNull()
  })
})

describe('the sentence of a match', () => {
  const both = { a: 'Ashgill', b: 'Verrow' }
  const match = (result: string, finished: boolean, winner: string | null = null) =>
    ({ result, finished, winner, a: 'a', b: 'b' }) as MatchResult

  it.each<[string, boolean, string | null, string]>([
    ['3&2', true, 'b', 'Verrow beat Ashgill 3&2.'],
    ['halved', true, null, 'Ashgill and Verrow halved the match.'],
    ['walkover', true, 'a', 'Ashgill beat Verrow by walkover.'],
    ['no result', true, null, 'The match of Ashgill and Verrow counts for neither.'],
    ['A 2 up after 11', false, null, 'Ashgill is 2 up after 11.'],
    ['level after 7', false, null, 'Ashgill and Verrow are level after 7.'],
    ['not started', false, null, 'Ashgill and Verrow have not started.'],
    ['B 1 up after 10, abandoned', true, 'b', 'Verrow was 1 up after 10 when the match was abandoned.'],
    ['level after 7, abandoned', true, null, 'Ashgill and Verrow were level after 7 when the match was abandoned.'],
    ['not started, abandoned', true, null, 'Ashgill and Verrow did not play.'],
  ])('%s', (result, finished, winner, sentence) => {
    expect(matchSentence(match(result, finished, winner), both)).toBe(sentence)
  })

  it('names a pair as two', () => {
    const pairs = { a: 'Ashgill and Verrow', b: 'Storrey and Haldane' }
    expect(matchSentence(match('A 1 up after 3', false), pairs)).toBe('Ashgill and Verrow are 1 up after 3.')
    expect(resultNamed(match('B 1 up after 3', false), pairs)).toBe('Storrey and Haldane 1 up after 3')
  })
})
