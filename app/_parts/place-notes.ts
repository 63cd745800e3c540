// Finds a free place for each note of a picture, so that no note lies on the line or on another note.

export interface Box {
  left: number
  right: number
  top: number
  bottom: number
}

interface Wanted {
  words: string
  x: number
  y: number
}

export interface PlacedNote {
  words: string
  x: number
  y: number
  anchor: 'start' | 'end'
  fromX: number
  fromY: number
  toX: number
  toY: number
}

const HEIGHT = 17
const crosses = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
const inside = (a: Box, b: Box) => a.left >= b.left && a.right <= b.right && a.top >= b.top && a.bottom <= b.bottom

/** Each note in turn takes the first free place around its point; one that finds none is left to the table below. */
export function placeNotes(wanted: readonly Wanted[], taken: readonly Box[], paper: Box, letter: number): PlacedNote[] {
  const full: Box[] = [...taken]
  const placed: PlacedNote[] = []
  for (const note of wanted) {
    const width = note.words.length * letter
    const tries = [26, 44, 64, 88].flatMap((away) =>
      [1, -1].flatMap((way) => [-1, 1].map((side) => ({ side, dy: way * away }))),
    )
    for (const { side, dy } of tries) {
      const start = note.x + side * 16
      const baseline = note.y + dy
      const box: Box = {
        left: side > 0 ? start : start - width,
        right: side > 0 ? start + width : start,
        top: baseline - HEIGHT + 4,
        bottom: baseline + 5,
      }
      if (!inside(box, paper) || full.some((other) => crosses(box, other))) continue
      full.push(box)
      placed.push({
        words: note.words,
        x: start,
        y: baseline,
        anchor: side > 0 ? 'start' : 'end',
        fromX: note.x,
        fromY: note.y,
        toX: start - side * 4,
        toY: baseline - 5,
      })
      break
    }
  }
  return placed
}
