// Promise: the card as a phone reads it (the pack, and its own scores laid over it) is the card the server reads once it
// has those scores: several phones, names, take-overs, undos and signatures in any order.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currentCard, keyOf } from '@/lib/boards/current-card'
import type { CardPack } from '@/lib/facts/card-pack'
import type { CardId, DeviceId, EntryId, GroupId } from '@/lib/facts/ids'
import type { DeviceFact } from '@/lib/facts/score-fact'
import { deviceIn, phoneMark, writerKey } from '@/lib/facts/writer'
import { type CardNow, cardsNow, replacedBy, toUndo, writtenBy } from '@/lib/outbox/card-now'
import { type Me, takingOver } from '@/lib/outbox/holding'
import { type FactDraft, type KeptFact, unanswered } from '@/lib/outbox/kept-fact'
import { mayNotSign } from '@/lib/outbox/signing'
import { afterFact, type GroupCards, takeFact } from '@/lib/society/take-fact'
import { aldermossPack } from '../outbox/aldermoss-four'
import { asId } from '../setup/ids'

const NAMES: readonly [EntryId, EntryId] = [asId('haldane'), asId('coldbrook')]
const CARD = asId<CardId>('card-haldane')
const HOLES = [1, 2]
const AT = '2026-04-25T12:53:00.000Z'
const GROUP = asId<GroupId>('group-3')

/** Two holes only, so that everything meets. */
const BLANK: CardPack = (() => {
  const pack = aldermossPack()
  const cards = pack.cards
    .filter((card) => card.cardId === CARD)
    .map((card) => ({ ...card, holes: card.holes.slice(0, HOLES.length), markerId: NAMES[1] }))
  return { ...pack, cards }
})()

class Server {
  group: GroupCards = {
    status: 'in-play',
    holes: HOLES.length,
    firstHole: 1,
    entryIds: [...NAMES],
    nameOf: {},
    cards: [{ id: CARD, entryId: NAMES[0], markerId: NAMES[1], state: 'out', takenInAt: null }],
    facts: [],
    rulings: [],
    signatures: [],
  }
  version = 0
  readonly lastSeq = new Map<DeviceId, number>()
  readonly holders = new Map<DeviceId, { entryId: EntryId; since: string }>()

  /** What becomes of the card when these come from a phone: saved or only tried. */
  after(group: GroupCards, device: DeviceId, facts: readonly DeviceFact[]): GroupCards {
    let now = group
    for (const fact of facts) now = afterFact(now, fact, device, takeFact(now, fact, device), new Date(AT))
    return now
  }

  read(group = this.group) {
    const card = group.cards[0]!
    return { ...currentCard({ card, ...group }), state: card.state }
  }

  pack(): CardPack {
    const now = this.read()
    const written: Record<string, (number | 'x' | null)[]> = {}
    const numbers: Record<string, (number | null)[]> = {}
    for (const [at, line] of now.holes.entries())
      for (const fact of line.opinions) {
        written[keyOf(fact)] ??= HOLES.map(() => null)
        numbers[keyOf(fact)] ??= HOLES.map(() => null)
        written[keyOf(fact)]![at] = fact.score
        numbers[keyOf(fact)]![at] = fact.seq
      }
    const signatures = [now.player, now.marker].flatMap((one) =>
      one ? [{ role: one.role, entryId: one.entryId, signedAt: AT }] : [],
    )
    const holders = [...this.holders].map(([device, hold]) => ({
      ...hold,
      phone: phoneMark(device),
      lastSeq: this.lastSeq.get(device) ?? 0,
    }))
    const cards = BLANK.cards.map((card) => ({ ...card, state: now.state, written, numbers, signatures }))
    return { ...BLANK, scoreVersion: this.version, holders, cards }
  }
}

class TestPhone {
  readonly device: DeviceId
  pack: CardPack
  facts: KeptFact[] = []
  me: Me
  constructor(
    readonly server: Server,
    name: string,
  ) {
    this.device = deviceIn(GROUP, asId(`${name}-0123456789abcdef`))
    this.me = { holder: null, phone: phoneMark(this.device), tookOver: [] }
    this.pack = server.pack()
  }

  card = (): CardNow => cardsNow(this.pack, this.facts, this.me.phone)[0]!

  hold(entryId: EntryId) {
    this.me = { ...this.me, holder: entryId, tookOver: takingOver(this.pack, entryId, this.me) }
    this.server.holders.set(this.device, { entryId, since: AT })
  }

  private keep(draft: FactDraft, before: number | 'x' | null = null, undoes?: number) {
    this.facts.push(unanswered('link', this.facts.length + 1, { draft, before, ...(undoes ? { undoes } : {}) }, AT))
  }

  write(hole: number, score: number | 'x' | null) {
    const { holder } = this.me
    const card = this.card()
    const line = card.holes.find((one) => one.hole === hole)!
    if (!holder || card.closed) return
    const replaces = replacedBy(line, this.me)
    const before = writtenBy(line, this.me)
    if (before === score && !(line.differs && replaces.length > 0)) return
    this.keep({ kind: 'score', cardId: CARD, writer: holder, hole, score, replaces }, before)
  }

  undo() {
    const undo = toUndo(this.facts, [this.card()], this.me.phone)
    if (!undo || undo.changedTo !== undefined || undo.kept.fact.kind !== 'score') return
    const { writer, hole, score } = undo.kept.fact
    this.keep({ kind: 'score', cardId: CARD, writer, hole, score: undo.kept.before }, score, undo.kept.seq)
  }

  sign(role: 'player' | 'marker') {
    const writer = role === 'player' ? NAMES[0] : NAMES[1]
    const card = this.card()
    if (mayNotSign(card, role, writer)) return
    this.keep({ kind: 'signature', cardId: CARD, writer, role, scores: card.holes.map((hole) => hole.score) })
  }

  waiting = () => this.facts.filter((kept) => kept.state === 'kept')

  send() {
    const waiting = this.waiting()
    if (waiting.length === 0) return
    let { group } = this.server
    const settled = new Map<number, Partial<KeptFact>>()
    this.server.version++
    for (const { fact, seq } of waiting) {
      const taken = takeFact(group, fact, this.device)
      group = afterFact(group, fact, this.device, taken, new Date(AT))
      const late = taken.kind === 'score' && taken.late !== null
      const state = taken.kind === 'refused' ? 'refused' : late ? 'late' : 'received'
      settled.set(seq, { state, settledVersion: this.server.version })
    }
    this.server.group = group
    this.server.lastSeq.set(this.device, this.facts.length)
    this.facts = this.facts.map((kept) => ({ ...kept, ...settled.get(kept.seq) }))
  }

  look() {
    this.pack = this.server.pack()
  }
}

type Step = readonly [phone: number, what: string, hole: number, score: number | 'x' | null]
const step: fc.Arbitrary<Step> = fc.tuple(
  fc.nat({ max: 2 }),
  fc.constantFrom('write', 'write', 'write', 'hold', 'undo', 'send', 'look', 'player', 'marker'),
  fc.constantFrom(...HOLES),
  fc.constantFrom<(number | 'x' | null)[]>(4, 5, 'x', null),
)

function act(phone: TestPhone, [, what, hole, score]: Step) {
  if (what === 'write') phone.write(hole, score)
  else if (what === 'hold') phone.hold(NAMES[hole - 1]!)
  else if (what === 'undo') phone.undo()
  else if (what === 'send') phone.send()
  else if (what === 'look') phone.look()
  else phone.sign(what as 'player' | 'marker')
}

const ofPhone = (card: CardNow) => ({
  state: card.state,
  holes: card.holes.map(({ written, score, differs }) => ({
    says: Object.fromEntries(written.map((one) => [writerKey(one.writer, one.phone), one.score])),
    score,
    differs,
  })),
  signed: card.signatures.map((one) => one.role).sort(),
})

const ofServer = (card: ReturnType<Server['read']>) => ({
  state: card.state,
  holes: card.holes.map(({ opinions, score, notAgreed }) => ({
    says: Object.fromEntries(opinions.map((one) => [keyOf(one), one.score])),
    score: notAgreed ? null : score,
    differs: notAgreed,
  })),
  signed: [card.player, card.marker].flatMap((one) => (one ? [one.role] : [])).sort(),
})

describe('the card on a phone and on the server', () => {
  it('read the same once everything has been sent and looked at', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const server = new Server()
        const phones = ['ada', 'ben', 'cleo'].map((name) => new TestPhone(server, name))
        for (const [at, phone] of phones.entries()) phone.hold(NAMES[at % 2]!)
        for (const each of steps) act(phones[each[0]]!, each)
        for (const phone of phones) phone.send()
        for (const phone of phones) {
          phone.look()
          expect(ofPhone(phone.card())).toEqual(ofServer(server.read()))
        }
      }),
      { numRuns: 400 },
    )
  })

  it('reads on a phone what the server will read when nobody else has written since its look', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), fc.array(step, { maxLength: 12 }), (before, after) => {
        const server = new Server()
        const phones = ['ada', 'ben', 'cleo'].map((name) => new TestPhone(server, name))
        for (const [at, phone] of phones.entries()) phone.hold(NAMES[at % 2]!)
        for (const each of before) act(phones[each[0]]!, each)
        const [ada] = phones
        ada!.send()
        ada!.look()
        for (const each of after) if (each[1] !== 'send' && each[1] !== 'look') act(ada!, each)
        const then = server.after(
          server.group,
          ada!.device,
          ada!.waiting().map((kept) => kept.fact),
        )
        const { state: _, ...here } = ofPhone(ada!.card())
        const { state: __, ...there } = ofServer(server.read(then))
        expect(here).toEqual(there)
      }),
      { numRuns: 400 },
    )
  })

  it('never lets a score of one phone vanish behind another that did not take over', () => {
    fc.assert(
      fc.property(fc.constantFrom(4, 5), fc.constantFrom(6, 7), fc.boolean(), (mine, theirs, sentFirst) => {
        const server = new Server()
        const [ada, ben] = ['ada', 'ben'].map((name) => new TestPhone(server, name)) as [TestPhone, TestPhone]
        ada.hold(NAMES[0])
        ben.hold(NAMES[0])
        ada.write(1, mine)
        ben.write(1, theirs)
        for (const phone of sentFirst ? [ada, ben] : [ben, ada]) phone.send()
        ada.look()
        expect(ada.card().notAgreed).toEqual([1])
        expect(server.read().notAgreed).toEqual([1])
        expect(
          server
            .read()
            .holes[0]!.opinions.map((one) => one.score)
            .sort(),
        ).toEqual([mine, theirs])
      }),
    )
  })
})
