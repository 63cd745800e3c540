// The outbox in memory: for tests, and for a phone that refuses to keep anything (it says so on the screen).

import type { CardPack } from '@/lib/facts/card-pack'
import type { DeviceId } from '@/lib/facts/ids'
import { ok } from '@/lib/result'
import { freshQueue, type KeptFact, type QueueRecord, unanswered } from './kept-fact'
import { settled, waitingAgain } from './settling'
import type { KeptPack, OutboxStore } from './store'

export function memoryStore(newId: () => string): OutboxStore {
  const queues = new Map<string, QueueRecord>()
  const facts = new Map<string, KeptFact[]>()
  const packs = new Map<string, KeptPack>()

  const queueOf = (link: string): QueueRecord => {
    const known = queues.get(link)
    if (known) return known
    const fresh = freshQueue(link, newId() as DeviceId)
    queues.set(link, fresh)
    return fresh
  }
  const change = (link: string, patch: Partial<QueueRecord>) => queues.set(link, { ...queueOf(link), ...patch })
  const of = (link: string) => facts.get(link) ?? []
  const replace = (link: string, changed: readonly KeptFact[]) => {
    const bySeq = new Map(changed.map((kept) => [kept.seq, kept]))
    facts.set(
      link,
      of(link).map((kept) => bySeq.get(kept.seq) ?? kept),
    )
  }

  return {
    lasting: false,
    queue: async (link) => queueOf(link),
    setHolder: async (link, hold) => void change(link, hold),
    setReadTaken: async (link, readTaken) => void change(link, { readTaken }),
    setEnded: async (link, ended) => void change(link, { ended }),
    setPlayRead: async (link, playRead) => void change(link, { playRead }),
    keep: async (link, what, writtenAt) => {
      const { nextSeq } = queueOf(link)
      const kept = unanswered(link, nextSeq, what, writtenAt)
      facts.set(link, [...of(link), kept])
      change(link, { nextSeq: nextSeq + 1 })
      return ok(kept)
    },
    facts: async (link) => of(link),
    waiting: async (link, atMost) =>
      of(link)
        .filter((kept) => kept.state === 'kept')
        .slice(0, atMost),
    settle: async (link, sent, answer, at) => {
      const changed = settled(
        of(link).filter((kept) => sent.includes(kept.seq)),
        answer,
        at,
      )
      replace(link, changed)
      if (changed.length > 0) change(link, { lastReceivedAt: at })
    },
    waitAgain: async (link, lastSeq) => replace(link, waitingAgain(of(link), lastSeq)),
    markSeen: async (link, seqs) =>
      replace(
        link,
        of(link)
          .filter((kept) => seqs.includes(kept.seq))
          .map((kept) => ({ ...kept, seen: true })),
      ),
    pack: async (link) => packs.get(link) ?? null,
    keepPack: async (link, pack: CardPack, at, tag) => void packs.set(link, { pack, at, tag }),
    packs: async () =>
      [...packs.entries()]
        .map(([link, kept]) => ({ link, ...kept }))
        .sort((a, b) => b.pack.date.localeCompare(a.pack.date)),
    linksWaiting: async () =>
      [...facts.entries()]
        .filter(([link, of]) => !queueOf(link).ended && of.some((kept) => kept.state === 'kept'))
        .map(([link]) => link),
    takeLease: async (link, by, now, until) => {
      const { lease } = queueOf(link)
      if (lease && lease.by !== by && lease.until > now) return false
      change(link, { lease: { by, until } })
      return true
    },
    dropLease: async (link, by) => {
      if (queueOf(link).lease?.by === by) change(link, { lease: null })
    },
  }
}
