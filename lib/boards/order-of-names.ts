// The order of names where a board has only the whole of them: the last word is the family's, and a word in brackets
// behind it only tells two of one name apart.

import { byName, type PersonName } from '@/lib/facts/person-name'

export function byLastWord(a: string, b: string): number {
  return byName(partsOf(a), partsOf(b))
}

function partsOf(name: string): PersonName {
  const [, whole = name, knownAs] = /^(.*?)(?: \((.*)\))?$/.exec(name.trim()) ?? []
  const words = whole.split(/\s+/)
  return { familyName: words.at(-1) ?? '', firstName: words.slice(0, -1).join(' '), knownAs }
}
