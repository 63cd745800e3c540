// A day of the book by lot, from the call to the sheet, through the use cases that the desk and the phones go through.

import type { Actor } from '@/lib/facts/actor'
import type { CallDay } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId, PersonId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { lotFrom, shuffled } from '@/lib/rules/draw/lot'
import { holesFrom } from '@/lib/rules/hole-numbers'
import { allowOnBoard } from '@/lib/society/allow-on-board'
import { arrangePairings } from '@/lib/society/arrange-pairings'
import { makeTeams } from '@/lib/society/arrange-teams'
import { callAgain } from '@/lib/society/call-again'
import { closeDay } from '@/lib/society/close-day'
import { enterPlayers } from '@/lib/society/enter-players'
import { deliverFacts, keyCard } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { courseById, keepCourse } from '@/lib/society/keep-course'
import { keepPerson } from '@/lib/society/keep-person'
import { keyBall } from '@/lib/society/key-ball'
import { makeDraw } from '@/lib/society/make-draw'
import { publishResult } from '@/lib/society/publish-result'
import { publishStart } from '@/lib/society/publish-start'
import { ruleOnCard } from '@/lib/society/rule-on-card'
import { takeCardIn } from '@/lib/society/take-card-in'
import { book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { asId } from '../setup/ids'
import { aDay, course, got, type World } from '../society/setup/world'
import { competitionOf, type Family } from './families'

type Lot = (below: number) => number

export interface PlayedDay {
  readonly dayId: DayId
  readonly daySlug: string
  readonly record: () => Promise<DayRecord>
  readonly scorer: (groupId: string) => Extract<Actor, { kind: 'scorer' }>
}

const NAMES = 'Brackenrigg Cawfield Dunmoor Eldergate Farsley Gorsedale'.split(' ')

/** Six more than the eight of the small society. */
export async function morePeople(w: World): Promise<readonly PersonId[]> {
  const more: PersonId[] = []
  for (const [at, familyName] of NAMES.entries())
    more.push(
      got(
        await keepPerson(w.actor, {
          firstName: 'Rowan',
          familyName,
          gender: at % 3 === 0 ? 'women' : 'men',
          kind: 'member',
          handicapSource: 'society',
          indexTenths: 36 + at * 47,
        }),
      ).personId,
    )
  return [...w.people, ...more]
}

type NineHoles = Pick<CallDay, 'courseId' | 'teeMen' | 'teeWomen'>

/** Nine holes, indexes one to nine. */
export async function nineHoles(w: World): Promise<NineHoles> {
  const tees = course('Fellside').tees.map((tee) => ({
    ...tee,
    courseRatingTenths: 346,
    holes: tee.holes.slice(0, 9).map((hole, at) => ({ ...hole, strokeIndex: [3, 6, 9, 1, 7, 4, 5, 8, 2][at]! })),
  }))
  const { courseId } = got(await keepCourse(w.actor, { ...course('Fellside'), tees }))
  const kept = got(await courseById(w.actor, courseId)).tees
  const teeOf = (gender: string) => kept.find((tee) => tee.gender === gender)!.teeId
  return { courseId, teeMen: teeOf('men'), teeWomen: teeOf('women') }
}

const EVENING = new Date('2031-06-14T18:00:00Z')

export class Playing {
  readonly lot: Lot
  /** Each group's phone numbers what it sends. */
  readonly #sent = new Map<string, number>()

  constructor(
    readonly w: World,
    readonly people: readonly PersonId[],
    readonly seed: number,
    /** A course of nine holes with a rating of its own. */
    readonly nine: NineHoles,
  ) {
    this.lot = lotFrom(seed)
  }

  readonly at = async (day: PlayedDay) => ({ dayId: day.dayId, version: (await day.record()).version })

  private dayOf(dayId: DayId, daySlug: string): PlayedDay {
    const { societyId } = this.w.actor
    return {
      dayId,
      daySlug,
      record: async () => (await readDayRecord({ societyId, dayId }))!,
      scorer: (groupId) => ({ kind: 'scorer', societyId, dayId, groupId: asId(groupId) }),
    }
  }

  /** Called, entered, frozen, drawn and published. */
  async called(family: Family): Promise<PlayedDay> {
    const { lot, w } = this
    const holes = lot(5) === 0 && family.rounds === undefined ? 9 : 18
    const whole = family.groupSize === 3 ? 9 : 8 + lot(6)
    const formats = family.formats[lot(family.formats.length)]!
    const { dayId, slug } = await aDay(w, {
      name: `${family.name} ${this.seed}`,
      holes,
      startKind: lot(2) === 0 ? 'shotgun' : 'tee-times',
      places: null,
      entriesCloseOn: null,
      ...(holes === 9 ? this.nine : {}),
      competitions: formats.map((format, at) => competitionOf(format, whole, holes, this.seed + at)),
    })
    const day = this.dayOf(dayId, slug)
    const enter = shuffled(this.people, lot)
      .slice(0, whole)
      .map((personId) => ({ personId }))
    got(await enterPlayers(w.actor, { ...(await this.at(day)), enter }))
    got(await freezeHandicaps(w.actor, await this.at(day)))
    const draw = { way: 'random' as const, groupSize: family.groupSize ?? 4, seed: this.seed }
    got(await makeDraw(w.actor, { ...(await this.at(day)), ...draw }))
    if (family.teams) {
      got(await makeTeams(w.actor, { ...(await this.at(day)), names: ['Heath', 'Links'], seed: this.seed }))
      // Where the lot left no group with two who could meet, the pairings of the draw stand as they are.
      for (const one of (await day.record()).competitions) {
        const paired = await arrangePairings(w.actor, {
          ...(await this.at(day)),
          competitionId: one.id,
          pairings: null,
        })
        if (!paired.ok && paired.code !== 'no-opponents') got(paired)
      }
    }
    got(await publishStart(w.actor, await this.at(day)))
    got(await allowOnBoard(w.actor, { ...(await this.at(day)), showsPosition: true }))
    return day
  }

  /** A further round of the same field, counted together with the first. */
  async again(first: PlayedDay): Promise<PlayedDay> {
    const { dayId, slug } = got(
      await callAgain(this.w.actor, {
        ...(await this.at(first)),
        name: `Second round ${this.seed}`,
        date: '2031-06-14',
        firstTee: '14:30',
        courseId: this.w.courseId,
        holes: 18,
      }),
    )
    await book().day.update({ where: { id: dayId }, data: { playedAheadAt: new Date() } })
    const day = this.dayOf(dayId, slug)
    const record = await day.record()
    if (record.frozenAt === null) got(await freezeHandicaps(this.w.actor, await this.at(day)))
    if (record.startPublishedAt === null) got(await publishStart(this.w.actor, await this.at(day)))
    return day
  }

  /** So many holes of every card, in the order of play: the odd groups by phone, the others keyed from paper. */
  async played(day: PlayedDay, share: number): Promise<void> {
    const { lot, w } = this
    const record = await day.record()
    const takesX = record.competitions.some((one) => JSON.stringify(one.format).includes('stableford'))
    for (const group of record.groups) {
      const order = holesFrom(record.round, group.startHole)
      const played = new Set(order.slice(0, Math.round(order.length * share)))
      for (const card of record.cards.filter(({ entryId }) => group.entryIds.includes(entryId))) {
        const entry = record.entries.find(({ id }) => id === card.entryId)!
        const tee = record.tees.find(({ id }) => id === entry.roundTeeId)!
        const score = (par: number): WrittenScore =>
          takesX && lot(25) === 0 ? 'x' : par + lot(4) - (lot(6) === 0 ? 1 : 0)
        const written = new Map(
          record.facts.filter((fact) => fact.cardId === card.id).map((fact) => [fact.hole, fact.score]),
        )
        const scores = tee.holes.map(({ hole, par }) => (played.has(hole) ? (written.get(hole) ?? score(par)) : null))
        const isWhole = share === 1
        if (group.number % 2 === 0) {
          const signed = { player: isWhole, marker: isWhole }
          got(await keyCard(w.actor, { dayId: day.dayId, cardId: card.id, scores, signed }, EVENING))
        } else
          await this.byPhone(
            day,
            group.id,
            card,
            tee.holes.map(({ hole }) => hole),
            scores,
            written,
          )
      }
    }
    if (share < 1) for (const one of record.competitions) await this.balls(day, one)
  }

  private async byPhone(
    day: PlayedDay,
    groupId: string,
    card: DayRecord['cards'][number],
    holes: readonly number[],
    scores: readonly WrittenScore[],
    written: ReadonlyMap<number, WrittenScore>,
  ): Promise<void> {
    const common = { cardId: card.id, writer: card.entryId, writtenAt: '2031-06-14T12:00:00Z' }
    const next = () => {
      const seq = (this.#sent.get(groupId) ?? 0) + 1
      this.#sent.set(groupId, seq)
      return seq
    }
    const facts = holes.flatMap((hole, at) =>
      scores[at] === null || written.has(hole)
        ? []
        : [{ kind: 'score' as const, seq: next(), ...common, hole, score: scores[at]! }],
    )
    const deviceId = `phone-of-${groupId}-${this.seed}`
    if (facts.length > 0) got(await deliverFacts(day.scorer(groupId), { deviceId, facts }, EVENING))
  }

  /** Whose drives were taken, and a ball that is lost on some hole. */
  private async balls(day: PlayedDay, one: DayRecord['competitions'][number]): Promise<void> {
    const { lot, w } = this
    const record = await day.record()
    for (const side of one.sides) {
      if (one.format.startsWith('yellow') && lot(2) === 0)
        got(await keyBall(w.actor, { dayId: day.dayId, sideId: side.id, ballLostOn: 1 + lot(record.round.holes) }))
      if (one.terms.minimumDrives !== undefined) {
        const drives = Array.from({ length: record.round.holes }, () => side.entryIds[lot(side.entryIds.length)]!)
        got(await keyBall(w.actor, { dayId: day.dayId, sideId: side.id, drives }))
      }
    }
  }

  /** One player withdraws on the way, where the lot says so, and one card is not returned. */
  async trouble(day: PlayedDay): Promise<void> {
    const { lot, w } = this
    const record = await day.record()
    if (lot(3) === 0) {
      const card = record.cards[lot(record.cards.length)]!
      const kind = lot(2) === 0 ? ('no-return' as const) : ('withdrawn' as const)
      got(await ruleOnCard(w.actor, { dayId: day.dayId, cardId: card.id, kind, reason: 'Went home' }, EVENING))
    }
  }

  /** Accepted, closed and published. */
  async closed(day: PlayedDay): Promise<void> {
    const { w } = this
    const { cards } = await day.record()
    for (const card of cards) {
      const taken = await takeCardIn(w.actor, { dayId: day.dayId, cardId: card.id }, EVENING)
      if (taken.ok) continue
      const stands = { dayId: day.dayId, cardId: card.id, kind: 'card-stands' as const, reason: 'Signed in the bar' }
      got(await ruleOnCard(w.actor, stands, EVENING))
      got(await takeCardIn(w.actor, { dayId: day.dayId, cardId: card.id }, EVENING))
    }
    got(await closeDay(w.actor, await this.at(day), EVENING))
    const without = 'Played for the game alone'
    got(await publishResult(w.actor, { ...(await this.at(day)), without }, EVENING))
  }
}
