// A phone's storage that may give way in the middle of a round: a disk that has filled up, a database that the browser
// has shut. What was read stays known while the page is open, and the holder's small marks stand in the page until they
// can be written. Scores are not its business: what is not written down is never called kept (not-kept.ts).

import type { DeviceId } from '@/lib/facts/ids'
import { freshQueue, type Hold, type KeptFact, type QueueRecord } from './kept-fact'
import type { KeptPack, OutboxStore } from './store'

type Marks = Partial<Pick<QueueRecord, 'ended' | 'playRead' | 'readTaken'> & Hold>

interface Known {
  queue?: QueueRecord
  facts?: readonly KeptFact[]
  pack?: KeptPack | null
  marks: Marks
  seen: ReadonlySet<number>
}

export function steadyStore(store: OutboxStore, newId: () => string): OutboxStore {
  const links = new Map<string, Known>()

  function of(link: string): Known {
    const known = links.get(link) ?? { marks: {}, seen: new Set() }
    links.set(link, known)
    return known
  }

  function warn(what: string, fault: unknown) {
    console.warn(`daybook: this phone’s storage would not ${what}`, fault)
  }

  /** Writes again what only stands in the page; the first refusal ends it until the next reading. */
  async function writeMarks(link: string): Promise<void> {
    const known = of(link)
    const { marks, seen } = known
    const { holder, holds, tookOver, readTaken } = marks
    if (holder && holds && tookOver) await store.setHolder(link, { holder, holds, tookOver })
    if (readTaken !== undefined) await store.setReadTaken(link, readTaken)
    if (marks.ended !== undefined) await store.setEnded(link, marks.ended)
    if (marks.playRead !== undefined) await store.setPlayRead(link, marks.playRead)
    if (seen.size > 0) await store.markSeen(link, [...seen])
    // Somebody may have pressed again meanwhile: only what was written is struck off.
    if (known.marks === marks) known.marks = {}
    if (known.seen === seen) known.seen = new Set()
  }

  async function mark(link: string, marks: Marks): Promise<void> {
    const known = of(link)
    known.marks = { ...known.marks, ...marks }
    await writeMarks(link).catch((fault: unknown) => warn('write a mark down', fault))
  }

  /** The newest reading, or the one before it. */
  async function read<T>(what: string, ask: () => Promise<T>, known: () => T, keep: (read: T) => void) {
    try {
      const now = await ask()
      keep(now)
      return now
    } catch (fault) {
      warn(`be read (${what})`, fault)
      return known()
    }
  }

  const asSeen = (facts: readonly KeptFact[], { seen }: Known) =>
    seen.size === 0 ? facts : facts.map((kept) => (seen.has(kept.seq) ? { ...kept, seen: true } : kept))

  async function facts(link: string): Promise<readonly KeptFact[]> {
    const known = of(link)
    const all = await read(
      'facts',
      () => store.facts(link),
      () => known.facts ?? [],
      (now) => {
        known.facts = now
      },
    )
    return asSeen(all, known)
  }

  return {
    ...store,
    async queue(link) {
      const known = of(link)
      const marked = Object.keys(known.marks).length > 0 || known.seen.size > 0
      if (marked) await writeMarks(link).catch((fault: unknown) => warn('write a mark down', fault))
      const queue = await read(
        'queue',
        () => store.queue(link),
        () => {
          // A phone that was full before it ever had this card still shows it: this queue ends with the page.
          known.queue ??= freshQueue(link, newId() as DeviceId)
          return known.queue
        },
        (now) => {
          known.queue = now
        },
      )
      return { ...queue, ...known.marks }
    },
    facts,
    waiting: async (link, atMost) => (await facts(link)).filter((kept) => kept.state === 'kept').slice(0, atMost),
    pack(link) {
      const known = of(link)
      return read(
        'pack',
        () => store.pack(link),
        // Nothing read yet: the server is asked, as on the first opening.
        () => known.pack ?? null,
        (now) => {
          known.pack = now
        },
      )
    },
    setHolder: (link, hold) => mark(link, hold),
    setReadTaken: (link, readTaken) => mark(link, { readTaken }),
    setEnded: (link, ended) => mark(link, { ended }),
    setPlayRead: (link, playRead) => mark(link, { playRead }),
    async markSeen(link, seqs) {
      const known = of(link)
      known.seen = new Set([...known.seen, ...seqs])
      await writeMarks(link).catch((fault: unknown) => warn('write a mark down', fault))
    },
  }
}
