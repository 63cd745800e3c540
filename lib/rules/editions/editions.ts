// Which edition a day is counted under: a look-up in dated data. Nothing in the engine asks what today's rule is.

import { EDITION_2020 } from './2020'
import { EDITION_2020_GBI } from './2020-gbi'
import { EDITION_2024 } from './2024'
import type { Edition, Region } from './edition'

export const EDITIONS: readonly Edition[] = [EDITION_2024, EDITION_2020, EDITION_2020_GBI]

const byId: ReadonlyMap<string, Edition> = new Map(EDITIONS.map((one) => [one.id, one]))

export function isEdition(id: string): boolean {
  return byId.has(id)
}

/** The edition of that id; the schema has checked the id, and an unknown one is read as the newest. */
export function editionOf(id: string): Edition {
  return byId.get(id) ?? EDITION_2024
}

/** The first day on which any of the editions was in force. */
export function firstEditionFrom(region: Region = 'gbi'): string {
  return EDITIONS.flatMap((one) => one.from[region] ?? []).sort()[0]!
}

/** The id of the edition in force on a date; before the first, the first. */
export function editionFor(date: string, region: Region = 'gbi'): string {
  let best: { id: string; from: string } | null = null
  let first: { id: string; from: string } | null = null
  for (const one of EDITIONS) {
    const from = one.from[region]
    if (from === null) continue
    if (first === null || from < first.from) first = { id: one.id, from }
    if (from <= date && (best === null || from > best.from)) best = { id: one.id, from }
  }
  return (best ?? first)!.id
}
