// The parts of the day form that change each other while it is being filled in.

import type { CallDay } from '@/lib/facts/commands'
import { type CompetitionTerms, PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { intervalCaution } from '@/lib/rules/draw/interval'
import { formatOf, proposedAllowance } from '@/lib/rules/formats/catalogue'
import { writtenAllowance } from './read-day-form'

export interface PrizeDraft {
  readonly key: string
  readonly name: string
  readonly place: number
  readonly eligible: 'everybody' | 'members' | 'guests'
  readonly value: string
}

export interface CompetitionDraft {
  readonly key: string
  readonly name: string
  readonly format: string
  readonly allowance: string
  /** An officer wrote another figure than the proposed one: it is not proposed over. */
  readonly ownFigure: boolean
  readonly reason: string
  readonly ties: CompetitionTerms['ties']
  readonly maximum: CompetitionTerms['maximum']
  readonly guestPrizes: boolean
  readonly prizes: readonly PrizeDraft[]
}

let made = 0
const key = () => `row ${++made}`

export function draftOf(competition: CallDay['competitions'][number]): CompetitionDraft {
  const { terms } = competition
  return {
    key: key(),
    name: competition.name,
    format: competition.format,
    allowance: writtenAllowance(terms.allowance),
    ownFigure: terms.allowanceFrom === 'house-choice',
    reason: terms.allowanceReason ?? '',
    ties: { holesCount: 'by-number', fractions: 'kept', ...terms.ties },
    maximum: terms.maximum,
    guestPrizes: terms.guests === 'for-every-prize',
    prizes: competition.prizes.map((prize) => ({
      key: key(),
      name: prize.name,
      place: prize.place,
      eligible: prize.eligible,
      value: prize.valuePence === null ? '' : String(prize.valuePence / 100),
    })),
  }
}

export function newCompetition(format: string, expected: number, edition: string): CompetitionDraft {
  return {
    key: key(),
    name: formatOf(format)?.name ?? '',
    format,
    allowance: writtenAllowance(proposedAllowance(format, expected, edition).allowance),
    ownFigure: false,
    reason: '',
    ties: PUBLISHED_COUNTBACK,
    maximum: undefined,
    guestPrizes: false,
    prizes: [newPrize(1)],
  }
}

export const newPrize = (place: number): PrizeDraft => ({
  key: key(),
  name: ['Winner', 'Second', 'Third'][place - 1] ?? `${place}th`,
  place,
  eligible: 'members',
  value: '',
})

/** Another format: its published figure is proposed again, unless an officer's own figure still fits it. */
export function withFormat(
  draft: CompetitionDraft,
  format: string,
  expected: number,
  edition: string,
): CompetitionDraft {
  const named = draft.name === '' || draft.name === formatOf(draft.format)?.name
  return {
    ...draft,
    format,
    name: named ? (formatOf(format)?.name ?? draft.name) : draft.name,
    allowance: writtenAllowance(proposedAllowance(format, expected, edition).allowance),
    ownFigure: false,
    reason: '',
  }
}

/** Proposed again where nobody chose otherwise: the field grew, or the date fell under another edition. */
export function proposedAgain(
  drafts: readonly CompetitionDraft[],
  expected: number,
  edition: string,
): readonly CompetitionDraft[] {
  return drafts.map((draft) =>
    draft.ownFigure
      ? draft
      : { ...draft, allowance: writtenAllowance(proposedAllowance(draft.format, expected, edition).allowance) },
  )
}

/** Published advice for the interval between four-balls, the usual group; it warns and never refuses. */
export function intervalAdvice(minutes: number, startKind: 'tee-times' | 'shotgun'): string | null {
  return startKind === 'shotgun' ? null : intervalCaution(4, minutes)
}
