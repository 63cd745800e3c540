// A format nobody wrote down before is played at once: handed to the engine as data, or written in a day file.
import { describe, expect, test } from 'vitest'
import { parseDayFile } from '@/lib/facts/day-file'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { type FormatData, formatFrom } from '@/lib/rules/formats/format'
import { scoreDay } from '@/lib/rules/score-day'
import { fourCards } from './four-cards'

/** Pairs in which the worse score counts twice as much as the better: in no list. */
const WORSE_TWICE: FormatData = {
  id: 'worse-counts-twice',
  name: 'Worse counts twice',
  sentence: 'Pairs: the better points count once and the worse twice.',
  family: 'pairs',
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'each-player', off: 'own' },
  value: { kind: 'points', table: { best: -1, points: [3, 2, 1, 0], beyond: 0, noScore: 0 } },
  count: { kind: 'best', take: [1, 2] },
  allowance: { house: 100, why: 'Made for this test.' },
  clause: 'Society custom',
}

function dayWith(format: unknown) {
  const day = { ...fourCards(), closed: true, competitions: [{ id: 'new', format, allowance: 85 }] }
  const read = parseDayFile(JSON.parse(JSON.stringify(day)))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value
}

describe('a format of one’s own', () => {
  const { name, side, ball, strokes, value, count } = WORSE_TWICE
  const written = dayWith({ name, side, ball, strokes, value, count })

  test('is not in the catalogue, and needs nothing there', () => {
    expect(FORMATS.map((format) => format.id)).not.toContain(WORSE_TWICE.id)
  })

  test('added at run time gives the same result as written in the day file', () => {
    const known = dayWith('four-ball-stableford')
    const competitions = known.competitions.map((one) => ({ ...one, format: WORSE_TWICE.id }))
    const [added] = scoreDay({ ...known, competitions }, [...FORMATS, formatFrom(WORSE_TWICE)])
    const [fromFile] = scoreDay(written)
    expect(added!.standings).toHaveLength(2)
    expect(added!.standings.map(({ entrant, place, score }) => ({ entrant, place, score }))).toEqual(
      fromFile!.standings.map(({ entrant, place, score }) => ({ entrant, place, score })),
    )
  })

  test('counts as its choices say', () => {
    const [result] = scoreDay(written)
    const singles = scoreDay(dayWith('four-ball-stableford'))[0]!
    for (const { entrant, holes } of result!.standings) {
      const best = singles.standings.find((one) => one.entrant === entrant)!.holes
      // Nobody can have less than the better ball alone, capped at three points, nor more than three times that.
      holes.forEach((hole, at) => {
        const better = Math.min(best[at]!.value!, 3)
        expect(hole.value!).toBeGreaterThanOrEqual(better)
        expect(hole.value!).toBeLessThanOrEqual(3 * better)
      })
    }
  })

  test('a name that is in no list is refused in a day file, by name', () => {
    const read = parseDayFile({ ...fourCards(), competitions: [{ id: 'new', format: 'worse-counts-twice' }] })
    expect(read.ok ? [] : read.faults.map((fault) => fault.place)).toEqual(['competitions[0].format'])
  })
})
