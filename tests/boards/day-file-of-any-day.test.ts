// Promise: whatever a day of the book holds, the board and the score command say the same of its exported day file.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { scoreDay } from '@/lib/rules/score-day'
import type { MatchResult } from '@/lib/rules/standings'
import { randomRecord } from './random-record'

const NOW = new Date('2031-06-14T16:00:00Z')

function readBack(seed: number) {
  const record = randomRecord(seed)
  const read = parseDayFile(JSON.parse(JSON.stringify(writeDayFile(dayOfRecord(record)))))
  if (!read.ok) throw new Error(`seed ${seed}: ${JSON.stringify(read.faults)}`)
  return { record, board: boardOf(record, NOW), results: scoreDay(read.value) }
}

describe('a day of the book and its day file', () => {
  it('are counted alike, whatever is played', () => {
    const played = new Set<string>()
    const seen = { rounds: 0, endings: 0, teams: 0, drives: 0, lost: 0, shared: 0 }
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2_000_000_000 }), (seed) => {
        const { record, board, results } = readBack(seed)
        expect(board.competitions.map((one) => one.id)).toEqual(results.map((one) => one.competition))
        for (const [at, result] of results.entries()) {
          const shown = board.competitions[at]!
          played.add(shown.format)
          expect(shown.rows.map((row) => [row.entrant, row.place, row.tied, row.score, row.holesPlayed])).toEqual(
            result.standings.map((one) => [one.entrant, one.place, one.tied, one.score, one.holesPlayed]),
          )
          expect(shown.rows.map((row) => row.rounds?.map((one) => one.score))).toEqual(
            result.standings.map((one) => one.rounds?.map((round) => round.score)),
          )
          // The board puts names into the words of a result; everything else is the same.
          const told = ({ id, winner, finished, holes, parts }: MatchResult) => [
            id,
            winner,
            finished,
            holes,
            parts?.map((part) => [part.name, part.winner, part.finished]),
          ]
          expect(shown.matches.map(told)).toEqual((result.matches ?? []).map(told))
          if (shown.teams) expect(shown.teams).toEqual(result.teams)
          for (const row of shown.rows) {
            const counted = result.standings.find((one) => one.entrant === row.entrant)?.drives
            if (counted && row.entryIds.length > 1)
              expect(Object.fromEntries(row.drives!.counts.map((one) => [one.entryId, one.taken]))).toEqual(counted)
            if (row.drives) seen.drives++
            if (row.rounds) seen.rounds++
          }
          if (shown.shared?.length) seen.shared++
        }
        seen.endings += record.competitions
          .flatMap((one) => one.pairings)
          .filter((one) => Object.keys(one.ending).length).length
        if (board.teams) seen.teams++
        seen.lost += dayOfRecord(record).sides.filter((side) => side.ballLostOn !== undefined).length
      }),
      { numRuns: 900, seed: 20310614 },
    )
    // The lot has to have dealt every kind, or the promise would be empty.
    expect(FORMATS.map((one) => one.id).filter((id) => !played.has(id))).toEqual([])
    expect(Object.entries(seen).filter(([, times]) => times < 20)).toEqual([])
  }, 300_000)
})
