// What the card's page talks to: the group as this phone knows it, and the three things a holder does (write, undo,
// sign). Keeps first, then shows, then sends. Storage, network and clock are given, so that it runs in Node too.

import type { CardPack, PackBall, PackMatch } from '@/lib/facts/card-pack'
import type { CardId, EntryId } from '@/lib/facts/ids'
import { newerPlay, type PlayNow } from '@/lib/facts/play-stop'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { deviceIn, phoneMark } from '@/lib/facts/writer'
import { ok, type Result, refused } from '@/lib/result'
import { ballsNow } from './balls-now'
import { type CardNow, cardsNow, replacedBy, toUndo, type UndoNow, writtenBy } from './card-now'
import { createCourier } from './courier'
import { type Holding, holdingNow, type Me, takingOver } from './holding'
import type { BallWritten, ConcessionWritten, KeptFact, QueueRecord, ToKeep } from './kept-fact'
import type { LineEars } from './live-line'
import { lookAgain } from './looking'
import { matchesNow, mayNotConcede } from './matches-now'
import { notKept } from './not-kept'
import type { Phone } from './phone'
import type { Fetched } from './post'
import { mayNotSign } from './signing'
import type { KeptPack } from './store'

export interface GroupSnapshot {
  readonly link: string
  readonly pack: CardPack | null
  readonly packAt: string | null
  /** Written down on the phone, this pack or an older one: without it the card cannot be opened again without a signal. */
  readonly packKept: boolean
  readonly cards: readonly CardNow[]
  /** Sides about whose ball something is written: drives, a named ball. */
  readonly balls: readonly PackBall[]
  /** Matches with somebody of the group in them. */
  readonly matches: readonly PackMatch[]
  readonly holder: EntryId | null
  /** The writer of what is entered here: the holder's name on this phone. */
  readonly me: Me
  /** Whether another phone says it is the same player's. */
  readonly holding: Holding
  /** The holder has read that the name was taken over. */
  readonly takenRead: boolean
  readonly waitingScores: number
  readonly waitingSignatures: number
  readonly lastReceivedAt: string | null
  readonly ended: QueueRecord['ended']
  /** Late or refused, and not yet read by the holder. */
  readonly answered: readonly KeptFact[]
  readonly undo: UndoNow | null
  readonly lasting: boolean
  /** The last look at the server failed: no signal, or no answer. */
  readonly outOfReach: boolean
  readonly serverSays: string | null
  /** Scores that are only in the open page, because the phone would not write them down, and why. */
  readonly inPageOnly: number
  readonly whyNotKept: string | null
  /** The newest word of the desk about play, and whether the holder has read it. */
  readonly play: PlayNow | null
  readonly playRead: boolean
}

export interface GroupBook {
  readonly snapshot: () => GroupSnapshot | null
  readonly subscribe: (run: () => void) => () => void
  /** Where another phone has the name this takes it over: whoever calls has asked. */
  readonly hold: (entryId: EntryId) => Promise<void>
  readonly readTaken: (since: string) => Promise<void>
  /** 'stands' when the holder says so already: there was nothing to write. */
  readonly write: (cardId: CardId, hole: number, score: WrittenScore) => Promise<Result<'written' | 'stands'>>
  readonly writeBall: (what: BallWritten) => Promise<Result<void>>
  readonly concede: (what: ConcessionWritten) => Promise<Result<void>>
  readonly undo: () => Promise<Result<KeptFact | null>>
  readonly sign: (cardId: CardId, role: 'player' | 'marker', entryId: EntryId) => Promise<Result<void>>
  readonly markSeen: (seqs: readonly number[]) => Promise<void>
  readonly readPlay: (number: number) => Promise<void>
  readonly refresh: () => Promise<void>
  /** Sending and looking begin; answers with what ends them. */
  readonly start: () => () => void
}

const meOn = ({ deviceId, holder, tookOver }: QueueRecord, pack: CardPack | null): Me => ({
  holder,
  phone: pack ? phoneMark(deviceIn(pack.group.id, deviceId)) : '',
  tookOver: tookOver ?? [],
})

export function openGroupBook(link: string, phone: Phone): GroupBook {
  const { store } = phone
  const listeners = new Set<() => void>()
  let shown: GroupSnapshot | null = null
  let outOfReach = false
  const unkept = notKept(store, link)
  let packInPage: KeptPack | null = null
  let olderKept = true
  let oneByOne: Promise<unknown> = Promise.resolve()
  let asked = 0
  let answered = 0
  let sameAt: string | null = null
  let packTurns: Promise<unknown> = Promise.resolve()

  async function reload(): Promise<GroupSnapshot> {
    const [queue, written, kept] = await Promise.all([store.queue(link), store.facts(link), packNow()])
    const facts = [...written, ...unkept.facts()]
    const me = meOn(queue, kept?.pack ?? null)
    const matches = kept ? matchesNow(kept.pack, facts) : []
    const cards = kept ? cardsNow(kept.pack, facts, me.phone, matches) : []
    const holding = holdingNow(kept?.pack ?? null, me)
    const waiting = facts.filter((each) => each.state === 'kept')
    shown = {
      link,
      pack: kept?.pack ?? null,
      packAt: sameAt ?? kept?.at ?? null,
      cards,
      balls: kept ? ballsNow(kept.pack, facts) : [],
      matches,
      holder: queue.holder,
      me,
      holding,
      takenRead: holding.kind === 'taken' && queue.readTaken === holding.since,
      waitingScores: waiting.filter((each) => each.fact.kind !== 'signature').length,
      waitingSignatures: waiting.filter((each) => each.fact.kind === 'signature').length,
      lastReceivedAt: queue.lastReceivedAt,
      ended: queue.ended,
      answered: facts.filter((each) => !each.seen && (each.state === 'late' || each.state === 'refused')),
      undo: toUndo(facts, cards, me.phone),
      lasting: store.lasting,
      outOfReach,
      serverSays: courier.serverSays(),
      inPageOnly: unkept.facts().length,
      packKept: packInPage === null || olderKept,
      whyNotKept: unkept.why()?.sentence ?? null,
      play: kept?.pack.play ?? null,
      playRead: (kept?.pack.play?.number ?? 0) <= (queue.playRead ?? 0),
    }
    for (const run of listeners) run()
    looking.soon()
    return shown
  }

  async function packNow(): Promise<KeptPack | null> {
    return packInPage ?? (await store.pack(link))
  }

  /** A full phone keeps its old pack; the new one is good for as long as the page is open. */
  async function keepPack(pack: CardPack, at: string, tag?: string | null): Promise<void> {
    try {
      await store.keepPack(link, pack, at, tag)
      packInPage = null
    } catch (fault) {
      console.warn('daybook: the phone would not keep the newest cards', fault)
      packInPage = { pack, at, tag }
      olderKept = await store.pack(link).then(
        (older) => older !== null,
        () => false,
      )
    }
  }

  async function tryAgain(): Promise<void> {
    if (unkept.facts().length === 0) return
    if (await unkept.tryAgain()) {
      phone.askBackground()
      courier.kick()
    }
    await reload()
  }

  async function refresh(cut?: AbortSignal): Promise<void> {
    await tryAgain()
    const { deviceId, holder, holds } = await store.queue(link)
    const before = await packNow()
    const mine = ++asked
    const unsent = (await store.waiting(link, 10_000)).length
    const began = phone.now().getTime()
    const whose = holder === null ? {} : { holder: { entryId: holder, number: holds ?? 0 } }
    const got = await phone.fetchPack(link, { deviceId, unsent, ...whose }, before?.tag, cut)
    heard(mine, got, phone.now().getTime() - began)
    await packInTurn(() => take(got, before))
    await reload()
  }

  async function take(got: Fetched, before: KeptPack | null): Promise<void> {
    const now = phone.now().toISOString()
    if (got.kind === 'same') {
      sameAt = now
      const kept = await packNow()
      if (kept && kept.tag === before?.tag && kept.pack.scoreVersion < got.scoreVersion)
        await keepPack({ ...kept.pack, scoreVersion: got.scoreVersion }, now, kept.tag)
      if ((await store.queue(link)).ended) await store.setEnded(link, null)
    } else if (got.kind === 'pack') {
      const kept = await packNow()
      sameAt = null
      // Two tabs look at the server: an older answer that arrives later must not take anything back.
      const older = kept && kept.pack.scoreVersion > got.pack.scoreVersion && kept.pack.dayId === got.pack.dayId
      const play = newerPlay(kept?.pack.dayId === got.pack.dayId ? kept.pack.play : null, got.pack.play)
      // Play was stopped and resumed before this phone was opened: nothing has to be unlearned on it.
      if (kept === null && play?.kind === 'resume') await store.setPlayRead(link, play.number)
      if (!older) await keepPack({ ...got.pack, play }, now, got.tag)
      if ((await store.queue(link)).ended) await store.setEnded(link, null)
    } else if (got.kind === 'ended') {
      await store.setEnded(link, { code: got.code, sentence: got.sentence, at: now })
      if ((await store.waiting(link, 1)).length > 0) courier.knock()
    }
  }

  /** Read and written in one turn: what was heard meanwhile must not be written over. */
  function packInTurn(run: () => Promise<void>): Promise<void> {
    const turn = packTurns.then(run)
    packTurns = turn.catch(() => undefined)
    return turn
  }

  /** Whether there is a way through. A look that was overtaken by a younger one says nothing about now. */
  function heard(mine: number, got: Fetched, took: number): void {
    if (mine < answered) return
    const silent = got.kind === 'unknown' && !got.heard
    if (silent) courier.unreached()
    else {
      answered = mine
      if (outOfReach) phone.tellReached()
      courier.reached(took)
    }
    outOfReach = got.kind === 'unknown'
  }

  /** Another phone of the group wrote something, or the desk did. */
  async function hearCards(tag: string): Promise<void> {
    courier.reached()
    if ((await packNow())?.tag !== tag) await refresh()
  }

  /** A stop shows at once; the pack with the scores is fetched in its own time, or every phone would ask together. */
  async function hearPlay(play: PlayNow): Promise<void> {
    await packInTurn(async () => {
      const kept = await packNow()
      if (kept && newerPlay(kept.pack.play, play) === play) await keepPack({ ...kept.pack, play }, kept.at, kept.tag)
    })
    phone.tell(link)
    await reload()
  }

  const courier = createCourier(link, phone, {
    settledSome: () => {
      phone.tell(link)
      void reload()
    },
    delivered: () => void refresh(),
    stopped: () => void reload(),
  })
  const waits = () => (shown?.waitingScores ?? 0) + (shown?.waitingSignatures ?? 0) > 0
  const looking = lookAgain(phone, { waits, cutOff: () => waits() && courier.cutOff(), look: refresh })

  const ears: LineEars = {
    opened: () => courier.reached(),
    play: (play) => void hearPlay(play),
    cards: (tag) => void hearCards(tag),
  }

  async function keep(what: ToKeep): Promise<Result<KeptFact | null>> {
    const kept = await unkept.keep(what, phone.now().toISOString())
    if (!kept.ok) return kept
    await reload()
    phone.tell(link)
    phone.askBackground()
    courier.kick()
    return kept
  }

  /** One at a time: what a writer had before must be read after the touch before it was kept. */
  function inTurn<T>(run: (now: GroupSnapshot) => Promise<Result<T>>): Promise<Result<T>> {
    const turn = oneByOne.then(async () => run(await reload()))
    oneByOne = turn.catch(() => undefined)
    return turn
  }

  const openCard = (now: GroupSnapshot, cardId: CardId): Result<CardNow> => {
    const card = now.cards.find((each) => each.card.cardId === cardId)
    if (!card) return refused('no-such-card', 'That card is not in this group.')
    if (card.closed || now.pack?.status === 'closed')
      return refused('card-closed', 'This card is handed in. Only the committee can change it now.')
    return ok(card)
  }

  return {
    snapshot: () => shown,
    subscribe(run) {
      listeners.add(run)
      return () => listeners.delete(run)
    },
    async hold(entryId) {
      const queue = await store.queue(link)
      const pack = (await packNow())?.pack ?? null
      const tookOver = takingOver(pack, entryId, meOn(queue, pack))
      await store.setHolder(link, { holder: entryId, holds: (queue.holds ?? 0) + 1, tookOver })
      await reload()
      phone.tell(link)
      // Says it to the server, so that the others are told.
      void refresh()
    },
    async readTaken(since) {
      await store.setReadTaken(link, since)
      await reload()
    },
    write: (cardId, hole, score) =>
      inTurn<'written' | 'stands'>(async (now) => {
        if (!now.holder) return refused('nobody-holds', 'Say first whose phone this is.')
        const found = openCard(now, cardId)
        if (!found.ok) return found
        const line = found.value.holes.find((each) => each.hole === hole)
        if (!line) return refused('no-such-hole', 'That hole is not on this card.')
        const before = writtenBy(line, now.me)
        const replaces = replacedBy(line, now.me)
        if (before === score && !(line.differs && replaces.length > 0)) return ok('stands')
        const kept = await keep({ draft: { kind: 'score', cardId, writer: now.holder, hole, score, replaces }, before })
        return kept.ok ? ok('written') : kept
      }),
    writeBall: (what) =>
      inTurn<void>(async (now) => {
        if (!now.holder) return refused('nobody-holds', 'Say first whose phone this is.')
        const found = openCard(now, what.cardId)
        if (!found.ok) return found
        const kept = await keep({ draft: { ...what, writer: now.holder }, before: null })
        return kept.ok ? ok() : kept
      }),
    concede: (what) =>
      inTurn<void>(async (now) => {
        if (!now.holder) return refused('nobody-holds', 'Say first whose phone this is.')
        const no = mayNotConcede(now.matches, now.cards, what)
        if (no) return no
        const found = openCard(now, what.cardId)
        if (!found.ok) return found
        const kept = await keep({ draft: { kind: 'concession', ...what, writer: now.holder }, before: null })
        return kept.ok ? ok() : kept
      }),
    undo: () =>
      inTurn<KeptFact | null>(async (now) => {
        const last = now.undo?.kept
        if (last?.fact.kind !== 'score' || now.undo?.changedTo !== undefined) return ok(null)
        if (unkept.facts().some((each) => each.seq === last.seq)) {
          unkept.dropLast()
          await reload()
          return ok(last)
        }
        const { cardId, hole, writer, score } = last.fact
        const draft = { kind: 'score', cardId, writer, hole, score: last.before } as const
        const kept = await keep({ draft, before: score, undoes: last.seq })
        return kept.ok ? ok(last) : kept
      }),
    sign: (cardId, role, entryId) =>
      inTurn<void>(async (now) => {
        const card = now.cards.find((each) => each.card.cardId === cardId)
        if (!card) return refused('no-such-card', 'That card is not in this group.')
        const no = mayNotSign(card, role, entryId)
        if (no) return no
        const scores = card.holes.map((hole) => hole.score)
        const kept = await keep({ draft: { kind: 'signature', cardId, writer: entryId, role, scores }, before: null })
        return kept.ok ? ok() : kept
      }),
    async markSeen(seqs) {
      await store.markSeen(link, seqs)
      await reload()
    },
    async readPlay(number) {
      await store.setPlayRead(link, number)
      await reload()
    },
    refresh: () => refresh(),
    start() {
      let over = false
      void reload().then(() => over || looking.start())
      courier.kick()
      const ends = [
        ...(phone.liveLine ? [phone.liveLine(link, ears)] : []),
        phone.whenReached(() => courier.reached()),
        phone.hear((other) => other === link && void reload()),
        phone.whenReachable(() => {
          courier.kick()
          void refresh()
        }),
      ]
      return () => {
        over = true
        looking.stop()
        courier.stop()
        for (const end of ends) end()
      }
    },
  }
}
