// A phone on the course: the outbox's own sender, post and reading of the card, on a memory store that outlives every
// reload, and a clock that may be days out.
import type { CardId, DeviceId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { deviceIn, phoneMark } from '@/lib/facts/writer'
import { cardsNow, toUndo } from '@/lib/outbox/card-now'
import type { FactDraft, KeptFact } from '@/lib/outbox/kept-fact'
import { memoryStore } from '@/lib/outbox/memory-store'
import { alone } from '@/lib/outbox/one-sender'
import { fetchPack, postDelivery } from '@/lib/outbox/post'
import { type Sent, sendWaiting } from '@/lib/outbox/sender'
import { mayNotSign } from '@/lib/outbox/signing'
import type { OutboxStore } from '@/lib/outbox/store'
import { asId } from '../setup/ids'
import type { PreparedGroup } from './prepared-book'

type Roll = (sides: number) => number

const DAY_MS = 24 * 3600 * 1000

export class SimPhone {
  readonly store: OutboxStore
  /** Everything the holder wrote: what must be in the book or still on the phone in the end. */
  readonly wrote: { readonly seq: number; readonly draft: FactDraft }[] = []
  #clock: number

  constructor(
    readonly deviceId: DeviceId,
    readonly group: Omit<PreparedGroup, 'pack'> & Partial<Pick<PreparedGroup, 'pack'>>,
    readonly holder: string,
    daysOut: number,
  ) {
    this.store = memoryStore(() => deviceId)
    this.#clock = Date.UTC(2031, 5, 14, 9) + daysOut * DAY_MS
  }

  #now = () => {
    this.#clock += 1000
    return new Date(this.#clock)
  }

  async #keep(draft: FactDraft, before: WrittenScore = null, undoes?: number): Promise<void> {
    const kept = await this.store.keep(this.group.link, { draft, before, undoes }, this.#now().toISOString())
    if (!kept.ok) throw new Error(kept.sentence)
    this.wrote.push({ seq: kept.value.seq, draft })
  }

  write(cardId: CardId, hole: number, score: WrittenScore): Promise<void> {
    return this.#keep({ kind: 'score', cardId, writer: asId(this.holder), hole, score })
  }

  /** Opened on the first tee, where there is a signal. */
  async begin(): Promise<void> {
    if (!this.group.pack) return this.look()
    await this.store.keepPack(this.group.link, this.group.pack, this.#now().toISOString())
  }

  #mark = () => phoneMark(deviceIn(this.group.groupId, this.deviceId))

  async #cards() {
    const kept = await this.store.pack(this.group.link)
    return kept ? cardsNow(kept.pack, await this.store.facts(this.group.link), this.#mark()) : []
  }

  async undo(): Promise<void> {
    const undo = toUndo(await this.store.facts(this.group.link), await this.#cards(), this.#mark())
    if (!undo || undo.changedTo !== undefined || undo.kept.fact.kind !== 'score') return
    const last = { ...undo.kept, fact: undo.kept.fact }
    const { cardId, hole, writer, score } = last.fact
    await this.#keep({ kind: 'score', cardId, writer, hole, score: last.before }, score, last.seq)
  }

  /** Whole cards, as after a round in a valley: `scoreOf` by place in the group and hole. */
  async writeRound(holes: number, scoreOf: (place: number, hole: number) => WrittenScore): Promise<void> {
    for (let hole = 1; hole <= holes; hole++)
      for (const [place, cardId] of this.group.cardIds.entries()) await this.write(cardId, hole, scoreOf(place, hole))
  }

  /** Player and marker sign on this phone whatever the phone lets them sign. */
  async signAll(): Promise<void> {
    for (const [place, entryId] of this.group.entryIds.entries())
      for (const [role, signer] of [
        ['player', entryId],
        ['marker', this.group.markerIds[place]!],
      ] as const) {
        const card = (await this.#cards()).find((one) => one.card.entryId === entryId)
        if (!card || mayNotSign(card, role, signer)) continue
        const scores = card.holes.map((hole) => hole.score)
        await this.#keep({ kind: 'signature', cardId: card.card.cardId, writer: signer, role, scores })
      }
  }

  /** One go of the sender, as the courier makes it. */
  talk(tab = 'page'): Promise<Sent | 'busy'> {
    const { store, group } = this
    const send = () => sendWaiting(store, postDelivery, group.link, this.#now)
    return alone(store, group.link, undefined, tab, () => this.#now().getTime(), send)
  }

  /** Two tabs on a browser whose locks do not work: both send. */
  async twoTabs(): Promise<void> {
    const send = () => sendWaiting(this.store, postDelivery, this.group.link, this.#now)
    await Promise.all([send(), send()])
  }

  /** Looks at the server, as the page does every twenty seconds. */
  async look(): Promise<void> {
    const got = await fetchPack(this.group.link)
    if (got.kind !== 'pack') return
    const kept = await this.store.pack(this.group.link)
    if (!kept || kept.pack.scoreVersion <= got.pack.scoreVersion)
      await this.store.keepPack(this.group.link, got.pack, this.#now().toISOString())
  }

  facts(): Promise<readonly KeptFact[]> {
    return this.store.facts(this.group.link)
  }
}

export function somePhones(seed: number, group: PreparedGroup, roll: Roll): readonly SimPhone[] {
  return Array.from({ length: 1 + roll(3) }, (_, at) => {
    const holder = group.entryIds[roll(group.entryIds.length)]!
    // Most clocks are right; some are days, some are years out. They are shown and never trusted.
    const daysOut = roll(3) > 0 ? 0 : roll(2) ? roll(7) - 3 : roll(3000) - 1500
    return new SimPhone(asId(`run-${seed}-phone-${at}-of-many`), group, holder, daysOut)
  })
}
