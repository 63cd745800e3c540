// The parts of the day form that change each other while it is being filled in.

import { proposedFor } from '@/lib/boards/format-of-competition'
import { listed } from '@/lib/boards/in-words'
import type { CallDay } from '@/lib/facts/commands'
import { fiveChoices } from '@/lib/facts/format-choices'
import { type CompetitionTerms, PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { termFits } from '@/lib/facts/terms-that-fit'
import { intervalCaution } from '@/lib/rules/draw/interval'
import { FORMATS, formatOf } from '@/lib/rules/formats/catalogue'
import type { FiveChoices } from '@/lib/rules/formats/format'
import { formatOfCompetition } from '@/lib/rules/score/terms-in-force'
import { type MoreDraft, moreOf, NO_MORE } from './more-draft'
import { choicesOf, OWN_FORMAT, type OwnFormat, ownFrom } from './own-format'
import { writtenAllowance } from './read-day-form'

export interface PrizeDraft {
  readonly key: string
  readonly name: string
  readonly place: number
  readonly eligible: 'everybody' | 'members' | 'guests'
  /** Id of a division; empty for the whole field. */
  readonly division: string
  readonly value: string
}

export interface CompetitionDraft {
  readonly key: string
  readonly name: string
  /** Typed by an officer, or carried over as a trophy's name: another format leaves it alone. */
  readonly nameTyped: boolean
  /** What another format made meaningless and left out, in a sentence; null when nothing. */
  readonly dropped: string | null
  /** A format of the list, or OWN_FORMAT. */
  readonly format: string
  readonly own: OwnFormat | null
  readonly allowance: string
  /** An officer wrote another figure than the proposed one: it is not proposed over. */
  readonly ownFigure: boolean
  readonly reason: string
  readonly ties: CompetitionTerms['ties']
  readonly maximum: CompetitionTerms['maximum']
  readonly namedHoles: string
  readonly limit: NonNullable<CompetitionTerms['handicapLimit']>
  readonly more: MoreDraft
  readonly guestPrizes: boolean
  readonly prizes: readonly PrizeDraft[]
}

let made = 0
const key = () => `row ${++made}`

export function draftOf(competition: CallDay['competitions'][number]): CompetitionDraft {
  const { terms } = competition
  const { allowance, allowanceFrom, allowanceReason, ties, maximum, guests, custom, namedHoles, handicapLimit } = terms
  return {
    key: key(),
    name: competition.name,
    nameTyped: competition.name !== (custom ? competition.format : formatOf(competition.format)?.name),
    dropped: null,
    format: custom ? OWN_FORMAT : competition.format,
    own: custom ? ownFrom(fiveChoices.parse(custom), competition.format) : null,
    allowance: writtenAllowance(allowance),
    ownFigure: allowanceFrom === 'house-choice',
    reason: allowanceReason ?? '',
    ties: { holesCount: 'by-number', fractions: 'kept', ...ties },
    maximum,
    namedHoles: namedHoles?.join(', ') ?? '',
    limit: handicapLimit ?? {},
    more: moreOf(terms),
    guestPrizes: guests === 'for-every-prize',
    prizes: competition.prizes.map((prize) => ({
      key: key(),
      name: prize.name,
      place: prize.place,
      eligible: prize.eligible,
      division: prize.division ?? '',
      value: prize.valuePence === null ? '' : String(prize.valuePence / 100),
    })),
  }
}

export function newCompetition(format: string, expected: number, edition: string): CompetitionDraft {
  return {
    key: key(),
    name: formatOf(format)?.name ?? '',
    nameTyped: false,
    dropped: null,
    format,
    own: null,
    allowance: writtenAllowance(proposedFor({ format }, expected, edition).allowance),
    ownFigure: false,
    reason: '',
    ties: PUBLISHED_COUNTBACK,
    maximum: undefined,
    namedHoles: '',
    limit: {},
    more: NO_MORE,
    guestPrizes: false,
    prizes: [newPrize(1)],
  }
}

export const newPrize = (place: number): PrizeDraft => ({
  key: key(),
  name: ['Winner', 'Second', 'Third'][place - 1] ?? `${place}th`,
  place,
  eligible: 'members',
  division: '',
  value: '',
})

/** The form of play of the draft; no choices yet while an own format is incomplete. */
export function playOf({ format, own }: Pick<CompetitionDraft, 'format' | 'own'>): {
  format: string
  custom?: FiveChoices
} {
  const custom = own === null ? null : choicesOf(own)
  return custom === null ? { format } : { format: own?.name ?? '', custom }
}

/** Another format: its published figure is proposed, and what belonged to the one before goes. */
export function withFormat(
  draft: CompetitionDraft,
  format: string,
  expected: number,
  edition: string,
): CompetitionDraft {
  const begin = formatOf(draft.format) ?? formatOf('stableford')
  const own = format === OWN_FORMAT && begin !== null ? ownFrom(begin, '') : null
  const { divisions, lost, prizes } = divisionsUnder(draft, playOf({ format, own }))
  return {
    ...draft,
    format,
    own,
    name: draft.nameTyped ? draft.name : (formatOf(format)?.name ?? own?.name ?? ''),
    dropped: lost,
    prizes,
    allowance: writtenAllowance(proposedFor(playOf({ format, own }), expected, edition).allowance),
    ownFigure: false,
    reason: '',
    more: { ...NO_MORE, divisions },
  }
}

type Play = ReturnType<typeof playOf>

const formatOfPlay = (play: Play) => formatOfCompetition({ id: 'draft', ...play }, FORMATS)

/** Divisions by handicap are made for players alone, or for sides of one size: for others their limits mean nothing. */
function divisionsUnder(draft: CompetitionDraft, play: Play) {
  const { divisions } = draft.more
  const [before, after] = [formatOfPlay(playOf(draft)), formatOfPlay(play)]
  const fits = (division: CompetitionDraft['more']['divisions'][number]) =>
    after === null ||
    (termFits('divisions', after) &&
      ((division.handicapFrom === '' && division.handicapTo === '') || after.side.to === before?.side.to))
  const kept = divisions.filter(fits)
  const gone = divisions.filter((division) => !fits(division))
  const names = gone.map((division) => division.name || division.id)
  return {
    divisions: kept,
    prizes: draft.prizes.map((prize) =>
      gone.some(({ id }) => id === prize.division) ? { ...prize, division: '' } : prize,
    ),
    lost:
      gone.length === 0
        ? null
        : names.length === 1
          ? `Left out, because it does not fit this format: ${names[0]}. Its prizes are open to the whole field.`
          : `Left out, because they do not fit this format: ${listed(names)}. Their prizes are open to the whole field.`,
  }
}

export function withOwn(draft: CompetitionDraft, own: OwnFormat, expected: number, edition: string): CompetitionDraft {
  const { divisions, lost, prizes } = divisionsUnder(draft, playOf({ format: draft.format, own }))
  const changed = {
    ...draft,
    own,
    name: draft.nameTyped ? draft.name : own.name,
    prizes,
    dropped: lost ?? draft.dropped,
    more: { ...draft.more, divisions },
  }
  return proposedAgain([changed], expected, edition)[0] ?? draft
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
      : { ...draft, allowance: writtenAllowance(proposedFor(playOf(draft), expected, edition).allowance) },
  )
}

/** Published advice for the interval between four-balls, the usual group; it warns and never refuses. */
export function intervalAdvice(minutes: number, startKind: 'tee-times' | 'shotgun'): string | null {
  return startKind === 'shotgun' ? null : intervalCaution(4, minutes)
}
