// The rarer terms as they are being typed: strings, so that half a number stays what it is, and back to the terms. The form
// and the reading of what it sent go through the same two functions.

import type { RarerTerms } from '@/lib/facts/terms'
import { type FittingTerm, termFits } from '@/lib/facts/terms-that-fit'
import type { Format } from '@/lib/rules/formats/format'

export interface DivisionDraft {
  readonly key: string
  readonly id: string
  readonly name: string
  readonly handicapFrom: string
  readonly handicapTo: string
  readonly gender: string
  readonly guests: string
  readonly group: string
}

/** Each under the place its faults are named by, behind `terms.`; an empty one is a term that is not set. */
export const MORE_FIELDS = [
  'dividedBy',
  'countedHoles',
  'matchDifference',
  'extraHoleStrokes',
  'notPlayed',
  'missing',
  'missing.overPar',
  'missing.courseHandicap',
  'missing.seed',
  'minimumDrives',
  'ballLost',
  'sideTee',
  'partPoints',
  'ranking',
] as const
export type MoreField = (typeof MORE_FIELDS)[number]

export type MoreDraft = Readonly<Record<MoreField, string>> & { readonly divisions: readonly DivisionDraft[] }

const written = (value: unknown) => (value === undefined ? '' : String(value))

export function moreOf(terms: RarerTerms): MoreDraft {
  const { missing } = terms
  return {
    dividedBy: written(terms.dividedBy),
    countedHoles: terms.countedHoles?.join(', ') ?? '',
    matchDifference: terms.matchDifference ?? '',
    extraHoleStrokes: terms.extraHoleStrokes ?? '',
    notPlayed: terms.notPlayed ?? '',
    missing: missing?.kind ?? '',
    'missing.overPar': missing?.kind === 'ghost' ? String(missing.overPar) : '2',
    'missing.courseHandicap': missing?.kind === 'ghost' ? String(missing.courseHandicap) : '18',
    'missing.seed': missing?.kind === 'drawn' ? String(missing.seed) : '',
    minimumDrives: written(terms.minimumDrives),
    ballLost: terms.ballLost ?? '',
    sideTee: terms.sideTee ?? '',
    partPoints: terms.partPoints ?? '',
    ranking: terms.ranking ?? '',
    divisions: (terms.divisions ?? []).map((one) => ({
      key: `division ${one.id}`,
      id: one.id,
      name: one.name,
      handicapFrom: written(one.handicapFrom),
      handicapTo: written(one.handicapTo),
      gender: one.gender ?? '',
      guests: one.guests ?? '',
      group: one.group ?? '',
    })),
  }
}

export const NO_MORE: MoreDraft = moreOf({})

/** A whole number, or what was written for the schema to refuse in its place. */
export const numberIn = (text: string) => (text.trim() === '' ? undefined : Number(text))

/** "1-9, 12" are holes 1 to 9 and 12; anything else is left as it is, for the schema to refuse. */
export function holesIn(text: string): readonly number[] | string {
  const holes = text
    .split(/[,; ]+/)
    .filter(Boolean)
    .flatMap((part) => {
      const [from = Number.NaN, to = from] = part.split(/[-–]/).map(Number)
      return Number.isInteger(from) && Number.isInteger(to) && to >= from && to - from < 36
        ? Array.from({ length: to - from + 1 }, (_, at) => from + at)
        : [Number.NaN]
    })
  return holes.every(Number.isInteger) ? [...new Set(holes)] : text
}

/** The terms a draft comes to, still to be parsed by the schema; none for a term the format cannot have. */
export function termsOfMore(more: MoreDraft, format: Format | null): Readonly<Record<string, unknown>> {
  const terms: Partial<Record<FittingTerm, unknown>> = {
    dividedBy: numberIn(more.dividedBy),
    countedHoles: more.countedHoles.trim() === '' ? undefined : holesIn(more.countedHoles),
    matchDifference: more.matchDifference || undefined,
    extraHoleStrokes: more.extraHoleStrokes || undefined,
    notPlayed: more.notPlayed || undefined,
    missing: missingOf(more),
    minimumDrives: numberIn(more.minimumDrives) || undefined,
    ballLost: more.ballLost || undefined,
    sideTee: more.sideTee || undefined,
    partPoints: more.partPoints || undefined,
    ranking: more.ranking || undefined,
    divisions: more.divisions.length > 0 ? more.divisions.map(divisionOf) : undefined,
  }
  return Object.fromEntries(
    Object.entries(terms).filter(
      ([term, value]) => value !== undefined && (format === null || termFits(term as FittingTerm, format)),
    ),
  )
}

function missingOf(more: MoreDraft): unknown {
  switch (more.missing) {
    case '':
      return undefined
    case 'ghost':
      return {
        kind: 'ghost',
        overPar: numberIn(more['missing.overPar']),
        courseHandicap: numberIn(more['missing.courseHandicap']),
      }
    case 'drawn':
      return { kind: 'drawn', seed: numberIn(more['missing.seed']) }
    default:
      return { kind: more.missing }
  }
}

/** Also for the reading back while it is typed. */
export function divisionOf(draft: Omit<DivisionDraft, 'key'>) {
  const from = numberIn(draft.handicapFrom)
  const to = numberIn(draft.handicapTo)
  const group = draft.group.trim().toLowerCase()
  return {
    id: draft.id,
    name: draft.name.trim() || 'Division',
    ...(from === undefined ? {} : { handicapFrom: from }),
    ...(to === undefined ? {} : { handicapTo: to }),
    ...(draft.gender === '' ? {} : { gender: draft.gender as 'men' | 'women' }),
    ...(draft.guests === '' ? {} : { guests: draft.guests as 'only' | 'none' }),
    ...(group === '' ? {} : { group }),
  }
}

let made = 0

/** An id no division of this competition has. */
export function newDivision(
  others: readonly DivisionDraft[],
  division: Partial<DivisionDraft> & Pick<DivisionDraft, 'name'>,
): DivisionDraft {
  const taken = new Set(others.map((one) => one.id))
  let number = others.length + 1
  while (taken.has(`division-${number}`)) number++
  return {
    key: `new division ${++made}`,
    id: `division-${number}`,
    handicapFrom: '',
    handicapTo: '',
    gender: '',
    guests: '',
    group: '',
    ...division,
  }
}

/** A set of divisions to begin from, each with an id of its own. */
export function divisionsOf(
  set: readonly (Partial<DivisionDraft> & Pick<DivisionDraft, 'name'>)[],
): readonly DivisionDraft[] {
  const divisions: DivisionDraft[] = []
  for (const one of set) divisions.push(newDivision(divisions, one))
  return divisions
}

/** Common practice, to begin from. */
export const DIVISION_SETS: readonly {
  readonly label: string
  readonly divisions: readonly (Partial<DivisionDraft> & Pick<DivisionDraft, 'name'>)[]
}[] = [
  {
    label: 'Two by handicap',
    divisions: [
      { name: 'Division 1', handicapTo: '15' },
      { name: 'Division 2', handicapFrom: '16' },
    ],
  },
  {
    label: 'Three by handicap',
    divisions: [
      { name: 'Division 1', handicapTo: '12' },
      { name: 'Division 2', handicapFrom: '13', handicapTo: '19' },
      { name: 'Division 3', handicapFrom: '20' },
    ],
  },
  {
    label: 'Men and women',
    divisions: [
      { name: 'Men', gender: 'men' },
      { name: 'Women', gender: 'women' },
    ],
  },
  {
    label: 'Members and guests',
    divisions: [
      { name: 'Members', guests: 'none' },
      { name: 'Guests', guests: 'only' },
    ],
  },
]

/** A number for a lot that anybody can draw again. */
export function newLot(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0]! % 1_000_000
}
