// Promise: whoever has a board and hears the changes has the next board, whatever changed; and a day's ordinary change is
// a small part of the board.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { changesBetweenBoards, type Json, withChanges } from '@/lib/boards/board-changes'

const heard = (a: Json, b: Json) => {
  const changes = changesBetweenBoards(a, b)
  // Over the wire: what JSON cannot carry may not matter.
  return withChanges(a, changes === undefined ? undefined : JSON.parse(JSON.stringify(changes)))
}

const row = fc.record({
  entrant: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
  place: fc.option(fc.nat(9)),
  holes: fc.array(fc.option(fc.nat(9)), { maxLength: 4 }),
})
const rows = fc.uniqueArray(row, { selector: (one) => one.entrant, maxLength: 6 })
const json = fc.jsonValue({ maxDepth: 4 }).map((value) => JSON.parse(JSON.stringify(value)) as Json)

describe('changes of a board', () => {
  it('lead from any value to any other', () => {
    fc.assert(
      fc.property(json, json, (a, b) => {
        expect(heard(a, b)).toEqual(b)
      }),
      { numRuns: 2000 },
    )
  })

  it('lead from any order of rows to any other', () => {
    fc.assert(
      fc.property(rows, rows, fc.nat(9), fc.nat(9), (a, b, m, n) => {
        const before = { version: `1.${m}`, rows: a } as unknown as Json
        const next = { version: `1.${n}`, rows: b } as unknown as Json
        expect(heard(before, next)).toEqual(next)
      }),
      { numRuns: 2000 },
    )
  })

  it('say nothing when nothing changed', () => {
    const board = { version: '1.2', rows: [{ entrant: 'a', score: 3 }] }
    expect(changesBetweenBoards(board, structuredClone(board))).toBeUndefined()
  })

  it('are small when one row climbs', () => {
    const line = (id: number) => ({ entrant: `entrant-${id}`, name: `Robin Marlpit ${id}`, holes: Array(18).fill(id) })
    const board = Array.from({ length: 100 }, (_, id) => line(id))
    const climbed = [{ ...line(99), score: 38 }, ...board.slice(0, 99)]
    const changes = JSON.stringify(changesBetweenBoards(board, climbed))
    expect(changes.length).toBeLessThan(JSON.stringify(board).length / 20)
  })

  it('of another board are refused, not applied by half', () => {
    expect(() => withChanges({ rows: {} }, { of: { rows: { at: { 0: { is: 1 } } } } })).toThrow('not of this board')
  })
})
