// Every format of the catalogue, by the size of its sides: one random day serves all formats of a size.
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { DAYS, disagreements } from './agreement'
import type { Wanted } from './random-day'

/** Split sixes take exactly three players. */
const isForThree = (id: string) => id.startsWith('split-sixes')

export type Size = 1 | 2 | 3 | 4 | 5 | 6 | 'three players'

export function formatsOf(size: Size): string[] {
  const ids = FORMATS.filter(({ id, side }) => (isForThree(id) ? size === 'three players' : side.to === size))
  return ids.map(({ id }) => id)
}

const isMatch = (format: string) => FORMATS.find(({ id }) => id === format)!.isMatch

function wantedFor(size: Size, formats: readonly string[]): Wanted {
  const competitions = formats.map((format) => ({ id: format, format, ...(isMatch(format) ? { matches: [] } : {}) }))
  if (size === 'three players') return { competitions, sideSize: 1, players: 3, everything: true }
  return { competitions, sideSize: size, shortSides: size > 1, everything: true }
}

/** Disagreements on so many days for each of the formats; none when the engine and the second way say the same. */
export function disagreementsOf(size: Size, days = DAYS): string[] {
  return disagreements(wantedFor(size, formatsOf(size)), days)
}
