// What the outbox asks of a phone's storage. Two stores answer: the browser's database, and memory (tests, and phones
// that refuse to keep anything). One set of contract tests holds both.

import type { CardPack } from '@/lib/facts/card-pack'
import type { DeliveryAnswer } from '@/lib/facts/score-fact'
import type { Result } from '@/lib/result'
import type { Hold, KeptFact, QueueRecord, ToKeep } from './kept-fact'

export interface KeptPack {
  readonly pack: CardPack
  readonly at: string
  /** The server's name for what is in it: asked with it, the server sends only something newer. */
  readonly tag?: string | null
}

export type StorageRefusal = 'phone-full' | 'phone-keeps-nothing'

export interface OutboxStore {
  /** False when everything is gone with the page. */
  readonly lasting: boolean

  /** The queue of a link, made on the first call. */
  queue(link: string): Promise<QueueRecord>
  setHolder(link: string, hold: Hold): Promise<void>
  setReadTaken(link: string, since: string): Promise<void>
  setEnded(link: string, ended: QueueRecord['ended']): Promise<void>
  setPlayRead(link: string, number: number): Promise<void>

  /** Takes the next number and writes the fact in one transaction; answers only when it is on the phone. */
  keep(link: string, what: ToKeep, writtenAt: string): Promise<Result<KeptFact, StorageRefusal>>
  /** Every fact of the link, oldest first. */
  facts(link: string): Promise<readonly KeptFact[]>
  /** Facts not settled yet, oldest first. */
  waiting(link: string, atMost: number): Promise<readonly KeptFact[]>
  /** Writes the server's answers to the facts that were sent, and the time, in one transaction. */
  settle(link: string, sent: readonly number[], answer: DeliveryAnswer, at: string): Promise<void>
  /** The server has lost what it had after `lastSeq`: those facts wait again. */
  waitAgain(link: string, lastSeq: number): Promise<void>
  markSeen(link: string, seqs: readonly number[]): Promise<void>

  pack(link: string): Promise<KeptPack | null>
  keepPack(link: string, pack: CardPack, at: string, tag?: string | null): Promise<void>

  /** Every pack on this phone, newest day first. */
  packs(): Promise<readonly (KeptPack & { readonly link: string })[]>

  /** Links with something waiting and not ended. */
  linksWaiting(): Promise<readonly string[]>

  /** True when `by` may send until `until`; false while another sender's lease runs. */
  takeLease(link: string, by: string, now: number, until: number): Promise<boolean>
  dropLease(link: string, by: string): Promise<void>
}
