// Promise: a note on a picture lies on the paper, on no line and on no other note; what has no place is left out.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, placeNotes } from '@/app/_parts/place-notes'

const PAPER: Box = { left: 38, right: 880, top: 4, bottom: 224 }
const LETTER = 6.4

const boxOf = (note: { words: string; x: number; y: number; anchor: 'start' | 'end' }): Box => {
  const width = note.words.length * LETTER
  return {
    left: note.anchor === 'start' ? note.x : note.x - width,
    right: note.anchor === 'start' ? note.x + width : note.x,
    top: note.y - 13,
    bottom: note.y + 5,
  }
}
const cross = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

describe('notes on a picture', () => {
  it('never cover anything', () => {
    const note = fc.record({
      words: fc.string({ minLength: 3, maxLength: 30 }),
      x: fc.integer({ min: 40, max: 870 }),
      y: fc.integer({ min: 10, max: 220 }),
    })
    const line = fc
      .record({
        left: fc.integer({ min: 40, max: 800 }),
        y: fc.integer({ min: 10, max: 220 }),
        long: fc.integer({ min: 4, max: 300 }),
      })
      .map(({ left, y, long }) => ({ left, right: left + long, top: y - 4, bottom: y + 4 }))
    fc.assert(
      fc.property(fc.array(note, { maxLength: 12 }), fc.array(line, { maxLength: 12 }), (notes, lines) => {
        const boxes = placeNotes(notes, lines, PAPER, LETTER).map(boxOf)
        for (const [at, box] of boxes.entries()) {
          expect(box.left).toBeGreaterThanOrEqual(PAPER.left - 0.001)
          expect(box.right).toBeLessThanOrEqual(PAPER.right + 0.001)
          for (const other of [...lines, ...boxes.slice(at + 1)]) expect(cross(box, other)).toBe(false)
        }
      }),
    )
  })

  it('finds the free side', () => {
    const [placed] = placeNotes(
      [{ words: 'won with 38, two off', x: 860, y: 120 }],
      [{ left: 820, right: 880, top: 116, bottom: 124 }],
      PAPER,
      LETTER,
    )
    expect(placed?.anchor).toBe('end')
  })

  it('leaves out what has no room', () => {
    expect(placeNotes([{ words: 'anything', x: 400, y: 100 }], [PAPER], PAPER, LETTER)).toEqual([])
  })
})
