// The demonstration: two finished days, one in play today, six to come. Everything goes through the use cases, as an
// officer and the phones of the groups would do it; only the calendar moves with today.

import { momentIn } from '@/lib/facts/calendar'
import type { DayRecord, GroupRecord } from '@/lib/facts/day-record'
import { changeHandicap } from '@/lib/society/change-handicap'
import { closeDay } from '@/lib/society/close-day'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { publishResult } from '@/lib/society/publish-result'
import { publishStart } from '@/lib/society/publish-start'
import { reopenDay } from '@/lib/society/reopen-day'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { dayInPlayAt } from './clock-of-demo'
import { dayWithKeys } from './day-with-keys'
import { AWAY_DAY_1, AWAY_DAY_3, GUESTS_DAY_2, GUESTS_DAY_3, SHEET_DAY_2, WITHDRAWN_DAY_3 } from './days'
import { lastSeason } from './last-season'
import { EARLIER, GUESTS, MEMBERS } from './members'
import { must } from './must'
import { cardOf, cardsOf, entryNamed, playGroup, takeIn } from './play'
import { type Founded, founded } from './society'

export async function demonstration(now: Date, zone: string): Promise<void> {
  const inPlay = dayInPlayAt(now, zone)
  const society = await founded(inPlay, zone)
  await lastSeason(society, inPlay.date)
  await openingDay(society)
  await figuresBefore(society, 'day-2')
  await springCup(society)
  await dayInPlay(society, inPlay.starts)
  await entriesToCome(society)
}

const record = async ({ secretary, days }: Founded, key: string): Promise<DayRecord> =>
  dayWithKeys(secretary, days.get(key)!)

const everybodyBut = (away: readonly string[]) =>
  MEMBERS.map((member) => member.familyName).filter((name) => !away.includes(name))

async function enter(
  society: Founded,
  key: string,
  names: readonly string[],
  guests: readonly (readonly [string, string])[],
): Promise<void> {
  const { secretary, people, dateOf, zone } = society
  const day = await record(society, key)
  const when = momentIn(dateOf('day-1'), '08:00', zone)
  let { version } = must(
    await enterPlayers(
      secretary,
      { dayId: day.id, version: day.version, enter: names.map((name) => ({ personId: people.get(name)! })) },
      when,
    ),
    `entries of ${key}`,
  )
  for (const [guest, host] of guests) {
    const entered = await enterGuest(
      secretary,
      { dayId: day.id, version, hostId: people.get(host)!, namesake: 'same', ...GUESTS[guest as keyof typeof GUESTS] },
      when,
    )
    version = must(entered, guest).version
  }
}

/** Two days before, in the evening: figures frozen; the day before: the start sheet out. */
async function freezeAndPublish(society: Founded, key: string): Promise<DayRecord> {
  const { secretary, zone } = society
  let day = await record(society, key)
  const when = momentIn(day.date, '00:30', zone)
  must(
    await freezeHandicaps(
      secretary,
      { dayId: day.id, version: day.version },
      new Date(when.getTime() - 30.5 * 3_600_000),
    ),
    `the freeze of ${key}`,
  )
  day = await record(society, key)
  must(
    await publishStart(secretary, { dayId: day.id, version: day.version }, new Date(when.getTime() - 6 * 3_600_000)),
    `the start sheet of ${key}`,
  )
  return record(society, key)
}

async function closeAndPublish(society: Founded, key: string, clock: string, reason: string | null): Promise<void> {
  const { secretary, zone } = society
  const day = await record(society, key)
  const when = momentIn(day.date, clock, zone)
  const { version } = must(await closeDay(secretary, { dayId: day.id, version: day.version }, when), `closing ${key}`)
  must(
    await publishResult(secretary, { dayId: day.id, version, reason }, new Date(when.getTime() + 10 * 60_000)),
    `the result of ${key}`,
  )
}

async function openingDay(society: Founded): Promise<void> {
  const { secretary, zone } = society
  await enter(society, 'day-1', everybodyBut(AWAY_DAY_1), [])
  const entered = await record(society, 'day-1')
  must(
    await makeDraw(
      secretary,
      { dayId: entered.id, version: entered.version, way: 'random', groupSize: 4, seed: 1987, evenSizes: true },
      momentIn(society.dateOf('day-1'), '00:00', zone),
    ),
    'the draw of day 1',
  )
  const day = await freezeAndPublish(society, 'day-1')
  const rounds = cardsOf(day, 'day-1')
  for (const group of day.groups)
    await playGroup(day, group, rounds, zone, { signed: true, blank: { Ballyfane: [12], Wrackham: [16, 17, 18] } })
  const rule = ruling(society, day, '16:05')
  await rule('Ballyfane', {
    kind: 'hole-score',
    hole: 12,
    value: 5,
    clause: 'Rules of Golf 3.3b(2)',
    reason: 'The 12th was left blank; player and marker both say five.',
  })
  await rule('Ballyfane', {
    kind: 'card-stands',
    clause: 'Rules of Golf 3.3b(2)',
    reason: 'Signed on paper once the 12th was filled in.',
  })
  await rule('Wrackham', { kind: 'no-return', reason: 'Walked in after the 15th with a sore back.' })
  await rule('Highmoor', {
    kind: 'playing-handicap',
    value: 26,
    clause: 'Rules of Golf 3.3b(4)',
    reason: 'The card was printed with 29; the figure on the list gives 26.',
  })
  await takeIn(secretary, day, day.groups, zone)
  await closeAndPublish(society, 'day-1', '17:00', null)
  await correction(society)
}

/** A ruling after the result: the day opened again, and a second sheet with its reason. */
async function correction(society: Founded): Promise<void> {
  const { secretary, zone } = society
  const closed = await record(society, 'day-1')
  const reason = 'Storrey had played two shots with a wrong ball on the 3rd and said so in the bar.'
  must(
    await reopenDay(
      secretary,
      { dayId: closed.id, version: closed.version, reason },
      momentIn(closed.date, '18:10', zone),
    ),
    'opening day 1 again',
  )
  const day = await record(society, 'day-1')
  await ruling(
    society,
    day,
    '18:15',
  )('Storrey', {
    kind: 'penalty-strokes',
    hole: 3,
    value: 2,
    clause: 'Rules of Golf 6.3c(1)',
    reason,
  })
  await closeAndPublish(society, 'day-1', '18:20', reason)
}

function ruling({ secretary, zone }: Founded, day: DayRecord, clock: string) {
  return async (
    familyName: string,
    what: { kind: Parameters<typeof ruleOnCard>[1]['kind']; reason: string } & Partial<
      Parameters<typeof ruleOnCard>[1]
    >,
  ) => {
    const cardId = cardOf(day, entryNamed(day, familyName).id).id
    must(
      await ruleOnCard(secretary, { dayId: day.id, cardId, ...what }, momentIn(day.date, clock, zone)),
      `the ruling on ${familyName}`,
    )
  }
}

async function springCup(society: Founded): Promise<void> {
  const { secretary, zone } = society
  const names = SHEET_DAY_2.flat().filter((name) => !(name in GUESTS))
  await enter(society, 'day-2', names, GUESTS_DAY_2)
  const entered = await record(society, 'day-2')
  const groups = SHEET_DAY_2.map((sheet) => ({ entryIds: sheet.map((name) => entryNamed(entered, name).id) }))
  must(
    await arrangeGroups(
      secretary,
      { dayId: entered.id, version: entered.version, groups },
      momentIn(society.dateOf('day-2'), '00:00', zone),
    ),
    'the tee sheet of day 2',
  )
  const day = await freezeAndPublish(society, 'day-2')
  const rounds = cardsOf(day, 'day-2')
  for (const group of day.groups) await playGroup(day, group, rounds, zone, { signed: true })
  await takeIn(secretary, day, day.groups, zone)
  await closeAndPublish(society, 'day-2', '16:45', null)
}

/** The day in play: two groups in, two on the course, four still to go off. */
async function dayInPlay(society: Founded, starts: readonly string[]): Promise<void> {
  const { secretary, zone } = society
  await figuresBefore(society, 'day-3')
  await enter(society, 'day-3', everybodyBut(AWAY_DAY_3), GUESTS_DAY_3)
  let entered = await record(society, 'day-3')
  must(
    await enterPlayers(secretary, {
      dayId: entered.id,
      version: entered.version,
      enter: [],
      withdraw: WITHDRAWN_DAY_3.map((name) => entryNamed(entered, name).id),
    }),
    'the withdrawals of day 3',
  )
  entered = await record(society, 'day-3')
  must(
    await makeDraw(
      secretary,
      { dayId: entered.id, version: entered.version, way: 'by-handicap-mixed', groupSize: 4, seed: 27 },
      momentIn(entered.date, '00:00', zone),
    ),
    'the draw of day 3',
  )
  // The morning field, and after a pause those who could not come before noon.
  entered = await record(society, 'day-3')
  must(
    await arrangeGroups(
      secretary,
      {
        dayId: entered.id,
        version: entered.version,
        groups: entered.groups.map(({ entryIds }, at) => ({ entryIds: [...entryIds], startTime: starts[at] })),
      },
      momentIn(entered.date, '00:00', zone),
    ),
    'the tee times of day 3',
  )
  const day = await freezeAndPublish(society, 'day-3')
  const rounds = cardsOf(day, 'day-3')
  const [first, second, third, fourth] = day.groups as [GroupRecord, GroupRecord, GroupRecord, GroupRecord]
  await playGroup(day, first, rounds, zone, { signed: true })
  await playGroup(day, second, rounds, zone, { signed: true })
  const disputed = day.entries.find((entry) => entry.id === third.entryIds[1])!
  const score = rounds.get(disputed.id)?.[10]
  await playGroup(day, third, rounds, zone, {
    holes: 16,
    differs: { card: disputed.familyName, hole: 11, score: typeof score === 'number' ? score + 1 : 6 },
  })
  await playGroup(day, fourth, rounds, zone, { holes: 11 })
  await takeIn(secretary, day, [first], zone)
}

/** Changes of figures between the days, as the house scheme and the home clubs brought them. */
async function figuresBefore({ handicapSecretary, people, dateOf }: Founded, key: 'day-2' | 'day-3'): Promise<void> {
  const changes =
    key === 'day-3'
      ? AFTER_DAY_2
      : Object.entries(EARLIER).map(([name, steps]) => ({ name, ...steps.find((step) => step.before === key)! }))
  for (const { name, tenths, reason } of changes) {
    const source = MEMBERS.find((member) => member.familyName === name)!.source
    must(
      await changeHandicap(handicapSecretary, {
        personId: people.get(name)!,
        indexTenths: tenths,
        source,
        from: dateAfter(dateOf, key),
        reason,
      }),
      `the figure of ${name}`,
    )
  }
}

/** The day before, so that every figure is older than the day it counts for. */
function dateAfter(dateOf: (key: string) => string, key: string): string {
  return new Date(Date.parse(`${dateOf(key)}T12:00:00Z`) - 3 * 86_400_000).toISOString().slice(0, 10)
}

const AFTER_DAY_2 = [{ name: 'Trevennor', tenths: 187, reason: 'Won the Spring Cup with 38 points: 2.0 off' }]

async function entriesToCome(society: Founded): Promise<void> {
  await enter(society, 'day-4', everybodyBut([...AWAY_DAY_1, 'Wrackham', 'Penhallt']), [['Rushgate', 'Storrey']])
  await enter(society, 'day-5', everybodyBut([...AWAY_DAY_1, ...AWAY_DAY_3]), [])
}
