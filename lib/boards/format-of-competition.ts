// The format of a competition in the book: one of the list, or the society's own by its five choices.

import type { CompetitionRecord } from '@/lib/facts/day-record'
import { FORMATS, type ProposedAllowance, proposedAllowance } from '@/lib/rules/formats/catalogue'
import type { FiveChoices, Format } from '@/lib/rules/formats/format'
import { proposedForChoices } from '@/lib/rules/formats/read-back'
import { formatOfCompetition } from '@/lib/rules/score/terms-in-force'

export function formatIn({ format, terms }: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): Format | null {
  // An own format is called what its terms call it, whatever the trophy.
  const own = terms.custom ? { custom: terms.custom, name: format } : {}
  return formatOfCompetition({ id: format, format, ...own }, FORMATS)
}

/** A form of play while the day is being called: its name or id, and its five choices when it is the society's own. */
export interface FormOfPlay {
  readonly format: string
  readonly custom?: FiveChoices | undefined
}

export function proposedFor({ format, custom }: FormOfPlay, fieldSize: number, edition: string): ProposedAllowance {
  return custom ? proposedForChoices(custom, fieldSize, edition) : proposedAllowance(format, fieldSize, edition)
}

/** The table's own figure or the one it has for a small field: the size is an estimate, so either is published. */
export function isPublishedFor(
  form: FormOfPlay,
  allowance: number | readonly number[] | null,
  edition: string,
): boolean {
  return [0, 1].some((size) => {
    const proposed = proposedFor(form, size, edition)
    return proposed.from === 'published' && JSON.stringify(proposed.allowance) === JSON.stringify(allowance)
  })
}

/** Players who are put together for it: a side. One when everybody plays alone, a match of singles included. */
export function togetherIn(one: Pick<CompetitionRecord, 'name' | 'format' | 'terms'>): number {
  return formatIn(one)?.sideSize ?? 1
}
