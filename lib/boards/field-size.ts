// The published allowance depends on the size of the field (Rules of Handicapping 2024, Appendix C, C/1). Once entries are
// in, the desk is told where the day was called for another size; a house choice is left alone.

import type { DayRecord } from '@/lib/facts/day-record'
import { inWords } from '@/lib/rules/formats/catalogue'
import { proposedFor } from './format-of-competition'

export function fieldSizeNotes(
  record: Pick<DayRecord, 'competitions' | 'entries' | 'edition' | 'frozenAt'>,
): readonly string[] {
  const field = record.entries.filter((entry) => entry.status === 'entered').length
  if (record.frozenAt !== null || field === 0) return []
  return record.competitions.flatMap(({ name, format, terms }) => {
    if (terms.allowanceFrom !== 'published') return []
    const fitting = proposedFor({ format, custom: terms.custom }, field, record.edition)
    if (fitting.from !== 'published' || JSON.stringify(fitting.allowance) === JSON.stringify(terms.allowance)) return []
    return [
      `${name} was called with ${inWords(terms.allowance)}. With ${field} entered it is ${fitting.sentence} ${fitting.clause}.`,
    ]
  })
}
