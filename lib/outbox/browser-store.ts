// The outbox in the browser's database. Every change is one transaction, written through to the disk before it is
// called kept. Two tabs share one database: numbers are taken inside the transaction, so they cannot clash.

import { type DBSchema, deleteDB, type IDBPDatabase, openDB } from 'idb'
import { ok, type Refused, refused } from '@/lib/result'
import { type KeptFact, numbered, type QueueRecord } from './kept-fact'
import { settled, waitingAgain } from './settling'
import type { KeptPack, OutboxStore, StorageRefusal } from './store'

interface Schema extends DBSchema {
  queues: { key: string; value: QueueRecord }
  facts: { key: [string, number]; value: KeptFact }
  packs: { key: string; value: KeptPack & { readonly link: string } }
}

export const DATABASE = 'daybook-card'
// Raise it only together with an upgrade step that keeps what is unsent: a new version of the page opens the same
// database in the middle of a round.
const VERSION = 1

export async function browserStore(newId: () => string, name = DATABASE): Promise<OutboxStore> {
  const db = await openDB<Schema>(name, VERSION, {
    upgrade(fresh) {
      fresh.createObjectStore('queues', { keyPath: 'link' })
      fresh.createObjectStore('facts', { keyPath: ['link', 'seq'] })
      fresh.createObjectStore('packs', { keyPath: 'link' })
    },
    // A newer page wants to upgrade: make way; the next call here fails loudly and the page loads itself again.
    blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
  })
  return storeOn(db, newId)
}

export const forgetBrowserStore = (name = DATABASE): Promise<void> => deleteDB(name)

const ofLink = (link: string) => IDBKeyRange.bound([link, 0], [link, Number.MAX_SAFE_INTEGER])
const THROUGH = { durability: 'strict' } as const

function storeOn(db: IDBPDatabase<Schema>, newId: () => string): OutboxStore {
  const fresh = (link: string): QueueRecord => ({
    link,
    deviceId: newId(),
    nextSeq: 1,
    lastReceivedAt: null,
    holder: null,
    ended: null,
    lease: null,
  })

  const inPage = new Map<string, QueueRecord>()

  /** A full phone that has never had this card still shows it: its queue is good for as long as the page is open. */
  async function queue(link: string): Promise<QueueRecord> {
    try {
      return await change(link, () => null)
    } catch (fault) {
      if (storageRefusal(fault).code !== 'phone-full') throw fault
      const known = inPage.get(link) ?? fresh(link)
      inPage.set(link, known)
      return known
    }
  }

  /** Reads the queue, changes it and writes it back in one transaction. Null: leave as it is. */
  async function change(link: string, how: (queue: QueueRecord) => QueueRecord | null): Promise<QueueRecord> {
    const tx = db.transaction('queues', 'readwrite', THROUGH)
    const known = await tx.store.get(link)
    const queue = known ?? fresh(link)
    const changed = how(queue)
    if (changed || !known) await tx.store.put(changed ?? queue)
    await tx.done
    return changed ?? queue
  }

  /** Reads the link's facts, writes the changed ones and, if anything changed, the queue: one transaction. */
  async function changeFacts(
    link: string,
    how: (facts: readonly KeptFact[]) => readonly KeptFact[],
    queuePatch: Partial<QueueRecord> | null,
  ): Promise<void> {
    const tx = db.transaction(['facts', 'queues'], 'readwrite', THROUGH)
    const changed = how(await tx.objectStore('facts').getAll(ofLink(link)))
    for (const kept of changed) await tx.objectStore('facts').put(kept)
    if (queuePatch && changed.length > 0) {
      const queue = (await tx.objectStore('queues').get(link)) ?? fresh(link)
      await tx.objectStore('queues').put({ ...queue, ...queuePatch })
    }
    await tx.done
  }

  return {
    lasting: true,
    queue,
    async setHolder(link, holder) {
      const known = inPage.get(link)
      if (known) inPage.set(link, { ...known, holder })
      else await change(link, (queue) => ({ ...queue, holder }))
    },
    setEnded: async (link, ended) => void (await change(link, (queue) => ({ ...queue, ended }))),
    setPlayRead: async (link, playRead) => void (await change(link, (queue) => ({ ...queue, playRead }))),

    async keep(link, { draft, before, undoes }, writtenAt) {
      try {
        const tx = db.transaction(['queues', 'facts'], 'readwrite', THROUGH)
        const queue = (await tx.objectStore('queues').get(link)) ?? fresh(link)
        const kept: KeptFact = {
          link,
          seq: queue.nextSeq,
          fact: numbered(draft, queue.nextSeq, writtenAt),
          state: 'kept',
          before,
          undoes: undoes ?? null,
          sentence: null,
          code: null,
          settledVersion: null,
          settledAt: null,
          seen: false,
        }
        // `add`, not `put`: a number that was taken before is a fault, never an overwriting.
        await tx.objectStore('facts').add(kept)
        await tx.objectStore('queues').put({ ...queue, nextSeq: queue.nextSeq + 1 })
        await tx.done
        return ok(kept)
      } catch (fault) {
        return storageRefusal(fault)
      }
    },

    facts: (link) => db.getAll('facts', ofLink(link)),
    async waiting(link, atMost) {
      const all = await db.getAll('facts', ofLink(link))
      return all.filter((kept) => kept.state === 'kept').slice(0, atMost)
    },
    settle: (link, sent, answer, at) =>
      changeFacts(
        link,
        (facts) =>
          settled(
            facts.filter((kept) => sent.includes(kept.seq)),
            answer,
            at,
          ),
        { lastReceivedAt: at },
      ),
    waitAgain: (link, lastSeq) => changeFacts(link, (facts) => waitingAgain(facts, lastSeq), null),
    markSeen: (link, seqs) =>
      changeFacts(
        link,
        (facts) => facts.filter((kept) => seqs.includes(kept.seq)).map((kept) => ({ ...kept, seen: true })),
        null,
      ),

    pack: async (link) => (await db.get('packs', link)) ?? null,
    async keepPack(link, pack, at) {
      // Written through, like the scores: a card that says it is on the phone must be there after a flat battery.
      const tx = db.transaction('packs', 'readwrite', THROUGH)
      await tx.store.put({ link, pack, at })
      await tx.done
    },
    async packs() {
      return (await db.getAll('packs')).sort((a, b) => b.pack.date.localeCompare(a.pack.date))
    },

    async linksWaiting() {
      const tx = db.transaction(['queues', 'facts'])
      const queues = await tx.objectStore('queues').getAll()
      const found: string[] = []
      for (const queue of queues.filter((each) => !each.ended)) {
        const facts = await tx.objectStore('facts').getAll(ofLink(queue.link))
        if (facts.some((kept) => kept.state === 'kept')) found.push(queue.link)
      }
      return found
    },

    async takeLease(link, by, now, until) {
      const queue = await change(link, (each) =>
        each.lease && each.lease.by !== by && each.lease.until > now ? null : { ...each, lease: { by, until } },
      )
      return queue.lease?.by === by
    },
    dropLease: async (link, by) =>
      void (await change(link, (queue) => (queue.lease?.by === by ? { ...queue, lease: null } : null))),
  }
}

/** A full phone is an everyday thing, the rest of what a database can refuse is not; both are said, nothing is lost silently. */
export function storageRefusal(fault: unknown): Refused<StorageRefusal> {
  const name = fault instanceof Error ? fault.name : ''
  const cause = fault instanceof Error && fault.cause instanceof Error ? fault.cause.name : ''
  if (name === 'QuotaExceededError' || cause === 'QuotaExceededError') {
    return refused(
      'phone-full',
      'This phone is full and cannot write scores down. They stand in this page for as long as it is open. Make some room (pictures, films) and leave the card open: it tries again by itself. Write them on the paper card as well.',
    )
  }
  return refused(
    'phone-keeps-nothing',
    'This phone would not write the score down. It stands in this page for as long as it is open, and is tried again. Write it on the paper card as well.',
  )
}
