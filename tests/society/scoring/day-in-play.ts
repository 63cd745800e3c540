// A published day of eight in two groups, and phones that write on it.

import { randomUUID } from 'node:crypto'
import type { Actor } from '@/lib/facts/actor'
import type { CallDay } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { CardId, DayId, DeviceId, EntryId } from '@/lib/facts/ids'
import type { DeviceFact, FactAnswer, WrittenScore } from '@/lib/facts/score-fact'
import { arrangeSides } from '@/lib/society/arrange-sides'
import { enterGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { deliverFacts } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { makeDraw } from '@/lib/society/make-draw'
import { publishStart } from '@/lib/society/publish-start'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { aDay, got, type World, world } from '../setup/world'

export { got }

export interface DayInPlay {
  readonly w: World
  readonly dayId: DayId
  readonly slug: string
  readonly daySlug: string
  readonly close: () => Promise<void>
  readonly record: () => Promise<DayRecord>
  readonly version: () => Promise<number>
  readonly scorer: (group: number) => Extract<Actor, { kind: 'scorer' }>
  readonly cardOf: (entryId: EntryId) => CardId
  /** Entry ids of a group, in its order. */
  readonly players: (group: number) => readonly EntryId[]
}

export async function dayInPlay(over: Partial<CallDay> = {}): Promise<DayInPlay> {
  const own = await ownBook()
  const w = await world()
  return { ...(await published(w, 'fernbrake', over)), close: own.close }
}

/** A further published day in the same book. */
export async function published(w: World, slug: string, over: object = {}): Promise<Omit<DayInPlay, 'close'>> {
  const { dayId, slug: daySlug } = await aDay(w, over)
  const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
  const version = async () => (await record()).version
  got(
    await enterPlayers(w.actor, {
      dayId,
      version: await version(),
      enter: w.people.slice(0, 7).map((personId) => ({ personId })),
    }),
  )
  got(
    await enterGuest(w.actor, {
      dayId,
      version: await version(),
      hostId: asId(w.people[5]!),
      // A second day of the same society knows him.
      namesake: 'same',
      firstName: 'Fintan',
      familyName: 'Rushgate',
      gender: 'men',
      claimedTenths: 150,
    }),
  )
  got(await freezeHandicaps(w.actor, { dayId, version: await version() }))
  got(await makeDraw(w.actor, { dayId, version: await version(), way: 'entry-order', groupSize: 4, seed: 1 }))
  const drawn = await record()
  const pairs = drawn.competitions.find((one) => one.format.startsWith('four-ball'))
  if (pairs)
    got(
      await arrangeSides(w.actor, {
        dayId,
        version: drawn.version,
        competitionId: pairs.id,
        sides: drawn.groups.flatMap(({ entryIds }) => [entryIds.slice(0, 2), entryIds.slice(2)]).map((one) => [...one]),
      }),
    )
  got(await publishStart(w.actor, { dayId, version: await version() }))
  const ready = await record()
  return {
    w,
    dayId,
    slug,
    daySlug,
    record,
    version,
    scorer: (group) => ({
      kind: 'scorer',
      societyId: w.actor.societyId,
      dayId,
      groupId: ready.groups[group - 1]!.id,
    }),
    cardOf: (entryId) => ready.cards.find((card) => card.entryId === entryId)!.id,
    players: (group) => ready.groups[group - 1]!.entryIds,
  }
}

/** A phone with its own numbers. What it has not been answered for stays in its outbox. */
export class Phone {
  readonly deviceId = asId<DeviceId>(`phone-${randomUUID()}`)
  outbox: DeviceFact[] = []
  answers: FactAnswer[] = []
  #seq = 0

  constructor(
    readonly day: Pick<DayInPlay, 'scorer' | 'cardOf'>,
    readonly group: number,
    readonly writer: string,
  ) {}

  score(entryId: EntryId, hole: number, score: WrittenScore): this {
    this.outbox.push({
      kind: 'score',
      seq: ++this.#seq,
      cardId: asId(this.day.cardOf(entryId)),
      writer: asId(this.writer),
      writtenAt: '2031-06-14T10:00:00Z',
      hole,
      score,
    })
    return this
  }

  round(entryId: EntryId, scores: readonly WrittenScore[]): this {
    scores.forEach((score, at) => {
      this.score(entryId, at + 1, score)
    })
    return this
  }

  sign(entryId: EntryId, role: 'player' | 'marker', scores: readonly WrittenScore[], signer = this.writer): this {
    this.outbox.push({
      kind: 'signature',
      seq: ++this.#seq,
      cardId: asId(this.day.cardOf(entryId)),
      writer: asId(signer),
      writtenAt: '2031-06-14T14:00:00Z',
      role,
      scores: [...scores],
    })
    return this
  }

  /** Delivers everything that waits, and keeps the answers. */
  async send(now = new Date('2031-06-14T14:05:00Z')): Promise<readonly FactAnswer[]> {
    const answer = got(
      await deliverFacts(this.day.scorer(this.group), { deviceId: this.deviceId, facts: this.outbox }, now),
    )
    this.answers.push(...answer.answers)
    this.outbox = this.outbox.filter((fact) => fact.seq > answer.lastSeq)
    return answer.answers
  }
}

export const LEVEL: readonly number[] = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]

/** Level par and so many over, spread from the first hole on. */
export function over(strokes: number): number[] {
  return LEVEL.map((par, at) => par + Math.floor(strokes / 18) + (at < strokes % 18 ? 1 : 0))
}

/** Every card of the day written by the player's own phone and signed by player and marker. */
export async function playEverything(day: DayInPlay, scoresOf: (at: number) => readonly WrittenScore[]): Promise<void> {
  const record = await day.record()
  let at = 0
  for (const group of record.groups) {
    const phone = new Phone(day, group.number, group.entryIds[0]!)
    for (const entryId of group.entryIds) {
      const scores = scoresOf(at++)
      const marker = record.cards.find((card) => card.entryId === entryId)!.markerId!
      phone.round(entryId, scores).sign(entryId, 'player', scores, entryId).sign(entryId, 'marker', scores, marker)
    }
    await phone.send()
  }
}
