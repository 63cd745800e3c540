// The cards for the printer: one for each player in a group, with the strokes of the main competition hole by hole.

import type { PackHole } from '@/lib/facts/card-pack'
import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { dayOfRecord } from './day-of-record'
import { nameOf, noteOf } from './handicap-table'
import { type MainReading, mainReading } from './own-handicaps'
import { startSheetOf } from './start-sheet'

export interface PrintedCard {
  readonly entryId: EntryId
  readonly name: string
  readonly note: string | null
  readonly tee: string
  readonly playingHandicap: number
  readonly marker: string | null
  readonly group: number
  readonly startTime: string
  readonly startHole: number
  readonly code: string | null
  readonly link: string | null
  readonly holes: readonly PackHole[]
}

export interface PrintedCards {
  readonly reading: MainReading['reading']
  readonly competition: string
  readonly cards: readonly PrintedCard[]
  /** In a group, but without a figure: no card can be printed for them. */
  readonly without: readonly string[]
}

export function printedCards(record: DayRecord): PrintedCards {
  const main = mainReading(record, dayOfRecord(record))
  const entries = new Map(record.entries.map((entry) => [entry.id, entry]))
  const without: string[] = []
  const cards = startSheetOf(record, { withCodes: true }).groups.flatMap((group) =>
    group.players.flatMap((player): PrintedCard[] => {
      const entry = entries.get(player.entryId)
      const tee = record.tees.find((one) => one.id === entry?.roundTeeId)
      const line = main.lines.get(player.entryId)
      if (!entry || !tee || !line) {
        without.push(player.name)
        return []
      }
      const strokes = strokesOnHoles(line.playingHandicap, tee.holes)
      return [
        {
          entryId: entry.id,
          name: nameOf(entry),
          note: noteOf(entry),
          tee: tee.name,
          playingHandicap: line.playingHandicap,
          marker: player.marker,
          group: group.number,
          startTime: group.startTime,
          startHole: group.startHole,
          code: group.code,
          link: group.link,
          holes: tee.holes.map((hole, at) => ({
            hole: hole.hole,
            par: hole.par,
            strokeIndex: hole.strokeIndex,
            yards: hole.yards ?? null,
            strokes: strokes[at] ?? 0,
          })),
        },
      ]
    }),
  )
  return { reading: main.reading, competition: main.name, cards, without }
}
