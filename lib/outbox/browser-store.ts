// The outbox in the browser's database. Every change is one transaction, written through to the disk before it is
// called kept. Two tabs share one database: numbers are taken inside the transaction, so they cannot clash.

import { type DBSchema, deleteDB, type IDBPDatabase, openDB } from 'idb'
import type { DeviceId } from '@/lib/facts/ids'
import { ok, type Refused, refused } from '@/lib/result'
import { freshQueue, type KeptFact, type QueueRecord, unanswered } from './kept-fact'
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
  let current: Promise<Connection> | null = null
  const connection = () => {
    current ??= connected(name, () => {
      current = null
    })
    return current
  }
  // Loudly: without a database there is another store, and the screen says so.
  await connection()
  return storeOn(async (run) => {
    const asked = connection()
    try {
      return await run(await asked)
    } catch (fault) {
      if (!isShut(fault)) throw fault
      // The browser shuts a database whose disk is full, and does not open it again by itself when there is room.
      if (current === asked) current = null
      return run(await connection())
    }
  }, newId)
}

type Connection = IDBPDatabase<Schema>
type OnDatabase = <T>(run: (db: Connection) => Promise<T>) => Promise<T>

async function connected(name: string, shut: () => void): Promise<Connection> {
  try {
    return await openDB<Schema>(name, VERSION, {
      upgrade(fresh) {
        fresh.createObjectStore('queues', { keyPath: 'link' })
        fresh.createObjectStore('facts', { keyPath: ['link', 'seq'] })
        fresh.createObjectStore('packs', { keyPath: 'link' })
      },
      // A newer page wants to upgrade: make way; the next call here fails loudly, the database being newer than we are.
      blocking: (_current, _wanted, event) => (event.target as IDBDatabase).close(),
      terminated: shut,
    })
  } catch (fault) {
    shut()
    throw fault
  }
}

const isShut = (fault: unknown) => fault instanceof Error && fault.name === 'InvalidStateError'

export const forgetBrowserStore = (name = DATABASE): Promise<void> => deleteDB(name)

/**
 * What is done in a transaction, and its end. Fails with the transaction's own reason: the request that was under way
 * only says that it was broken off, and a full disk would not be told from anything else.
 */
async function whole<T>(tx: { readonly done: Promise<void> }, run: () => Promise<T>): Promise<T> {
  try {
    const made = await run()
    await tx.done
    return made
  } catch (fault) {
    throw await tx.done.then(
      () => fault,
      (reason: unknown) => reason ?? fault,
    )
  }
}

const ofLink = (link: string) => IDBKeyRange.bound([link, 0], [link, Number.MAX_SAFE_INTEGER])
const THROUGH = { durability: 'strict' } as const

function storeOn(onDatabase: OnDatabase, newId: () => string): OutboxStore {
  const fresh = (link: string) => freshQueue(link, newId() as DeviceId)

  /** Reads the queue, changes it and writes it back in one transaction. Null: leave as it is. */
  const change = (link: string, how: (queue: QueueRecord) => QueueRecord | null): Promise<QueueRecord> =>
    onDatabase(async (db) => {
      const tx = db.transaction('queues', 'readwrite', THROUGH)
      return whole(tx, async () => {
        const known = await tx.store.get(link)
        const queue = known ?? fresh(link)
        const changed = how(queue)
        if (changed || !known) await tx.store.put(changed ?? queue)
        return changed ?? queue
      })
    })

  /** Reads the link's facts, writes the changed ones and, if anything changed, the queue: one transaction. */
  const changeFacts = (
    link: string,
    how: (facts: readonly KeptFact[]) => readonly KeptFact[],
    queuePatch: Partial<QueueRecord> | null,
  ): Promise<void> =>
    onDatabase(async (db) => {
      const tx = db.transaction(['facts', 'queues'], 'readwrite', THROUGH)
      return whole(tx, async () => {
        const changed = how(await tx.objectStore('facts').getAll(ofLink(link)))
        for (const kept of changed) await tx.objectStore('facts').put(kept)
        if (queuePatch && changed.length > 0) {
          const queue = (await tx.objectStore('queues').get(link)) ?? fresh(link)
          await tx.objectStore('queues').put({ ...queue, ...queuePatch })
        }
      })
    })

  const factsOf = (link: string) => onDatabase((db) => db.getAll('facts', ofLink(link)))

  return {
    lasting: true,
    queue: (link) => change(link, () => null),
    setHolder: async (link, hold) => void (await change(link, (queue) => ({ ...queue, ...hold }))),
    setReadTaken: async (link, readTaken) => void (await change(link, (queue) => ({ ...queue, readTaken }))),
    setEnded: async (link, ended) => void (await change(link, (queue) => ({ ...queue, ended }))),
    setPlayRead: async (link, playRead) => void (await change(link, (queue) => ({ ...queue, playRead }))),

    async keep(link, what, writtenAt) {
      const write = (db: Connection) => {
        const tx = db.transaction(['queues', 'facts'], 'readwrite', THROUGH)
        return whole(tx, async () => {
          const queue = (await tx.objectStore('queues').get(link)) ?? fresh(link)
          const kept = unanswered(link, queue.nextSeq, what, writtenAt)
          // `add`, not `put`: a number that was taken before is a fault, never an overwriting.
          await tx.objectStore('facts').add(kept)
          await tx.objectStore('queues').put({ ...queue, nextSeq: queue.nextSeq + 1 })
          return kept
        })
      }
      try {
        return ok(await onDatabase(write))
      } catch (fault) {
        return storageRefusal(fault)
      }
    },

    facts: factsOf,
    async waiting(link, atMost) {
      const all = await factsOf(link)
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

    pack: (link) => onDatabase(async (db) => (await db.get('packs', link)) ?? null),
    keepPack: (link, pack, at, tag) =>
      onDatabase(async (db) => {
        // Written through, like the scores: a card that says it is on the phone must be there after a flat battery.
        const tx = db.transaction('packs', 'readwrite', THROUGH)
        await whole(tx, () => tx.store.put({ link, pack, at, tag }))
      }),
    async packs() {
      const all = await onDatabase((db) => db.getAll('packs'))
      return all.sort((a, b) => b.pack.date.localeCompare(a.pack.date))
    },

    linksWaiting: () =>
      onDatabase(async (db) => {
        const tx = db.transaction(['queues', 'facts'])
        const queues = await tx.objectStore('queues').getAll()
        const found: string[] = []
        for (const queue of queues.filter((each) => !each.ended)) {
          const facts = await tx.objectStore('facts').getAll(ofLink(queue.link))
          if (facts.some((kept) => kept.state === 'kept')) found.push(queue.link)
        }
        return found
      }),

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

// A site's share is used up, or the disk itself is: the second comes without a name of its own.
const isFull = (fault: unknown) =>
  fault instanceof Error && (fault.name === 'QuotaExceededError' || /no.?space|disk.?full/i.test(fault.message))

/** A full phone is an everyday thing, the rest of what a database can refuse is not; both are said, nothing is lost silently. */
export function storageRefusal(fault: unknown): Refused<StorageRefusal> {
  const cause = fault instanceof Error ? fault.cause : undefined
  if (isFull(fault) || isFull(cause)) {
    return refused(
      'phone-full',
      'This phone is full and cannot write scores down. They stand in this page for as long as it is open. Make some room (pictures, films) and leave the card open: it tries again by itself. Write them on the paper card as well.',
    )
  }
  return refused(
    'phone-keeps-nothing',
    'This phone would not write the score down; most often it is full. It stands in this page for as long as it is open: make some room (pictures, films) and leave the card open, it tries again by itself. Write it on the paper card as well.',
  )
}
