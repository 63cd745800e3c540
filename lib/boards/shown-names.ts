// How people are shown to everybody: by name, by initials, or as a former member. The book and its frozen sheets keep
// their figures and their names; what leaves for a public page has the name replaced.

import type { DayRecord } from '@/lib/facts/day-record'
import type { PersonId } from '@/lib/facts/ids'
import { fullName, nameKey, type PersonName } from '@/lib/facts/person-name'
import type { ShownAs } from '@/lib/facts/society-settings'

export const FORMER = 'Former member'

const initial = (name: string) => `${[...name.trim()][0]?.toUpperCase() ?? '?'}.`

/** "P. Q." or "Former member" */
export function shownName(person: PersonName, as: ShownAs): string {
  if (as === 'name') return fullName(person)
  return as === 'initials' ? `${initial(person.firstName)} ${initial(person.familyName)}` : FORMER
}

/** The record as everybody may read it. `hidden` says how those are shown who are not shown by name. */
export function publicRecord(record: DayRecord, hidden: ReadonlyMap<string, ShownAs>): DayRecord {
  if (hidden.size === 0) return record
  const shown = (one: DayRecord): DayRecord => {
    const names = new Map(one.entries.map((entry) => [entry.personId, entry]))
    return {
      ...one,
      // A reason may name somebody: it is read by everybody too.
      rulings: withShownNames(one.rulings, hiddenNames(one.entries, hidden)),
      entries: one.entries.map((entry) => {
        const as = hidden.get(entry.personId)
        const hostAs = entry.hostId === null ? undefined : hidden.get(entry.hostId)
        const host = entry.hostId === null ? undefined : names.get(entry.hostId)
        const hostName = hostAs === undefined ? entry.hostName : host ? shownName(host, hostAs) : null
        if (as === undefined || as === 'name') return { ...entry, hostName }
        const [firstName, familyName] =
          as === 'initials' ? [initial(entry.firstName), initial(entry.familyName)] : ['Former', 'member']
        return { ...entry, firstName, familyName, knownAs: null, hostName, shownInFull: true }
      }),
    }
  }
  return { ...shown(record), earlier: record.earlier.map(shown) }
}

/** Who of those on a sheet is not shown by name, with what tells each from the others on it. */
export function hiddenNames(
  people: readonly (PersonName & { readonly personId: PersonId })[],
  hidden: ReadonlyMap<string, ShownAs>,
): readonly HiddenName[] {
  return people.flatMap(({ personId, firstName, familyName, knownAs }) => {
    const as = hidden.get(personId)
    if (as === undefined) return []
    const others = people.filter((one) => one.personId !== personId)
    const name = { firstName, familyName, knownAs }
    const namesakes = others.filter((one) => nameKey(one) === nameKey(name))
    return [
      {
        ...name,
        as,
        aloneInFamily: others.every((one) => one.familyName !== familyName),
        wordsOfOthers: namesakes.flatMap((one) => one.knownAs ?? []),
      },
    ]
  })
}

export interface HiddenName extends PersonName {
  readonly as: ShownAs
  /** The words that stand after the same name where it means somebody else. */
  readonly wordsOfOthers?: readonly string[]
  /** Nobody else on the sheet has the family name: it stands there alone, and means this person. */
  readonly aloneInFamily: boolean
}

// Words of the sheet that are nobody's name, whatever they look like.
const LEFT_ALONE = new Set([
  'by',
  'byName',
  'courseName',
  'dayName',
  'daySlug',
  'seasonName',
  'societyName',
  'societySlug',
  'formatName',
  'format',
  'competition',
  'division',
  'id',
  'version',
  'edition',
  'clause',
  'tieRule',
  'allowance',
  'allowanceFrom',
  'prizeRule',
])

const quoted = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
const word = (text: string) => new RegExp(`(?<![\\p{L}\\p{N}])${quoted(text)}(?![\\p{L}\\p{N}])`, 'gu')

/** The name with its own word or without one; "Peter Marsh (junior)" is not Peter Marsh (senior). */
function fullNameIn({ firstName, familyName, knownAs, wordsOfOthers = [] }: HiddenName): RegExp {
  const own = knownAs ? `(?: \\(${quoted(knownAs)}\\))?` : ''
  const others = wordsOfOthers.length > 0 ? `(?! \\((?:${wordsOfOthers.map(quoted).join('|')})\\))` : ''
  return new RegExp(`(?<![\\p{L}\\p{N}])${quoted(`${firstName} ${familyName}`)}(?![\\p{L}\\p{N}])${own}${others}`, 'gu')
}

/** A published sheet, or a part of it, with the names replaced wherever they stand. No figure is touched. */
export function withShownNames<T>(view: T, people: readonly HiddenName[]): T {
  const rules = people
    .filter((person) => person.as !== 'name')
    .flatMap((person) => {
      const shown = shownName(person, person.as)
      const full = [fullNameIn(person), shown] as const
      return person.aloneInFamily ? [full, [word(person.familyName), shown] as const] : [full]
    })
  if (rules.length === 0) return view
  // Initials end with a full stop of their own, at the end of a sentence too.
  const text = (written: string) =>
    rules.reduce((so, [pattern, shown]) => {
      const said = so.replace(pattern, shown)
      return shown.endsWith('.') && said !== so ? said.replaceAll(`${shown}.`, shown) : said
    }, written)
  const replaced = (value: unknown, key: string, isNameOfAThing: boolean): unknown => {
    if (typeof value === 'string')
      return LEFT_ALONE.has(key) || (key === 'name' && isNameOfAThing) ? value : text(value)
    if (Array.isArray(value))
      return LEFT_ALONE.has(key) ? value : value.map((one) => replaced(one, key, THINGS.has(key)))
    if (typeof value !== 'object' || value === null || value instanceof Date) return value
    return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, replaced(part, name, isNameOfAThing)]))
  }
  return replaced(view, '', false) as T
}

/** Lists whose members bear the name of a thing: a competition, a division, a prize. Rows inside them do not. */
const THINGS = new Set(['competitions', 'divisions', 'prizes'])
