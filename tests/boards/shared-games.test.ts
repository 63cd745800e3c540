// Promise: whoever has no part in a shared game because of the group is told, on the board and on the sheet; nobody is
// left out in silence. That split sixes take three is common practice, no source.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import { notShared } from '@/lib/boards/shared-games'
import { holes, smallRecord } from './small-record'

const NOW = new Date('2031-06-14T16:00:00Z')
const PEOPLE = ['Ashgill', 'Verrow', 'Coldbrook', 'Storrey', 'Tarrablane', 'Haldane', 'Rushgate', 'Holmgarth']
const GROUPS = [PEOPLE.slice(0, 3), PEOPLE.slice(3, 7)]

const record = (format: string, groups: readonly (readonly string[])[] = GROUPS, status?: 'closed') =>
  smallRecord({
    people: PEOPLE,
    groups,
    scores: Object.fromEntries(PEOPLE.map((one) => [one, holes(18, 4)])),
    competitions: [{ format }, { format: 'stableford' }],
    ...(status ? { status } : {}),
  })

describe('a shared game', () => {
  it('of split sixes tells a group of four and somebody in no group, and counts the three', () => {
    const board = boardOf(record('split-sixes'), NOW).competitions[0]!
    expect(board.rows.map((row) => row.entrant).sort()).toEqual(['d-Ashgill', 'd-Coldbrook', 'd-Verrow'])
    expect(board.notShared).toEqual([
      'Group 2 has four players: d-c0 is for groups of three, so nothing counts there.',
      'Holmgarth is in no group and has no part in d-c0.',
    ])
  })

  it('of skins tells somebody alone in a group, and lets two and four share', () => {
    const groups = [PEOPLE.slice(0, 2), PEOPLE.slice(2, 6), PEOPLE.slice(6, 7), PEOPLE.slice(7)]
    expect(boardOf(record('skins', groups), NOW).competitions[0]!.notShared).toEqual([
      'Group 3 has one player: d-c0 is for groups of two or more, so nothing counts there.',
      'Group 4 has one player: d-c0 is for groups of two or more, so nothing counts there.',
    ])
  })

  it('says it on the sheet as well', () => {
    const sheet = resultSheetOf(record('split-sixes', GROUPS, 'closed'), { number: 1, reason: null, by: 'D', at: NOW })
    expect(sheet.board.competitions[0]!.notShared).toHaveLength(2)
  })

  it('has nothing to say when everybody shares, of another game, and before the draw', () => {
    const fitting = record('split-sixes', [PEOPLE.slice(0, 3), PEOPLE.slice(3, 6)])
    const six = { ...fitting, entries: fitting.entries.slice(0, 6) }
    expect(boardOf(six, NOW).competitions.map((one) => one.notShared)).toEqual([undefined, undefined])
    expect(notShared(record('skins', []), record('skins').competitions[0]!)).toEqual([])
  })
})
