// The clock of a day: what has to be done, by when, what is done, and what is next. From the record and today's date.

import { addDays } from '@/lib/facts/calendar'
import type { DayRecord } from '@/lib/facts/day-record'
import { cardsOnTheirWay } from './cards-on-their-way'
import { clockInWords } from './dates-in-words'
import { cardsAsTheyStand } from './day-of-record'
import type { DeskCounts, Due, DutyOfDay } from './desk-views'
import { counted } from './in-words'
import { withNoPart } from './no-part'

/**
 * Days before the day, as societies commonly keep them; the closing date is the society's own. The start sheet carries
 * the strokes of each player, so handicaps are frozen before it, and the mixed draw goes by them too.
 */
const FREEZE_BEFORE = 3
const DRAW_BEFORE = 2
const FREEZE_AT = '18:00'
const START_BEFORE = 1
/** A round and a bit: the last group is due in. */
const ROUND_MINUTES = 260

export function countsOf(record: DayRecord, places: number | null): DeskCounts {
  const entered = record.entries.filter((entry) => entry.status === 'entered')
  const way = cardsOnTheirWay(record, cardsAsTheyStand(record))
  const seated = new Set(record.groups.flatMap((group) => group.entryIds))
  return {
    entered: entered.length,
    guests: entered.filter((entry) => entry.kind === 'guest').length,
    waiting: record.entries.filter((entry) => entry.status === 'waiting').length,
    withdrawn: record.entries.filter((entry) => entry.status === 'withdrawn').length,
    places,
    groups: record.groups.filter((group) => group.entryIds.length > 0).length,
    cards: record.cards.filter(({ entryId }) => !withNoPart(record).has(entryId)).length,
    cardsIn: way.in - way.notReturned,
    cardsAccepted: way.accepted - way.notReturned,
    cardsNotReturned: way.notReturned,
    noFigure: entered.filter((entry) => entry.indexTenths === null).length,
    ungrouped: entered.filter((entry) => !seated.has(entry.id)).length,
  }
}

interface Line {
  readonly what: DutyOfDay
  readonly on: string
  readonly at?: string
  readonly done: boolean
  readonly title: string
  readonly note: string
}

export function whatIsDue(record: DayRecord, counts: DeskCounts, calledOn: string, today: string): readonly Due[] {
  if (record.calledOff) return []
  const lines = linesOf(record, counts, calledOn, today)
  const next = lines.findIndex((line) => !line.done)
  return lines.map(({ done, at, ...line }, index) => ({
    ...line,
    at: at ?? null,
    state: done ? 'done' : index === next ? 'next' : 'later',
    late: !done && line.on < today,
  }))
}

function linesOf(record: DayRecord, counts: DeskCounts, calledOn: string, today: string): readonly Line[] {
  const { date } = record
  const published = record.publications.at(-1)
  // Nothing is due before what it waits for: entries that close late, or a day called at short notice, move the rest.
  const called = calledOn < date ? calledOn : addDays(date, -10)
  const closing = record.entriesCloseOn ?? later(addDays(date, -10), called)
  const before = (days: number) => later(addDays(date, -days), closing)
  const begun = record.status === 'in-play' || record.status === 'closed'
  const lastGroup = record.groups.filter((group) => group.entryIds.length > 0).at(-1)
  const lastIn = lastGroup ? minutesLater(lastGroup.startTime, ROUND_MINUTES) : undefined
  const frozen = record.frozenAt !== null
  const out = counts.cards - counts.cardsAccepted - counts.cardsNotReturned
  const gone = counts.cardsNotReturned > 0 ? `, ${counts.cardsNotReturned} not returned` : ''
  return [
    { what: 'call', on: calledOn, done: true, title: 'Call the day', note: record.round.courseName },
    {
      what: 'close-entries',
      on: closing,
      done: counts.groups > 0 || frozen,
      title: 'Close entries',
      note: `${counts.entered} in${counts.waiting > 0 ? `, ${counts.waiting} waiting` : ''}`,
    },
    {
      what: 'freeze',
      on: before(FREEZE_BEFORE),
      at: FREEZE_AT,
      done: frozen,
      title: frozen
        ? 'Freeze handicaps'
        : counts.entered > 0
          ? `Freeze ${counts.entered} handicaps`
          : 'Freeze handicaps',
      note:
        counts.noFigure > 0
          ? `${counted(counts.noFigure, 'player')} without a figure`
          : 'A later change to a figure will not alter this day',
    },
    {
      what: 'draw',
      on: before(DRAW_BEFORE),
      done: counts.groups > 0 && counts.ungrouped === 0,
      title: counts.groups > 0 && counts.ungrouped > 0 ? 'Mend the draw' : 'Make the draw',
      note:
        counts.groups === 0
          ? `${counts.entered} to place`
          : counts.ungrouped > 0
            ? `${counted(counts.ungrouped, 'player')} without a group`
            : counted(counts.groups, 'group'),
    },
    {
      what: 'publish-start',
      on: before(START_BEFORE),
      done: record.startPublishedAt !== null,
      title: 'Publish the start sheet',
      note: 'Cards, codes and links for every group',
    },
    {
      what: 'first-tee',
      on: date,
      at: record.round.firstTee,
      done: begun,
      title: `First tee, ${clockInWords(record.round.firstTee)}`,
      note: record.round.startKind === 'shotgun' ? 'shotgun start' : `every ${record.round.intervalMinutes} minutes`,
    },
    {
      what: 'returns',
      on: date,
      ...(lastIn ? { at: lastIn } : {}),
      done: record.status === 'closed' || (counts.cards > 0 && out === 0),
      title: counts.cards > 0 ? `Returns, ${counted(counts.cards, 'card')}` : 'Returns',
      note:
        counts.cards > 0
          ? `${counts.cardsIn} of ${counts.cards} in, ${counts.cardsAccepted} accepted${gone}`
          : 'when the last group is due in',
    },
    {
      what: 'close',
      on: date,
      done: record.status === 'closed',
      title: 'Close the day',
      note: 'Ties are broken and the places stand',
    },
    {
      what: 'publish',
      on: date,
      done: published !== undefined,
      title: 'Publish the result',
      note: published ? `Sheet ${published.number}` : 'One frozen, numbered sheet',
    },
    {
      what: 'handicap-changes',
      on: addDays(date, 2),
      // Nobody has to change a figure: a week after the result the line is struck off.
      done: published !== undefined && today > addDays(date, 7),
      title: 'Handicap changes',
      note: 'Under Members, each with its reason',
    },
  ]
}

const later = (one: string, other: string) => (one > other ? one : other)

function minutesLater(clock: string, minutes: number): string {
  const [hour = 0, minute = 0] = clock.split(':').map(Number)
  const total = (hour * 60 + minute + minutes) % 1440
  return `${String(Math.floor(total / 60)).padStart(2, '0')}:${String(total % 60).padStart(2, '0')}`
}

/** "Men from Yellow, par 72, 69.2 and 125. Women from Red, par 73, 70.9 and 125." */
export function teesInWords(record: DayRecord): string {
  return (['men', 'women'] as const)
    .flatMap((gender) => {
      const tee = record.tees.find((one) => one.gender === gender && one.isDefault)
      if (!tee) return []
      const par = tee.holes.reduce((sum, hole) => sum + hole.par, 0)
      const rating = `${Math.trunc(tee.courseRatingTenths / 10)}.${tee.courseRatingTenths % 10}`
      return [`${gender === 'men' ? 'Men' : 'Women'} from ${tee.name}, par ${par}, ${rating} and ${tee.slopeRating}.`]
    })
    .join(' ')
}
