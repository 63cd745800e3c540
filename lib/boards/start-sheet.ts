// The start sheet: who starts when and where, off what, with whom, and who marks whose card.

import type { DayRecord, EntryRecord } from '@/lib/facts/day-record'
import { markersOf } from '@/lib/rules/draw/markers'
import { inWords } from '@/lib/rules/formats/catalogue'
import { figureOf } from './figure'
import { formatIn } from './format-of-competition'
import { type Figures, figuresOf, nameOf, noteOf } from './handicap-table'
import { rarerTermsInWords } from './terms-in-words'
import type { StartSheet } from './views'

/** Codes and links are for the desk's own print; the sheet for everybody goes without. */
export function startSheetOf(record: DayRecord, { withCodes }: { withCodes: boolean }): StartSheet {
  const figures = figuresOf(record)
  const entries = new Map(record.entries.map((entry) => [entry.id, entry]))
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
      moreTerms: rarerTermsInWords({ name, format, terms }),
      allowanceFrom:
        terms.allowanceFrom === 'published'
          ? `Allowance from the Rules of Handicapping ${record.edition}, Appendix C`
          : `House choice${terms.allowanceReason ? `: ${terms.allowanceReason}` : ''}`,
    })),
    groups: record.groups
      .filter((group) => group.entryIds.length > 0)
      .map((group) => {
        const markers = markersIn(record, group.entryIds)
        return {
          number: group.number,
          startTime: group.startTime,
          startHole: group.startHole,
          code: withCodes ? group.code : null,
          link: withCodes ? `/card/${group.linkKey}` : null,
          players: group.entryIds.flatMap((id) => {
            const entry = entries.get(id)
            return entry ? [playerOf(entry, record, figures.get(id), entries.get(markers.get(id) ?? ''))] : []
          }),
        }
      }),
    published: record.startPublishedAt !== null,
    frozenAt: record.frozenAt?.toISOString() ?? null,
  }
}

/** As written on the cards, or as they will be when the sheet is published. */
function markersIn(record: DayRecord, group: readonly string[]): ReadonlyMap<string, string | null> {
  const cards = new Map(record.cards.map((card) => [card.entryId, card.markerId]))
  const round = markersOf(group)
  return new Map(group.map((id) => [id, cards.has(id) ? cards.get(id)! : (round.get(id) ?? null)]))
}

function playerOf(
  entry: EntryRecord,
  record: DayRecord,
  figures: Figures | undefined,
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
      playingHandicap: figures?.playing.get(one.id) ?? null,
    })),
    marker: marker ? nameOf(marker) : null,
    side: partnersOf(entry, record),
  }
}

/** "with Coldbrook" for the first competition of sides; null for one who plays alone. */
function partnersOf(entry: EntryRecord, record: DayRecord): string | null {
  for (const one of record.competitions) {
    if (formatIn(one)?.isMatch) continue
    const side = one.sides.find((each) => each.entryIds.includes(entry.id))
    const partners = side?.entryIds
      .filter((id) => id !== entry.id)
      .map((id) => record.entries.find((each) => each.id === id)?.familyName ?? '')
    if (side && partners && partners.length > 0) return side.name ?? `with ${partners.join(' and ')}`
  }
  return null
}
