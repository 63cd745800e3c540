// The start sheet: who starts when and where, off what, with whom, and who marks whose card.

import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { inWords } from '@/lib/rules/formats/catalogue'
import { markersOfDay } from './card-holders'
import { namesOf } from './entrant-names'
import { figureOf } from './figure'
import { formatIn } from './format-of-competition'
import { type Figures, figuresOf, nameOf, noteOf } from './handicap-table'
import { listed, withoutStop } from './in-words'
import { withoutMatch, withoutPartner } from './no-part'
import { sideFigures } from './side-handicaps'
import { startHolesOf } from './start-holes'
import { countRuleInWords, rarerTermsInWords } from './terms-in-words'
import type { StartSheet } from './views'

/** Codes and links are for the desk's own print; the sheet for everybody goes without. */
export function startSheetOf(record: DayRecord, { withCodes }: { withCodes: boolean }): StartSheet {
  const figures = figuresOf(record)
  const ofSides = sideFigures(record)
  const holes = startHolesOf(record)
  const entries = new Map(record.entries.map((entry) => [entry.id, entry]))
  const markers = markersIn(record)
  return {
    societyName: record.society.name,
    dayName: record.name,
    dayNumber: record.number,
    date: record.date,
    courseName: record.round.courseName,
    firstTee: record.round.firstTee,
    intervalMinutes: record.round.intervalMinutes,
    startKind: record.round.startKind,
    competitions: record.competitions.map(({ name, format, terms }) => ({
      name,
      formatName: formatIn({ name, format, terms })?.name ?? format,
      allowance: inWords(terms.allowance),
      moreTerms: [...countRuleInWords({ name, format, terms }), ...rarerTermsInWords({ name, format, terms })],
      allowanceFrom:
        terms.allowanceFrom === 'published'
          ? `Allowance from the Rules of Handicapping ${record.edition}, Appendix C`
          : `House choice${terms.allowanceReason ? `: ${withoutStop(terms.allowanceReason)}` : ''}`,
    })),
    groups: record.groups
      .filter((group) => group.entryIds.length > 0)
      .map((group) => ({
        number: group.number,
        startTime: group.startTime,
        startHole: group.startHole,
        startsAt: holes.get(group.number) ?? String(group.startHole),
        code: withCodes ? group.code : null,
        link: withCodes ? `/card/${group.linkKey}` : null,
        players: group.entryIds.flatMap((id) => {
          const entry = entries.get(id)
          const marker = markers.get(id)
          return entry
            ? [playerOf(entry, record, figures.get(id), ofSides, marker ? entries.get(marker) : undefined)]
            : []
        }),
      })),
    published: record.startPublishedAt !== null,
    ...(record.calledOff ? { calledOff: record.calledOff.reason } : {}),
    frozenAt: record.frozenAt?.toISOString() ?? null,
  }
}

/** As written on the cards, or as they will be when the sheet is published. */
function markersIn(record: DayRecord): ReadonlyMap<EntryId, EntryId | null> {
  return new Map([...markersOfDay(record), ...record.cards.map((card) => [card.entryId, card.markerId] as const)])
}

function playerOf(
  entry: EntryRecord,
  record: DayRecord,
  figures: Figures | undefined,
  ofSides: ReturnType<typeof sideFigures>,
  marker: EntryRecord | undefined,
): StartSheet['groups'][number]['players'][number] {
  return {
    entryId: entry.id,
    name: nameOf(entry),
    note: noteOf(entry),
    tee: record.tees.find((tee) => tee.id === entry.roundTeeId)?.name ?? '',
    figure: figureOf(entry.indexTenths),
    playing: record.competitions.map((one) => ({
      competition: one.name,
      playingHandicap: figures?.playing.get(one.id) ?? ofSides.get(one.id)?.get(entry.id) ?? null,
    })),
    marker: marker ? nameOf(marker) : null,
    side: partnersOf(entry, record),
  }
}

/** "with Coldbrook" or "no partner in the Quaich" for the first competition of sides, "against Verrow" for every match; null for neither. */
function partnersOf(entry: EntryRecord, record: DayRecord): string | null {
  const names = namesOf(record)
  const said: string[] = []
  const matches = record.competitions.filter((one) => formatIn(one)?.isMatch).length
  for (const one of record.competitions) {
    const format = formatIn(one)
    const side = one.sides.find((each) => each.entryIds.includes(entry.id))
    if (!side && withoutPartner(record, one).includes(entry.id))
      said.push(`no ${format?.sideSize === 2 ? 'partner' : 'side'} in ${one.name}`)
    const partners = side?.entryIds.filter((id) => id !== entry.id).map(names.short) ?? []
    if (format && format.sideSize > 1 && side && partners.length > 0 && !said.some((each) => each.startsWith('with')))
      said.push(side.name ?? `with ${listed(partners)}`)
    if (!format?.isMatch) continue
    const against = opponentOf(one, format.sideSize > 1 ? (side?.id ?? '') : entry.id)
    const inWhich = matches > 1 ? ` in ${one.name}` : ''
    if (against !== null) said.push(`against ${names.entrantShort(against)}${inWhich}`)
    else if (withoutMatch(record, one).some((ids) => ids.includes(entry.id))) said.push(`no opponent in ${one.name}`)
  }
  return said.length > 0 ? said.join(', ') : null
}

/** Before pairings were kept, the two put together in a match of singles met. */
function opponentOf({ pairings, sides }: DayRecord['competitions'][number], id: string): string | null {
  const pairing = pairings.find(({ a, b }) => a === id || b === id)
  if (pairing) return pairing.a === id ? pairing.b : pairing.a
  if (pairings.length > 0) return null
  return sides.find((side) => side.entryIds.some((one) => one === id))?.entryIds.find((other) => other !== id) ?? null
}
