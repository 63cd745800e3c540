// Two people of one name, a father and his son. The book takes both, but only after asking, and with a word that tells
// them apart on every list. Whoever adds people by another way asks the same question of this file.

import type { EntryRecord } from '@/lib/facts/day-record'
import type { PersonId } from '@/lib/facts/ids'
import { fullName, nameKey, type PersonName } from '@/lib/facts/person-name'
import { type Refused, refused } from '@/lib/result'

interface Known extends PersonName {
  readonly personId: PersonId
  readonly kind: 'member' | 'guest'
  readonly leftOn: string | null
}

/** Who plays on the day somebody is being entered for. */
type OnDay = Pick<EntryRecord, 'personId' | 'status'>

/** Everybody in the book who has the name already, whoever has left too. */
export function namesakesOf<P extends Known>(
  people: readonly P[],
  name: PersonName,
  self: string | null = null,
): readonly P[] {
  const key = nameKey(name)
  return people.filter((one) => one.personId !== self && nameKey(one) === key)
}

/** Is there a word that tells the new one from each of the others? */
export function isToldApart(name: PersonName, namesakes: readonly PersonName[]): boolean {
  const word = (one: PersonName) => (one.knownAs ?? '').trim().toLocaleLowerCase('en-GB')
  return namesakes.every((one) => word(one) !== word(name))
}

/** The question. It is answered by `isAnother` and a word; the place of each fault is the id of a namesake. */
export function sameName(namesakes: readonly Known[], onDay: readonly OnDay[] = []): Refused<'same-name'> {
  const [first] = namesakes
  const name = first ? `${first.firstName} ${first.familyName}` : 'somebody of that name'
  return refused(
    'same-name',
    `There is already ${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${name}. Is this somebody else?`,
    namesakes.map((one) => ({ place: one.personId, sentence: `${fullName(one)}, ${standing(one, onDay)}.` })),
  )
}

/** Said to be another, but still without a word that tells the two apart. */
export function needsWord(name: PersonName): Refused<'told-apart'> {
  const sentence = `Write a word that tells this ${name.firstName} ${name.familyName} from the other: senior, junior, Tom's son.`
  return refused('told-apart', sentence, [{ place: 'knownAs', sentence }])
}

/** Null when the name may be used; otherwise the question or what is missing from its answer. */
export function refusedForName(
  people: readonly Known[],
  name: PersonName,
  isAnother: boolean,
  { self = null, onDay = [] }: { readonly self?: string | null; readonly onDay?: readonly OnDay[] } = {},
): Refused<'same-name' | 'told-apart'> | null {
  const namesakes = namesakesOf(people, name, self)
  if (namesakes.length === 0) return null
  if (!isAnother) return sameName(namesakes, onDay)
  return isToldApart(name, namesakes) ? null : needsWord(name)
}

function standing(one: Known, onDay: readonly OnDay[]): string {
  const entry = onDay.find(({ personId, status }) => personId === one.personId && status !== 'withdrawn')
  if (entry) return `${one.kind}, entered on this day already`
  if (one.leftOn !== null) return `${one.kind}, left on ${one.leftOn}`
  return one.kind === 'guest' ? 'a guest of an earlier day' : 'member'
}
