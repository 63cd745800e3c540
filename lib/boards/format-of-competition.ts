// The format of a competition in the book: one of the list, or the society's own by its five choices.

import type { CompetitionRecord } from '@/lib/facts/day-record'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import type { Format } from '@/lib/rules/formats/format'
import { formatOfCompetition } from '@/lib/rules/score/terms-in-force'

export function formatIn({ name, format, terms }: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): Format | null {
  return formatOfCompetition({ id: format, name, format, ...(terms.custom ? { custom: terms.custom } : {}) }, FORMATS)
}

/** Players who are put together for it in the draw: a side, or the two of a match. One when everybody plays alone. */
export function togetherIn(one: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): number {
  const format = formatIn(one)
  return format?.isMatch ? 2 : (format?.sideSize ?? 1)
}
