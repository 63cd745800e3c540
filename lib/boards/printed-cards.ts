// The cards for the printer: one for each player in a group, or one for a side on one ball, with the strokes of the main competition hole by hole.

import type { PackHole } from '@/lib/facts/card-pack'
import type { DayRecord, EntryRecord, SideRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { strokesOnHoles } from '@/lib/rules/strokes/strokes-on-holes'
import { sharedCard } from './card-holders'
import { dayOfRecord } from './day-of-record'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { nameOf, noteOf } from './handicap-table'
import { listed } from './in-words'
import { matchesToCount } from './match-cards'
import { matchStrokesSaid } from './match-strokes-said'
import { carrierAt, hasNamedBall, playingOf } from './named-balls'
import { withNoPart } from './no-part'
import { type MainReading, mainReading, teeOfCard } from './own-handicaps'
import { takeOnHole, variesByHole } from './scores-that-count'
import { startSheetOf } from './start-sheet'
import { countRuleInWords } from './terms-in-words'

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
  readonly startsAt: string
  readonly code: string | null
  readonly link: string | null
  readonly holes: readonly PackHole[]
  /** A side with one card: its players, in its order. */
  readonly side?: readonly string[]
  /** Whose drive was taken is written beside each hole: the terms ask for so many of each player. */
  readonly drivesNeeded?: number
  /** Who carries the named ball, hole by hole. */
  readonly carriers?: readonly string[]
  /** How many scores of the team count, hole by hole, where that changes. */
  readonly counts?: readonly number[]
  /** How many scores count, in a sentence: on every hole the same. */
  readonly countRule?: string
  /** Where strokes are received in each match of the player's, if the dots do not say it. */
  readonly matchStrokes?: readonly string[]
  /** Partners who tee off in turn, the first on the odd holes: Rules of Golf 22.3. */
  readonly teesOff?: 'in-turn'
}

export interface PrintedCards {
  readonly reading: MainReading['reading']
  readonly competition: string
  readonly cards: readonly PrintedCard[]
  /** In a group, but without a figure: no card can be printed for them. */
  readonly without: readonly string[]
  /** Without a partner or an opponent all day: no card is asked of them. */
  readonly noPart: readonly string[]
}

function ofSide(
  record: DayRecord,
  side: SideRecord | null,
  nameOfEntry: (id: EntryId) => string,
): Pick<PrintedCard, 'side' | 'drivesNeeded' | 'teesOff'> {
  if (!side || side.entryIds.length < 2) return {}
  const competition = record.competitions[0]
  const drives = competition?.terms.minimumDrives
  const isFoursomes = competition?.format.startsWith('foursomes') === true && side.entryIds.length === 2
  return {
    side: side.entryIds.map(nameOfEntry),
    ...(drives === undefined ? {} : { drivesNeeded: drives }),
    ...(isFoursomes ? { teesOff: 'in-turn' as const } : {}),
  }
}

/** What a card of somebody in a team has beside the strokes: who carries the ball, how many scores count. */
function ofTeam(
  record: DayRecord,
  entryId: EntryId,
  holes: readonly { readonly hole: number }[],
  short: (id: EntryId) => string,
): Pick<PrintedCard, 'carriers' | 'counts' | 'countRule'> {
  const teams = record.competitions.flatMap((competition) => {
    const format = formatIn(competition)
    const side = competition.sides.find((one) => one.entryIds.includes(entryId))
    const isTeam = format && side && !format.isMatch && format.ball === 'own' && format.sideSize > 1
    return isTeam ? [{ competition, format, side }] : []
  })
  const named = teams.find(({ competition }) => hasNamedBall(competition))
  const varying = teams.find(({ format }) => variesByHole(format.count))
  const players = named ? playingOf(record, named.side) : []
  const [first] = teams
  const rule = first ? countRuleInWords(first.competition).join(' ') : ''
  return {
    ...(players.length > 0 ? { carriers: holes.map((_, at) => short(carrierAt(players, at)!)) } : {}),
    ...(varying ? { counts: holes.map(({ hole }) => takeOnHole(varying.format.count, hole).length) } : {}),
    ...(rule !== '' ? { countRule: rule } : {}),
  }
}

const fullNameOf = (entry: EntryRecord | undefined) => (entry ? nameOf(entry) : '')

export function printedCards(record: DayRecord): PrintedCards {
  const day = dayOfRecord(record)
  const main = mainReading(record, day)
  const matches = matchesToCount(record, day)
  const entries = new Map(record.entries.map((entry) => [entry.id, entry]))
  const { short } = namesOf(record)
  const without: string[] = []
  const noPart: string[] = []
  const cards = startSheetOf(record, { withCodes: true }).groups.flatMap((group) =>
    group.players.flatMap((player): PrintedCard[] => {
      const side = sharedCard(record, player.entryId)
      const here = side?.entryIds.filter((id) => group.players.some((one) => one.entryId === id)) ?? []
      // One card a side: its first player of the group has it.
      if (here.length > 0 && here[0] !== player.entryId) return []
      const entry = entries.get(player.entryId)
      const line = main.lines.get(player.entryId)
      const tee = entry && teeOfCard(record, entry, line)
      if (!entry || !tee || !line) {
        ;(withNoPart(record).has(player.entryId) ? noPart : without).push(player.name)
        return []
      }
      const strokes = strokesOnHoles(line.playingHandicap, tee.holes)
      const matchStrokes = matchStrokesSaid(record, matches, entry.id, strokes)
      return [
        {
          entryId: entry.id,
          name: side && here.length > 1 ? (side.name ?? listed(here.map(short))) : nameOf(entry),
          note: here.length > 1 ? null : noteOf(entry),
          ...ofSide(record, side, (id) => fullNameOf(entries.get(id))),
          ...ofTeam(record, entry.id, tee.holes, short),
          ...(matchStrokes.length > 0 ? { matchStrokes } : {}),
          tee: tee.name,
          playingHandicap: line.playingHandicap,
          marker: player.marker,
          group: group.number,
          startTime: group.startTime,
          startHole: group.startHole,
          startsAt: group.startsAt,
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
  return { reading: main.reading, competition: main.name, cards, without, noPart }
}
