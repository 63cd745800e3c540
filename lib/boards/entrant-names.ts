// How an entrant is called on boards and sheets. Two of the same family name on one day get their first names.

import type { DayRecord, EntryRecord, SideRecord } from '@/lib/facts/day-record'
import { fullName } from '@/lib/facts/person-name'

type Named = Pick<DayRecord, 'entries' | 'competitions'>

export interface Names {
  /** "Jago Trevennor" */
  full(entryId: string): string
  /** "Trevennor", or "Una Tarrablane" where two share the family name. */
  short(entryId: string): string
  /** Entrant of a competition: an entry or a side. */
  entrant(id: string): string
  entrantShort(id: string): string
  /** "guest of Storrey" */
  note(entryId: string): string | null
}

export function namesOf(record: Named & { readonly earlier?: readonly Named[] }): Names {
  // Whoever played an earlier round of the day, and is not in it any more, is named from there.
  const all = [...(record.earlier ?? []), record]
  const entries = new Map<string, EntryRecord>(all.flatMap((day) => day.entries).map((entry) => [entry.id, entry]))
  const families = new Map<string, Set<string>>()
  for (const { familyName, status, personId } of entries.values())
    if (status !== 'withdrawn') families.set(familyName, (families.get(familyName) ?? new Set()).add(personId))
  const sides = new Map<string, SideRecord>(
    all.flatMap((day) => day.competitions.flatMap((one) => one.sides)).map((side) => [side.id, side]),
  )

  const fullOf = (entry: EntryRecord) => fullName(entry)
  const full = (id: string) => {
    const entry = entries.get(id)
    return entry ? fullOf(entry) : 'unknown'
  }
  const short = (id: string) => {
    const entry = entries.get(id)
    if (!entry) return 'unknown'
    return entry.shownInFull || (families.get(entry.familyName)?.size ?? 0) > 1 ? fullOf(entry) : entry.familyName
  }
  const sideName = (id: string) => {
    const side = sides.get(id)
    if (!side) return null
    return side.name ?? joined(side.entryIds.map(short))
  }
  return {
    full,
    short,
    entrant: (id) => sideName(id) ?? full(id),
    entrantShort: (id) => sideName(id) ?? short(id),
    note: (id) => {
      const entry = entries.get(id)
      if (entry?.kind !== 'guest') return null
      return entry.hostName ? `guest of ${entry.hostName}` : 'guest'
    },
  }
}

function joined(names: readonly string[]): string {
  if (names.length < 3) return names.join(' and ')
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
