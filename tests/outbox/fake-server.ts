// A server for the outbox, in memory and by the contract: numbers checked per device, a repeat gets its first answer,
// a gap takes nothing, a closed card makes late facts. Only the rules the phone relies on, none of the counting.

import type { CardPack, PackCard } from '@/lib/facts/card-pack'
import type { DeviceId } from '@/lib/facts/ids'
import type { Delivery, DeliveryAnswer, DeviceFact, FactAnswer, WrittenScore } from '@/lib/facts/score-fact'
import { deviceIn, phoneMark, writerKey } from '@/lib/facts/writer'
import type { Looking } from '@/lib/outbox/post'
import type { Posted } from '@/lib/outbox/sender'
import { withConcession } from '@/lib/rules/matches/concede'

export interface TakenFact {
  readonly deviceId: DeviceId
  readonly fact: DeviceFact
}

export class FakeServer {
  readonly taken: TakenFact[] = []
  readonly answers = new Map<DeviceId, FactAnswer[]>()
  pack: CardPack
  private readonly holds = new Map<string, number>()
  private minutes = 0
  ended: { code: string; sentence: string } | null = null
  /** Refuses these, by card, hole and score, with a code. */
  refuses: (fact: DeviceFact) => { code: string; sentence: string } | null = () => null

  constructor(pack: CardPack) {
    this.pack = pack
  }

  deliver(delivery: Delivery): Posted {
    if (this.ended) return { kind: 'ended', ...this.ended }
    const answers = this.answers.get(delivery.deviceId) ?? []
    const first = delivery.facts[0]
    if (first && first.seq > answers.length + 1) return { kind: 'gap', expected: answers.length + 1 }
    const said: FactAnswer[] = []
    for (const fact of delivery.facts) {
      const before = answers[fact.seq - 1]
      if (before) {
        said.push(before)
        continue
      }
      if (fact.seq !== answers.length + 1) throw new Error(`fact ${fact.seq} after ${answers.length}: out of order`)
      const answer = this.take(delivery.deviceId, fact)
      answers.push(answer)
      said.push(answer)
    }
    this.answers.set(delivery.deviceId, answers)
    const answer: DeliveryAnswer = {
      lastSeq: answers.length,
      answers: said,
      scoreVersion: this.pack.scoreVersion,
    }
    return { kind: 'answered', answer }
  }

  private take(deviceId: DeviceId, fact: DeviceFact): FactAnswer {
    const no = this.refuses(fact)
    if (no) return { seq: fact.seq, answer: 'refused', ...no }
    const card = this.pack.cards.find((each) => each.cardId === fact.cardId)
    if (!card) return { seq: fact.seq, answer: 'refused', code: 'card-not-in-group', sentence: 'Not in this group.' }
    this.taken.push({ deviceId, fact })
    if (card.state !== 'out') return { seq: fact.seq, answer: 'late', sentence: 'This card is signed and handed in.' }
    this.change(deviceId, card, fact)
    return { seq: fact.seq, answer: 'received' }
  }

  private ballsAfter(fact: Extract<DeviceFact, { kind: 'drive' | 'ball-lost' }>): NonNullable<CardPack['balls']> {
    return (this.pack.balls ?? []).map((ball) => {
      if (ball.sideId !== fact.sideId) return ball
      if (fact.kind === 'drive') return { ...ball, drives: ball.drives.with(fact.hole - 1, fact.entryId) }
      const others = ball.lost.filter((hole) => hole !== fact.hole)
      return { ...ball, lost: fact.lost ? [...others, fact.hole] : others }
    })
  }

  private change(deviceId: DeviceId, card: PackCard, fact: DeviceFact): void {
    if (fact.kind === 'drive' || fact.kind === 'ball-lost') {
      this.pack = { ...this.pack, scoreVersion: this.pack.scoreVersion + 1, balls: this.ballsAfter(fact) }
      return
    }
    if (fact.kind === 'concession') {
      const matches = (this.pack.matches ?? []).map((one) =>
        one.match.id === fact.matchId ? { ...one, match: withConcession(one.match, fact) } : one,
      )
      this.pack = { ...this.pack, scoreVersion: this.pack.scoreVersion + 1, matches }
      return
    }
    const changed: PackCard =
      fact.kind === 'score'
        ? this.written(deviceId, card, fact)
        : {
            ...card,
            signatures: [...card.signatures, { role: fact.role, entryId: fact.writer, signedAt: fact.writtenAt }],
            state: card.signatures.some((each) => each.role !== fact.role) ? 'handed-in' : 'out',
          }
    this.pack = {
      ...this.pack,
      scoreVersion: this.pack.scoreVersion + 1,
      cards: this.pack.cards.map((each) => (each.cardId === card.cardId ? changed : each)),
    }
  }

  mark(deviceId: DeviceId): string {
    return phoneMark(deviceIn(this.pack.group.id, deviceId))
  }

  private written(deviceId: DeviceId, card: PackCard, fact: Extract<DeviceFact, { kind: 'score' }>): PackCard {
    const key = writerKey(fact.writer, this.mark(deviceId))
    const written = { ...card.written }
    const numbers = { ...card.numbers }
    const put = (at: string, score: WrittenScore, seq: number | null) => {
      const none = card.holes.map(() => null)
      written[at] = (written[at] ?? none).with(fact.hole - 1, score)
      numbers[at] = (numbers[at] ?? none).with(fact.hole - 1, seq)
    }
    for (const { phone, seq } of fact.replaces ?? []) {
      const other = writerKey(fact.writer, phone)
      if ((numbers[other]?.[fact.hole - 1] ?? seq + 1) <= seq) put(other, null, null)
    }
    put(key, fact.score, fact.seq)
    return { ...card, written, numbers }
  }

  /** What a phone that looks says of whose it is; the clock is the number of things said. */
  look({ deviceId, holder }: Looking): CardPack {
    const phone = this.mark(deviceId)
    if (holder && this.holds.get(phone) !== holder.number) {
      this.holds.set(phone, holder.number)
      this.minutes++
      const since = new Date(Date.parse('2026-04-25T10:40:00.000Z') + this.minutes * 60_000).toISOString()
      const others = (this.pack.holders ?? []).filter((one) => one.phone !== phone)
      this.pack = { ...this.pack, holders: [...others, { entryId: holder.entryId, phone, since, lastSeq: 0 }] }
    }
    return this.numbered()
  }

  private numbered(): CardPack {
    const holders = this.pack.holders?.map((one) => ({ ...one, lastSeq: this.lastSeqOf(one.phone) }))
    return holders ? { ...this.pack, holders } : this.pack
  }

  private lastSeqOf(mark: string): number {
    for (const [deviceId, answers] of this.answers) if (this.mark(deviceId) === mark) return answers.length
    return 0
  }

  /** Put back from a copy made after the device's first `kept` facts. */
  forgetAfter(deviceId: DeviceId, kept: number): void {
    this.answers.set(deviceId, (this.answers.get(deviceId) ?? []).slice(0, kept))
    const gone = this.taken.filter((each) => each.deviceId === deviceId && each.fact.seq > kept)
    for (const each of gone) this.taken.splice(this.taken.indexOf(each), 1)
  }
}
