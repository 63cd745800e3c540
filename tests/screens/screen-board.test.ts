import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { barAge } from '@/app/(board)/_board/bar-age'
import { barPages, barTurns, ROWS_A_PAGE } from '@/app/(board)/_board/bar-pages'
import { groupsOut } from '@/app/(board)/_board/groups-out'
import { whoCounted } from '@/app/(board)/_board/holes-of-row'
import { mySentence } from '@/app/(board)/_board/my-words'
import { byGroup, rowOf, type ScreenBoard, screenBoard, viewOf } from '@/app/(board)/_board/screen-board'
import { ordinal } from '@/lib/boards/in-words'
import { boardAt, type Moment } from './day-of-four'

const shown = (moment: Moment = {}, c = 1) => screenBoard(boardAt(moment), c, 'Europe/London')!

describe('the board on the screen', () => {
  it('holds the four cards of the day as they were reckoned by hand', () => {
    expect(shown().rows.map((row) => [row.name, row.score])).toEqual([
      ['Jago Trevennor', 38],
      ['Emrys Coldbrook', 35],
      ['Una Tarrablane', 34],
      ['Corin Haldane', 32],
    ])
  })

  it('carries every hole: strokes, gross and points', () => {
    const trevennor = rowOf(shown(), 'trevennor')!
    expect(trevennor.holes[10]).toEqual([11, 1, 5, 2])
    expect(trevennor.holes[3]).toEqual([4, 2, 5, 3])
    expect(trevennor.holes.reduce((sum, hole) => sum + (hole[3] ?? 0), 0)).toBe(38)
  })

  it('weighs less than a third of the day board', () => {
    const whole = JSON.stringify(boardAt()).length
    expect(JSON.stringify(shown()).length).toBeLessThan(whole / 3)
  })

  it('says whose score counted for a side, every hole for somebody', () => {
    const pair = rowOf(shown({}, 2), 'haldane')!
    const said = whoCounted(pair)!
    expect(said).toMatch(/^Counted: Haldane on .*; Coldbrook on .*\.$/)
    const holes = new Set(said.match(/\d+/g)!.map(Number))
    expect(holes.size).toBe(18)
    expect(whoCounted(rowOf(shown(), 'haldane')!)).toBeNull()
  })

  it('takes the first competition for a number that is none, and null for a day without', () => {
    expect(shown({}, 9).competition.id).toBe('c1')
    expect(screenBoard({ ...boardAt(), competitions: [] }, 1, 'UTC')).toBeNull()
  })

  it('never lets a group code or link out', () => {
    const text = JSON.stringify([boardAt(), shown()])
    expect(text).not.toContain('secret-link')
    expect(text).not.toContain('fern 5604')
  })

  it('reads only the views it knows', () => {
    expect([viewOf('groups'), viewOf('mine'), viewOf('desk'), viewOf(undefined)]).toEqual([
      'groups',
      'mine',
      'leaders',
      'leaders',
    ])
  })
})

describe('group by group', () => {
  it('puts every row under one group, and loses nobody', () => {
    const { sheets, loose } = byGroup(shown())
    expect(sheets).toHaveLength(1)
    expect(sheets[0]!.rows).toHaveLength(4)
    expect(loose).toEqual([])
  })

  it('keeps whoever has no group', () => {
    const { loose } = byGroup({ ...shown(), groups: [] })
    expect(loose).toHaveLength(4)
  })
})

describe('one player', () => {
  it('is told place, figure and the gap', () => {
    const board = shown()
    expect(mySentence(board, rowOf(board, 'coldbrook')!)).toBe('2nd with 35 points, three points behind Trevennor.')
    expect(mySentence(board, rowOf(board, 'trevennor')!)).toBe('1st with 38 points.')
  })

  it('is told how many holes the figure stands on', () => {
    const board = shown({ holes: { tarrablane: 12 } })
    expect(mySentence(board, rowOf(board, 'tarrablane')!)).toMatch(/^\S+ with \d+ points after 12 holes/)
  })

  it('is found by entry in a side', () => {
    expect(rowOf(shown({}, 2), 'tarrablane')?.entrant).toBe('s2')
    expect(rowOf(shown(), 'nobody')).toBeNull()
    expect(rowOf(shown(), null)).toBeNull()
  })
})

describe('groups on the course', () => {
  it('are named with their holes while they are few', () => {
    const board = shown({ holes: { haldane: 9, coldbrook: 9, trevennor: 9, tarrablane: 9 } })
    expect(groupsOut(board)).toBe('Group 1 is on the 10th. No card is in yet.')
  })

  it('are counted when they are many', () => {
    const board = shown()
    const many = Array.from({ length: 9 }, (_, at) => ({ ...board.groups[0]!, number: at + 1, onHole: at + 1 }))
    expect(groupsOut({ ...board, groups: many, cards: 27, cardsIn: 16, cardsToSign: 0 })).toBe(
      'Nine groups are on the course. Sixteen of 27 cards are in.',
    )
  })

  it('are gone when every card is in', () => {
    expect(groupsOut({ ...shown({ status: 'closed' }), cards: 4, cardsIn: 4 })).toBe('Every card is in.')
  })
})

describe('the screen in the bar', () => {
  const withRows = (count: number): ScreenBoard => {
    const board = shown()
    const [row] = board.rows
    return { ...board, rows: Array.from({ length: count }, (_, at) => ({ ...row!, entrant: `e${at}` })) }
  }

  it('shows every row once, in order, at most six a page', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 150 }), (count) => {
        const board = withRows(count)
        const pages = barPages(board)
        expect(pages.length).toBe(Math.max(1, Math.ceil(count / ROWS_A_PAGE)))
        expect(pages.every(({ rows }) => rows.length <= ROWS_A_PAGE)).toBe(true)
        expect(pages.flatMap(({ rows }) => rows.map((row) => row.entrant))).toEqual(
          board.rows.map((row) => row.entrant),
        )
      }),
    )
  })

  it('leaves out who withdrew', () => {
    const board = shown()
    const rows = board.rows.map((row, at) => (at === 0 ? { ...row, noPlace: 'withdrawn' as const } : row))
    expect(barPages({ ...board, rows })[0]!.rows).toHaveLength(3)
  })

  it('says at the foot how many cards are in, in the words of the board', () => {
    const board = { ...withRows(20), cards: 20, cardsIn: 9, cardsToSign: 0 }
    expect(barPages(board)[1]!.foot).toBe('Nine of 20 cards are in.')
    expect(barPages({ ...board, cardsIn: 19, cardsToSign: 1 })[1]!.foot).toBe(
      'Nineteen of 20 cards are in, and one more is finished, not signed.',
    )
    expect(barPages({ ...board, cardsIn: 20 })[1]!.foot).toBe('Every card is in.')
  })

  it('gives each side of a match a line of its own, the winner first', () => {
    const board = shown()
    const match = { id: 'm', a: 'a', b: 'b', strokesA: 0, strokesB: 0, holes: [], strokes: {} }
    const linesOf = (winner: string | null, finished: boolean, result: string) => {
      const competition = { ...board.competition, names: { a: 'Oxenhay and Fairclose', b: 'Delahinch and Wetherlow' } }
      const [turn] = barTurns([{ ...board, competition, matches: [{ ...match, winner, finished, result }] }])
      return turn?.shown.kind === 'lines'
        ? turn.shown.lines.map(({ name, below, figure }) => [name, below, figure])
        : []
    }
    expect(linesOf('b', true, '2&1')).toEqual([['Delahinch and Wetherlow', 'beat Oxenhay and Fairclose', '2&1']])
    expect(linesOf('b', true, 'conceded')[0]).toContain('by concession')
    expect(linesOf(null, true, 'halved')).toEqual([
      ['Oxenhay and Fairclose', 'against Delahinch and Wetherlow', 'halved'],
    ])
  })

  it('goes through every competition and the groups, and says how old its figures are', () => {
    const [first, second] = [shown(), shown()]
    const pairs = { ...second, competition: { ...second.competition, id: 'other', name: 'Pairs' } }
    const titles = barTurns([first, pairs]).map(({ title }) => title)
    expect(new Set(titles)).toEqual(new Set([first.competition.name, 'Pairs', 'Where everybody is']))
    const where = barTurns([first]).at(-1)!
    expect(where.shown.kind === 'lines' && where.shown.lines.map(({ figure }) => figure)).toEqual(
      first.groups.map(({ onHole }) =>
        onHole === null ? expect.stringMatching(/^(finished|not started)$/) : `on the ${ordinal(onHole)}`,
      ),
    )
    const at = '2026-04-25T13:41:00.000Z'
    expect(barAge(at, new Date('2026-04-25T13:48:30Z'), 'Europe/London')).toBe('as of 2.41 pm, seven minutes ago')
    expect(barAge(at, new Date('2026-04-25T13:41:20Z'), 'Europe/London')).toBe('as of 2.41 pm')
    expect(barAge(at, new Date('2026-04-25T17:00:00Z'), 'Europe/London')).toBe('as of 2.41 pm, three hours ago')
  })
})
