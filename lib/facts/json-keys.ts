// A key written twice in one object of a JSON text: whoever reads the text keeps the last without a word, and the first is
// lost. The text is known to be JSON when this looks at it.

import type { Fault } from '@/lib/result'
import { placeOf } from './day-file-faults'

type Step = string | number

interface Open {
  /** Null for a list. */
  readonly keys: Set<string> | null
  /** Where its value under way stands. */
  at: Step
}

/** One fault for each key that was there already, with its place: `players[3].tee`. */
export function keysTwice(text: string): Fault[] {
  const faults: Fault[] = []
  const open: Open[] = []
  // Strings, and the signs that open, close and part; whatever lies between is a number, a word or space.
  for (const [sign] of text.matchAll(/"[^"\\]*(?:\\.[^"\\]*)*"|[{}[\],:]/g)) {
    const here = open.at(-1)
    if (sign === '{') open.push({ keys: new Set(), at: '' })
    else if (sign === '[') open.push({ keys: null, at: 0 })
    else if (sign === '}' || sign === ']') open.pop()
    else if (sign === ',') {
      if (here?.keys) here.at = ''
      else if (here && typeof here.at === 'number') here.at += 1
    } else if (sign !== ':' && here?.keys && here.at === '') {
      const key = `${JSON.parse(sign)}`
      here.at = key
      const place = placeOf(open.map(({ at }) => at))
      if (here.keys.has(key)) faults.push({ place, sentence: 'This key stands here twice; write it once.' })
      here.keys.add(key)
    }
  }
  return faults
}
