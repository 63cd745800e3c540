// Plays a day of the demonstration the way a society does: one phone a group, hole by hole, signed by player and marker.

import type { Actor } from '@/lib/facts/actor'
import { addMinutes, momentIn } from '@/lib/facts/calendar'
import type { CardRecord, DayRecord, EntryRecord, GroupRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import type { DeviceFact, WrittenScore } from '@/lib/facts/score-fact'
import { deliverFacts } from '@/lib/society/enter-score'
import { takeCardIn } from '@/lib/society/take-card-in'
import { scorerOf } from '@/lib/society/who-is-asking'
import { TRUTH } from './members'
import { must } from './must'
import { CHANCE, REMEMBERED, roundOf } from './rounds'

/** Minutes for a hole, the walk to the next tee in it. */
const MINUTES_A_HOLE = 14

export interface HowFar {
  /** Holes played; all when left out. */
  readonly holes?: number
  readonly signed?: boolean
  /** By family name: holes left blank on the card. */
  readonly blank?: Readonly<Record<string, readonly number[]>>
  /** The marker's own phone says something else. */
  readonly differs?: { readonly card: string; readonly hole: number; readonly score: WrittenScore }
}

/** Cards of everybody in the day, by entry id. */
export function cardsOf(day: DayRecord, key: string): ReadonlyMap<string, readonly WrittenScore[]> {
  const tees = new Map(day.tees.map((tee) => [tee.id, tee]))
  return new Map(
    day.entries
      .filter((entry) => entry.status === 'entered')
      .map((entry) => {
        const remembered = key === 'day-2' ? REMEMBERED[entry.familyName] : undefined
        const tee = tees.get(entry.roundTeeId)
        if (!tee || entry.indexTenths === null) throw new Error(`${entry.familyName} cannot play: no tee or no figure.`)
        const truth = TRUTH[entry.familyName] ?? 0
        return [entry.id, remembered ?? roundOf(entry.familyName, CHANCE[key] ?? key, tee, entry.indexTenths, truth)]
      }),
  )
}

export async function playGroup(
  day: DayRecord,
  group: GroupRecord,
  rounds: ReadonlyMap<string, readonly WrittenScore[]>,
  zone: string,
  how: HowFar = {},
): Promise<void> {
  const cards = group.entryIds.map((entryId) => cardOf(day, entryId))
  const entries = new Map(day.entries.map((entry) => [entry.id, entry]))
  const teeOff = momentIn(day.date, group.startTime, zone)
  const holes = how.holes ?? day.round.holes
  const holder = group.entryIds[0]!
  const facts: DeviceFact[] = []
  const at = (played: number) => new Date(teeOff.getTime() + played * MINUTES_A_HOLE * 60_000).toISOString()
  const add = (fact: Unnumbered) => facts.push({ ...fact, seq: facts.length + 1 } as DeviceFact)

  for (let played = 1; played <= holes; played++) {
    const hole = ((group.startHole - 1 + played - 1) % day.round.holes) + 1
    for (const card of cards) {
      if (how.blank?.[nameOf(entries, card)]?.includes(hole)) continue
      const score = rounds.get(card.entryId)?.[hole - 1] ?? 'x'
      add({ kind: 'score', cardId: card.id, hole, score, writer: holder, writtenAt: at(played) })
    }
  }
  if (how.signed) for (const card of cards) sign(card, rounds, how, nameOf(entries, card), at(holes + 1), add)
  const when = new Date(teeOff.getTime() + (holes + 1) * MINUTES_A_HOLE * 60_000)
  if (facts.length > 0) await deliver(group, 'phone', facts, when)
  if (how.differs) await differ(day, group, how.differs, entries, when)
}

type Unnumbered = DeviceFact extends infer F ? (F extends DeviceFact ? Omit<F, 'seq'> : never) : never

function sign(
  card: CardRecord,
  rounds: ReadonlyMap<string, readonly WrittenScore[]>,
  how: HowFar,
  name: string,
  writtenAt: string,
  add: (fact: Unnumbered) => void,
): void {
  if (how.blank?.[name] || card.markerId === null) return
  const scores = [...(rounds.get(card.entryId) ?? [])]
  const common = { kind: 'signature' as const, cardId: card.id, scores, writtenAt }
  add({ ...common, role: 'player', writer: card.entryId })
  add({ ...common, role: 'marker', writer: card.markerId })
}

async function differ(
  day: DayRecord,
  group: GroupRecord,
  { card: name, hole, score }: NonNullable<HowFar['differs']>,
  entries: ReadonlyMap<string, EntryRecord>,
  when: Date,
): Promise<void> {
  const card = group.entryIds.map((id) => cardOf(day, id)).find((one) => nameOf(entries, one) === name)
  if (!card?.markerId) throw new Error(`${name} is not in group ${group.number}.`)
  const writtenAt = new Date(when.getTime() - 60_000).toISOString()
  await deliver(
    group,
    'marker',
    [{ kind: 'score', seq: 1, cardId: card.id, hole, score, writer: card.markerId, writtenAt }],
    when,
  )
}

async function deliver(group: GroupRecord, phone: string, facts: readonly DeviceFact[], when: Date): Promise<void> {
  const scorer = must(await scorerOf(group.linkKey, when), `the link of group ${group.number}`)
  const answer = must(
    await deliverFacts(scorer, { deviceId: `demonstration-${phone}`, facts: [...facts] }, when),
    `the scores of group ${group.number}`,
  )
  const lost = answer.answers.find((one) => one.answer !== 'received')
  if (lost) throw new Error(`A score of group ${group.number} was not taken: ${JSON.stringify(lost)}`)
}

/** Cards of these groups across the desk, in the order in which they came in. */
export async function takeIn(
  actor: Actor,
  day: DayRecord,
  groups: readonly GroupRecord[],
  zone: string,
): Promise<void> {
  for (const group of groups) {
    const when = momentIn(day.date, addMinutes(group.startTime, (day.round.holes + 2) * MINUTES_A_HOLE), zone)
    for (const entryId of group.entryIds)
      must(
        await takeCardIn(actor, { dayId: day.id, cardId: cardOf(day, entryId).id }, when),
        `taking in a card of group ${group.number}`,
      )
  }
}

export function cardOf(day: DayRecord, entryId: EntryId): CardRecord {
  const card = day.cards.find((one) => one.entryId === entryId)
  if (!card) throw new Error(`Entry ${entryId} has no card.`)
  return card
}

export function entryNamed(day: DayRecord, familyName: string): EntryRecord {
  const entry = day.entries.find((one) => one.familyName === familyName)
  if (!entry) throw new Error(`${familyName} is not entered on ${day.name}.`)
  return entry
}

function nameOf(entries: ReadonlyMap<string, EntryRecord>, card: CardRecord): string {
  return entries.get(card.entryId)?.familyName ?? ''
}
