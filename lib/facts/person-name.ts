// How people are called and in which order they are listed, everywhere the same. Two people of one name, a father and
// his son, are told apart by a word of their own that stands after the name: "Peter Marsh (senior)".

export interface PersonName {
  readonly firstName: string
  readonly familyName: string
  /** A word or two that tell this person from another of the same name: "senior", "Tom's son". */
  readonly knownAs?: string | null | undefined
}

/** "Peter Marsh", or "Peter Marsh (senior)" where another has the same name. */
export const fullName = ({ firstName, familyName, knownAs }: PersonName): string =>
  knownAs ? `${firstName} ${familyName} (${knownAs})` : `${firstName} ${familyName}`

/** "Marsh, Peter (senior)": for lists to choose from, in the order of the list. */
export const nameForList = ({ firstName, familyName, knownAs }: PersonName): string =>
  knownAs ? `${familyName}, ${firstName} (${knownAs})` : `${familyName}, ${firstName}`

const plain = (text: string) => text.normalize('NFC').trim().replace(/\s+/g, ' ').toLocaleLowerCase('en-GB')

const WITHOUT_APOSTROPHES = /['’‘`ʼ]/g

/** The same for everybody of one name, however it was typed. The word that tells two apart is no part of it. */
export const nameKey = ({ firstName, familyName }: Omit<PersonName, 'knownAs'>): string =>
  `${plain(firstName)} ${plain(familyName)}`.replace(WITHOUT_APOSTROPHES, '')

const collator = new Intl.Collator('en-GB', { sensitivity: 'base', ignorePunctuation: false })
const sortable = (text: string) => plain(text).replace(WITHOUT_APOSTROPHES, '')

/** By family name, then first name; "O'Dowd" stands between "Odell" and "Oldroyd". */
export function byName(a: PersonName, b: PersonName): number {
  return (
    collator.compare(sortable(a.familyName), sortable(b.familyName)) ||
    collator.compare(sortable(a.firstName), sortable(b.firstName)) ||
    collator.compare(a.knownAs ?? '', b.knownAs ?? '')
  )
}

/**
 * A label of their own for everybody of a list, by id: what is written down under a name must not be lost because two
 * bear it. Where no word tells two apart, the second gets a number.
 */
export function namesApart<T extends PersonName>(
  people: readonly T[],
  idOf: (one: T) => string,
): ReadonlyMap<string, string> {
  const taken = new Set<string>()
  const labels = new Map<string, string>()
  for (const one of people) {
    const id = idOf(one)
    if (labels.has(id)) continue
    const name = fullName(one)
    let label = name
    for (let at = 2; taken.has(label); at++) label = `${name} (${at})`
    taken.add(label)
    labels.set(id, label)
  }
  return labels
}
