// What an answer of the server does to the facts that were sent. Plain values, shared by both stores.

import type { DeliveryAnswer } from '@/lib/facts/score-fact'
import type { KeptFact } from './kept-fact'

/** Settled facts only; a sent fact the answer says nothing about keeps waiting. */
export function settled(facts: readonly KeptFact[], answer: DeliveryAnswer, at: string): readonly KeptFact[] {
  const bySeq = new Map(answer.answers.map((each) => [each.seq, each]))
  const changed: KeptFact[] = []
  for (const kept of facts) {
    if (kept.state !== 'kept') continue
    const said = bySeq.get(kept.seq)
    const stamp = { settledAt: at, settledVersion: answer.scoreVersion }
    if (said?.answer === 'refused') {
      changed.push({ ...kept, ...stamp, state: 'refused', code: said.code, sentence: said.sentence })
    } else if (said?.answer === 'late') {
      changed.push({ ...kept, ...stamp, state: 'late', sentence: said.sentence })
    } else if (said?.answer === 'received' || (!said && kept.seq <= answer.lastSeq)) {
      // A number the server has passed is settled even when the answer does not repeat what it said the first time.
      changed.push({ ...kept, ...stamp, state: 'received' })
    }
  }
  return changed
}

/**
 * A server put back from a copy has forgotten its newest facts; the phone still has them and sends them again. The
 * refused ones too: their numbers have to pass, and the answer will be the same.
 */
export function waitingAgain(facts: readonly KeptFact[], lastSeq: number): readonly KeptFact[] {
  return facts
    .filter((kept) => kept.seq > lastSeq && kept.state !== 'kept')
    .map((kept) => ({ ...kept, state: 'kept', code: null, sentence: null, settledAt: null, settledVersion: null }))
}
