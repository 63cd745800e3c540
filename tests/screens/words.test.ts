import { describe, expect, it } from 'vitest'
import { stateAfter } from '@/app/(board)/_board/match-page'
import {
  coursePlayed,
  halves,
  howItCame,
  money,
  playedAs,
  termsOf,
  tiesTold,
  withoutPlace,
} from '@/app/(board)/_board/result-words'
import { handicapFigure, lastHole, placeFigure, scoreFigure, scoreWords, unitHeading } from '@/app/(board)/_board/words'
import { pictureOf } from '@/app/member/_member/history'
import type { ResultSheet } from '@/lib/boards/views'
import { inWords as allowanceInWords } from '@/lib/rules/formats/catalogue'
import { boardAt } from './day-of-four'

describe('figures and words', () => {
  it('shows a plus handicap with its plus and a tie with its sign', () => {
    expect(handicapFigure(-2)).toBe('+2')
    expect(handicapFigure(19)).toBe('19')
    expect(placeFigure({ place: 11, tied: true })).toBe('11=')
    expect(placeFigure({ place: null, tied: false })).toBe('')
  })

  it('tells points, strokes and holes apart', () => {
    expect(scoreFigure(3, 'holes')).toBe('+3')
    expect(scoreFigure(-2, 'holes')).toBe('−2')
    expect(scoreFigure(38, 'points')).toBe('38')
    expect(scoreFigure(null, 'points')).toBe('–')
    expect(scoreWords(1, 'points')).toBe('1 point')
    expect(scoreWords(-2, 'holes')).toBe('2 down')
    expect(unitHeading({ unit: 'holes', format: 'par' })).toBe('Against par')
  })

  it('writes every figure below nothing with one and the same minus', () => {
    const last = lastHole({ hole: 18, gross: 7, value: -1 } as Parameters<typeof lastHole>[0], 'points')
    expect([last.value, scoreFigure(-3, 'points'), scoreWords(-3, 'points'), scoreWords(-2, 'strokes')]).toEqual([
      '−1',
      '−3',
      '−3 points',
      'net −2',
    ])
  })

  it('says equal shares of partners plainly', () => {
    expect(allowanceInWords([50, 50])).toBe('50 % of each')
    expect(allowanceInWords([25, 20, 15, 10])).toBe('25/20/15/10 % from the lowest handicap up')
    expect(allowanceInWords(95)).toBe('95 %')
  })

  it('writes money without idle pence', () => {
    expect([money(4500), money(1250), money(5), money(null)]).toEqual(['£45', '£12.50', '£0.05', ''])
  })

  it('says who was up after a hole', () => {
    expect(stateAfter(2, 'Trevennor', 'Coldbrook')).toBe('Trevennor 2 up')
    expect(stateAfter(-1, 'Trevennor', 'Coldbrook')).toBe('Coldbrook 1 up')
    expect(stateAfter(0, 'A', 'B')).toBe('all square')
    expect(stateAfter(null, 'A', 'B')).toBe('')
  })
})

describe('the result sheet in words', () => {
  const board = boardAt({ status: 'closed' })
  const [main] = board.competitions
  const sheet: ResultSheet = {
    sheetVersion: 1,
    number: 1,
    reason: null,
    publishedAt: '2026-04-25T15:42:00Z',
    by: 'the secretary',
    board,
    ties: [],
    prizes: [],
    course: board.course.map(({ hole }) => ({ hole, average: hole === 12 ? 1.44 : hole === 1 ? 2.11 : 1.9 })),
    rulings: [],
    frozenAt: null,
    edition: '2024',
  }

  it('tells how the winner came to win', () => {
    expect(howItCame(main!.rows[0]!, main!)).toBe('First, playing handicap 19, 20 out and 18 in, gross 89.')
  })

  it('finds the easiest and the hardest hole and counts the field', () => {
    expect(coursePlayed(sheet)).toMatchObject({ easiest: { hole: 1 }, hardest: { hole: 12 } })
    expect(coursePlayed(sheet)!.sentence).toBe(
      'Easiest the 1st, hardest the 12th. The field made 139 points, 34.8 a card.',
    )
    expect(coursePlayed({ ...sheet, course: [] })).toBeNull()
    const match = { id: 'm', a: 'a', b: 'b', strokesA: 0, strokesB: 0, winner: null, result: 'halved', finished: true }
    const matches = [{ ...match, holes: [], strokes: {} }]
    const ofMatches = { ...sheet.board, competitions: [{ ...main!, unit: 'holes' as const, matches, rows: [] }] }
    const strokes = sheet.course.map(({ hole }) => ({ hole, average: hole === 12 ? 3.75 : hole === 1 ? 6.75 : 5 }))
    expect(coursePlayed({ ...sheet, board: ofMatches, course: strokes })).toMatchObject({
      easiest: { hole: 12 },
      hardest: { hole: 1 },
    })
  })

  it('names the formats and the field', () => {
    expect(playedAs(sheet)).toMatch(/Stableford; .*four-ball.*, 4 players\.$/i)
  })

  it('runs the terms together without doubled stops', () => {
    const said = termsOf({
      ...main!,
      tieRule: 'Last nine, last six; holes by their number.',
      allowanceFrom: 'House choice: wet.',
    })
    expect(said).toBe('Allowance 95 %. House choice: wet. Ties: last nine, last six; holes by their number. ')
  })

  it('tells the ties that took more than the last nine, and all among the first three', () => {
    const ties = [
      'Singles, 2nd: Holmgarth above Storrey, both 36: last nine 19 to 18.',
      'Singles, 4th: Haldane above Tarrablane, both 34: last nine 17 to 16.',
      'Singles, 12th: Hathersall above Garrowby, both 31: last nine 15 each, last six 9 to 8.',
    ]
    expect(tiesTold(ties)).toEqual({ told: [ties[0], ties[2]], others: 1 })
  })

  it('gathers who has no place', () => {
    const rows = main!.rows.map((row, at) => (at > 1 ? { ...row, place: null, noPlace: 'no-return' as const } : row))
    expect(withoutPlace(rows)).toEqual(['No return: Una Tarrablane, Corin Haldane.'])
    expect(withoutPlace(main!.rows)).toEqual([])
  })

  it('splits a list in two, the first half the longer', () => {
    expect(halves([1, 2, 3])).toEqual([[1, 2], [3]])
    expect(halves([])).toEqual([[], []])
  })
})

describe('the picture of a handicap', () => {
  const record = (from: string, indexTenths: number, reason: string) => ({
    from,
    indexTenths,
    figure: (indexTenths / 10).toFixed(1),
    change: null,
    source: 'society' as const,
    reason,
  })
  const records = [
    record('2026-04-25', 187, '1st with 38, Aldermoss Park'),
    record('2026-03-27', 207, '27 points, Withenbrook Heath'),
    record('2025-10-10', 204, '2nd with 35, Skerrowby Links'),
  ]

  it('goes from old to new and gives a word only to a large step', () => {
    const picture = pictureOf({ records, cards: [] })!
    expect(picture.points).toEqual([
      { from: '2025-10-10', tenths: 204 },
      { from: '2026-03-27', tenths: 207 },
      { from: '2026-04-25', tenths: 187, note: '1st with 38' },
    ])
    expect(picture.until).toBe('2026-04-25')
  })

  it('is not drawn for one figure', () => {
    expect(pictureOf({ records: records.slice(0, 1), cards: [] })).toBeNull()
  })
})
