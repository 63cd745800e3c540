// The form of a match's end as it was typed, as the ending the book keeps; null with what cannot be read.

import type { Fault } from '@/lib/result'

/** "4, 7 and 12" as hole numbers; null for anything else. */
function holesIn(text: string): number[] | null {
  const words = text.split(/[\s,;]+|\band\b/).filter((word) => word !== '')
  if (words.some((word) => !/^\d{1,2}$/.test(word))) return null
  return words.map(Number)
}

/** "4 5 x": strokes of the extra holes in order, an x for no score. */
function scoresIn(text: string): (number | 'x')[] | null {
  const words = text
    .toLowerCase()
    .split(/[\s,;]+/)
    .filter((word) => word !== '')
  if (words.some((word) => !/^(\d{1,2}|x)$/.test(word))) return null
  return words.map((word) => (word === 'x' ? 'x' : Number(word)))
}

/** "3 and 2", "3&2", "3/2", "1 up"; null for anything else. */
export function resultIn(text: string): { up: number; left: number } | null {
  const read = /^(\d{1,2})\s*(?:up|(?:and|&|\/)\s*(\d{1,2}))$/i.exec(text.trim())
  return read ? { up: Number(read[1]), left: Number(read[2] ?? 0) } : null
}

export function readEnding(form: { get: (name: string) => unknown }): { ending: unknown } | { faults: Fault[] } {
  const text = (name: string) => String(form.get(name) ?? '')
  const faults: Fault[] = []
  const read = <T>(name: string, of: (written: string) => T | null, sentence: string): T | null => {
    const value = of(text(name))
    if (value === null) faults.push({ place: name, sentence })
    return value
  }
  const toA = read('concededToA', holesIn, 'Write the numbers of the holes: 4, 7.')
  const toB = read('concededToB', holesIn, 'Write the numbers of the holes: 4, 7.')
  const extraA = read('extraA', scoresIn, 'Write the strokes of the extra holes in order: 4 5, an x for no score.')
  const extraB = read('extraB', scoresIn, 'Write the strokes of the extra holes in order: 4 5, an x for no score.')
  if (extraA && extraB && extraA.length !== extraB.length)
    faults.push({ place: 'extraB', sentence: 'Both have played the same number of extra holes.' })
  const [how, end] = text('how').split(' ')
  const result = how === 'won' ? read('result', resultIn, 'Write the result: 3 and 2, or 1 up.') : null
  if (how !== 'won' && text('result').trim() !== '')
    faults.push({ place: 'result', sentence: 'Choose who won with that result under “How it ended”.' })
  if (faults.length > 0 || !toA || !toB || !extraA || !extraB) return { faults }
  return {
    ending: {
      ...(how === 'conceded' ? { concededBy: end } : {}),
      ...(how === 'walkover' ? { walkover: end } : {}),
      ...(result ? { result: { winner: end, ...result } } : {}),
      ...(how === 'halved' ? { result: { winner: null, up: 0, left: 0 } } : {}),
      ...(how === 'abandoned' ? { abandoned: true } : {}),
      ...(toA.length + toB.length > 0
        ? {
            concededHoles: [
              ...toA.map((hole) => ({ hole, to: 'a' as const })),
              ...toB.map((hole) => ({ hole, to: 'b' as const })),
            ],
          }
        : {}),
      ...(extraA.length > 0 ? { extraHoles: extraA.map((a, at) => ({ a, b: extraB[at]! })) } : {}),
    },
  }
}
