// The last step of every public reading: whoever is shown by initials or as a former member is shown so.

import 'server-only'
import { hiddenNames, publicRecord, withShownNames } from '@/lib/boards/shown-names'
import type { DayRecord } from '@/lib/facts/day-record'
import type { PersonId } from '@/lib/facts/ids'
import type { ShownAs } from '@/lib/facts/society-settings'
import { hiddenPeople, peopleOfSheets } from '@/lib/store/privacy'

export async function recordForEverybody(record: DayRecord): Promise<DayRecord> {
  return publicRecord(record, await hiddenPeople({ societyId: record.society.id }))
}

/** For what was frozen with names in it: the sheet stays as it is, its showing does not. */
export async function sheetForEverybody<T>(societySlug: string, view: T, daySlug?: string): Promise<T> {
  return withNamesHidden(societySlug, await hiddenPeople({ slug: societySlug }), view, daySlug)
}

/** For a member's own page: everybody else is shown there as to everybody. */
export async function pageForMember<T>(societySlug: string, view: T, self: PersonId): Promise<T> {
  const hidden = new Map(await hiddenPeople({ slug: societySlug }))
  hidden.delete(self)
  return withNamesHidden(societySlug, hidden, view)
}

async function withNamesHidden<T>(
  societySlug: string,
  hidden: ReadonlyMap<string, ShownAs>,
  view: T,
  daySlug?: string,
): Promise<T> {
  if (hidden.size === 0) return view
  const people = await peopleOfSheets({ societySlug, daySlug })
  return withShownNames(view, hiddenNames(people, hidden))
}
