// What importing a member list would do, row by row, on the people the book has now. Plain decisions.

import { figureOf } from '@/lib/boards/figure'
import type { PersonId } from '@/lib/facts/ids'
import { type MemberImportChoices, type Mendable, SOMEBODY_NEW } from '@/lib/facts/member-import'
import type { PersonName } from '@/lib/facts/person-name'
import type { PersonKept } from '@/lib/store/people'
import type { SheetMember, SheetRows } from './member-sheet'
import { isToldApart, needsWord } from './namesakes'

export type Source = 'home-club' | 'society'

export type Planned =
  | {
      readonly what: 'new'
      /** The gender is null as long as the one question about it is open. */
      readonly row: SheetMember
      readonly source: Source
      readonly sentence: string
    }
  | {
      readonly what: 'changed' | 'unchanged'
      readonly row: SheetMember
      readonly known: PersonKept
      /** Null where no new figure is written. */
      readonly source: Source | 'claimed' | null
      readonly sentence: string
    }
  | {
      readonly what: 'look'
      readonly row: SheetMember
      readonly sentences: readonly string[]
      readonly cells: readonly { readonly cell: Mendable; readonly written: string }[]
      readonly who: readonly { readonly personId: PersonId; readonly said: string }[] | null
    }
  | { readonly what: 'left-out'; readonly row: SheetMember; readonly why: string; readonly byItself: boolean }

export interface MemberPlan {
  readonly planned: readonly Planned[]
  /** Rows of somebody new whose tees nobody has said; one question where there are many. */
  readonly genderUnsaid: readonly number[]
  readonly askGender: boolean
  /** Rows whose figure nobody has said the kind of. */
  readonly kindUnsaid: number
}

export interface Asked {
  readonly choices: MemberImportChoices
  readonly hasGenderColumn: boolean
  readonly mayChangeFigures: boolean
}

const wordOf = (firstName: string, familyName: string) =>
  `${firstName} ${familyName}`
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .trim()

export function planMembers(sheet: SheetRows, people: readonly PersonKept[], asked: Asked): MemberPlan {
  const { choices } = asked
  const chosen = sheet.members.filter((row) => !choices.leftOut.includes(row.row))
  const matches = matched(chosen, people, choices)
  const isNew = (row: SheetMember) => matches.get(row.row)?.kind === 'new' && row.faults.length === 0
  const genderUnsaid = chosen.filter((row) => isNew(row) && row.gender === null).map((row) => row.row)
  const askGender =
    choices.gender === null && (!asked.hasGenderColumn || genderUnsaid.length > 3) && genderUnsaid.length > 0
  const kindUnsaid = chosen.filter((row) => {
    const match = matches.get(row.row)
    if (row.faults.length > 0 || row.indexTenths === null || row.source !== null || choices.handicap !== null)
      return false
    return match?.kind === 'new' || (match?.kind === 'known' && match.known.figure === null)
  }).length
  const planned = sheet.members.map((row): Planned => {
    if (choices.leftOut.includes(row.row)) return { what: 'left-out', row, why: 'left out by you', byItself: false }
    const match = matches.get(row.row)!
    if (match.kind === 'same-as')
      return { what: 'left-out', row, why: `the same as row ${match.twin.row}`, byItself: true }
    if (row.faults.length > 0)
      return {
        what: 'look',
        row,
        sentences: row.faults.map((fault) => fault.sentence),
        cells: row.faults.map(({ cell, written }) => ({ cell, written })),
        who: null,
      }
    if (match.kind === 'ask') return { what: 'look', row, sentences: [match.sentence], cells: [], who: match.who }
    if (match.kind === 'new') return newMember(row, match.namesakes, choices, askGender)
    return knownMember(row, match.known, asked)
  })
  return { planned, genderUnsaid, askGender, kindUnsaid }
}

function newMember(
  row: SheetMember,
  namesakes: readonly PersonName[],
  choices: MemberImportChoices,
  askGender: boolean,
): Planned {
  if (!isToldApart(row, namesakes))
    return {
      what: 'look',
      row,
      sentences: [needsWord(row).sentence],
      cells: [{ cell: 'knownAs', written: row.knownAs ?? '' }],
      who: null,
    }
  const gender = row.gender ?? (choices.gender === 'each' ? null : choices.gender)
  if (gender === null && !askGender)
    return {
      what: 'look',
      row,
      sentences: ['Men or women? It decides the tees.'],
      cells: [{ cell: 'gender', written: '' }],
      who: null,
    }
  const source = row.source ?? choices.handicap ?? 'society'
  const figure =
    row.indexTenths === null
      ? 'no handicap yet'
      : `${source === 'home-club' ? 'handicap index' : 'society handicap'} ${figureOf(row.indexTenths)}`
  return { what: 'new', row: { ...row, gender }, source, sentence: `New member, ${figure}.` }
}

function knownMember(row: SheetMember, known: PersonKept, { choices, mayChangeFigures }: Asked): Planned {
  // Whoever has a handicap keeps its kind, unless the file says another one.
  const source = row.source ?? (known.figure === null ? (choices.handicap ?? 'society') : known.handicapSource)
  const figure =
    row.indexTenths !== null && (known.figure?.indexTenths !== row.indexTenths || known.handicapSource !== source)
  const changes = changesOf(row, known, figure ? source : null)
  if (changes.length === 0) return { what: 'unchanged', row, known, source: null, sentence: 'As in the member list.' }
  if (figure && !mayChangeFigures)
    return {
      what: 'look',
      row,
      sentences: ['A new handicap for somebody in the member list is for the handicap secretary to import.'],
      cells: [],
      who: null,
    }
  return { what: 'changed', row, known, source: figure ? source : null, sentence: `${changes.join('; ')}.` }
}

type Match =
  /** With the others of that name, in the list and earlier in the file. */
  | { readonly kind: 'new'; readonly namesakes: readonly PersonName[] }
  | { readonly kind: 'known'; readonly known: PersonKept }
  | { readonly kind: 'same-as'; readonly twin: SheetMember }
  | {
      readonly kind: 'ask'
      readonly sentence: string
      readonly who: readonly { readonly personId: PersonId; readonly said: string }[]
    }

/** Who in the list each row is. Two people may have one name, after one question. */
function matched(
  rows: readonly SheetMember[],
  people: readonly PersonKept[],
  choices: MemberImportChoices,
): ReadonlyMap<number, Match> {
  const found = new Map<number, Match>()
  const groups = new Map<string, SheetMember[]>()
  for (const row of rows) {
    const word = wordOf(row.firstName, row.familyName)
    groups.set(word, [...(groups.get(word) ?? []), row])
  }
  for (const [word, group] of groups) {
    const known = people.filter((person) => wordOf(person.firstName, person.familyName) === word)
    const free = new Set(known)
    const others = (row: SheetMember): readonly PersonName[] => [
      ...known,
      ...group.filter((one) => one.row < row.row && found.get(one.row)?.kind === 'new'),
    ]
    const take = (row: SheetMember, known: PersonKept | undefined) => {
      if (!known || !free.has(known)) return
      free.delete(known)
      found.set(row.row, { kind: 'known', known })
    }
    for (const row of group) {
      const said = choices.who[String(row.row)]
      if (said === SOMEBODY_NEW) found.set(row.row, { kind: 'new', namesakes: known })
      else if (said !== undefined)
        take(
          row,
          [...free].find((one) => one.personId === said),
        )
    }
    const open = () => group.filter((row) => !found.has(row.row))
    for (const row of open()) take(row, surely(row, free))
    for (const row of open()) {
      const twins = group.filter((one) => one.row < row.row)
      const same = twins.find((twin) => sameRow(twin, row))
      if (same && !choices.broughtBack.includes(row.row)) found.set(row.row, { kind: 'same-as', twin: same })
      else found.set(row.row, matchOf(row, [...free], twins, choices.broughtBack.includes(row.row), known))
      const now = found.get(row.row)
      if (now?.kind === 'known') free.delete(now.known)
    }
    // Only now is it known of every row of the name who is new: a row answered for is settled before the rows above it.
    for (const row of group)
      if (found.get(row.row)?.kind === 'new') found.set(row.row, { kind: 'new', namesakes: others(row) })
  }
  return found
}

/** A membership number or an e-mail address tells a father from his son. */
function surely(row: SheetMember, free: ReadonlySet<PersonKept>): PersonKept | undefined {
  return [...free].find(
    (one) =>
      (row.membershipNumber !== null && row.membershipNumber === one.membershipNumber) ||
      (row.knownAs !== null && row.knownAs.toLowerCase() === one.knownAs?.toLowerCase()) ||
      (row.email !== null && row.email.toLowerCase() === one.email?.toLowerCase()),
  )
}

function matchOf(
  row: SheetMember,
  free: readonly PersonKept[],
  twins: readonly SheetMember[],
  wanted: boolean,
  namesakes: readonly PersonName[],
): Match {
  const [only] = free
  const name = `${row.firstName} ${row.familyName}`
  const who = free.map((person) => ({ personId: person.personId, said: told(person) }))
  if (!only) {
    const twin = twins.at(-1)
    if (!twin || wanted) return { kind: 'new', namesakes }
    const sentence = `${name} is in row ${twin.row} too, and the two rows differ. Are they two people, a father and son for instance?`
    return { kind: 'ask', sentence, who: [] }
  }
  if (free.length > 1)
    return { kind: 'ask', sentence: `The member list has ${free.length} people called ${name}. Who is this?`, who }
  if (only.kind === 'guest')
    return { kind: 'ask', sentence: `${name} has been here as a guest. Is this the same person?`, who }
  if (only.leftOn !== null)
    return {
      kind: 'ask',
      sentence: `${name} has left the society. Take them back under Members, or is this somebody new?`,
      who: [],
    }
  return perhapsAnother(row, only)
    ? {
        kind: 'ask',
        sentence: `The member list has a ${name} already, and the two differ. Is this the same person?`,
        who,
      }
    : { kind: 'known', known: only }
}

function perhapsAnother(row: SheetMember, known: PersonKept): boolean {
  const differ = <T>(one: T | null, other: T | null) => one !== null && other !== null && one !== other
  return (
    differ(row.gender, known.gender) ||
    differ(row.membershipNumber, known.membershipNumber ?? null) ||
    (differ(row.email?.toLowerCase() ?? null, known.email?.toLowerCase() ?? null) &&
      differ(row.indexTenths, known.figure?.indexTenths ?? null))
  )
}

/** What tells people of one name apart. */
function told({ knownAs, figure, email, membershipNumber, memberSince }: PersonKept): string {
  const more = [
    knownAs,
    figure ? `handicap ${figureOf(figure.indexTenths)}` : null,
    membershipNumber ? `number ${membershipNumber}` : null,
    email,
    memberSince ? `member since ${memberSince}` : null,
  ].filter(Boolean)
  return more.join(', ') || 'nothing more is known'
}

function changesOf(row: SheetMember, known: PersonKept, source: Source | 'claimed' | null): readonly string[] {
  const changes: string[] = known.kind === 'guest' ? ['The guest becomes a member'] : []
  if (source !== null)
    changes.push(
      known.figure?.indexTenths === row.indexTenths
        ? `${figureOf(row.indexTenths)} is now ${source === 'home-club' ? 'a handicap index from a home club' : 'a society handicap'}`
        : `Handicap ${figureOf(known.figure?.indexTenths ?? null)} becomes ${figureOf(row.indexTenths)}`,
    )
  const another = <T>(now: T | null, before: T | null | undefined) => now !== null && now !== (before ?? null)
  if (another(row.email, known.email)) changes.push('new e-mail address')
  if (another(row.phone, known.phone)) changes.push('new telephone number')
  if (another(row.memberSince, known.memberSince)) changes.push(`member since ${row.memberSince}`)
  if (another(row.membershipNumber, known.membershipNumber)) changes.push(`membership number ${row.membershipNumber}`)
  if (another(row.homeClub, known.homeClub)) changes.push(`home club ${row.homeClub}`)
  if (row.labels !== null && row.labels.join() !== known.labels.join())
    changes.push(row.labels.length === 0 ? 'no tags' : `tagged ${row.labels.join(', ')}`)
  return changes
}

function sameRow(a: SheetMember, b: SheetMember): boolean {
  const said = ({ row: _, faults: __, ...rest }: SheetMember) => JSON.stringify(rest)
  return said(a) === said(b)
}
