// What a delivery comes to, fact by fact, before anything is saved. Plain values in and out.

import { randomUUID } from 'node:crypto'
import { endingInWords } from '@/lib/boards/match-ending-words'
import type { CardId, DeviceId, PairingId, SocietyId } from '@/lib/facts/ids'
import { endingAfter, type MatchEnding } from '@/lib/facts/match-ending'
import type { DeviceFact, FactAnswer } from '@/lib/facts/score-fact'
import type { NewBallFact } from '@/lib/store/ball-facts'
import type { NewConcession } from '@/lib/store/concessions'
import type { NewFact, NewSignature, RefusedOnce } from '@/lib/store/score-facts'
import { afterFact, type GroupCards, type Taken, takeFact } from './take-fact'

export interface DeliveryPlan {
  /** Settled before this delivery: they get their first answers. */
  readonly repeats: readonly number[]
  readonly answers: readonly FactAnswer[]
  readonly facts: readonly NewFact[]
  readonly signatures: readonly NewSignature[]
  readonly balls: readonly NewBallFact[]
  readonly concessions: readonly NewConcession[]
  /** Endings that read otherwise, in turn, with what the record of acts says of it. */
  readonly endings: readonly EndingWritten[]
  readonly refused: readonly RefusedOnce[]
  readonly withdraws: readonly { readonly cardId: CardId; readonly role: 'player' | 'marker' }[]
  readonly handedIn: readonly CardId[]
  readonly lastSeq: number
}

export interface EndingWritten {
  readonly pairingId: PairingId
  readonly subject: string
  readonly ending: MatchEnding
  readonly before: string
  readonly after: string
  readonly writer: string
}

/** Fact by fact from the number that is due; stops at the first gap. */
export function planDelivery(
  sources: GroupCards,
  facts: readonly DeviceFact[],
  lastSeq: number,
  societyId: SocietyId,
  deviceId: DeviceId,
  now: Date,
): DeliveryPlan {
  let group = sources
  let due = lastSeq + 1
  const plan = {
    repeats: [] as number[],
    answers: [] as FactAnswer[],
    facts: [] as NewFact[],
    signatures: [] as NewSignature[],
    balls: [] as NewBallFact[],
    concessions: [] as NewConcession[],
    endings: [] as EndingWritten[],
    refused: [] as RefusedOnce[],
    withdraws: [] as DeliveryPlan['withdraws'][number][],
    handedIn: [] as CardId[],
  }
  for (const fact of facts) {
    if (fact.seq <= lastSeq) {
      if (!plan.repeats.includes(fact.seq)) plan.repeats.push(fact.seq)
      continue
    }
    if (fact.seq < due) continue
    if (fact.seq > due) break
    const taken = takeFact(group, fact, deviceId)
    group = afterFact(group, fact, deviceId, taken, now)
    due++
    plan.answers.push(answerTo(fact.seq, taken))
    const origin = { societyId, deviceId, seq: fact.seq }
    if (taken.kind === 'refused') {
      const { code, sentence } = taken
      plan.refused.push({ societyId, deviceId, fact, code, sentence, refusedAt: now })
    } else if (taken.kind === 'score' && fact.kind === 'score') {
      const { cardId, hole, score } = fact
      plan.facts.push({
        ...origin,
        cardId,
        hole,
        score,
        writerId: fact.writer,
        userId: null,
        replaces: fact.replaces ?? [],
        writtenAt: new Date(fact.writtenAt),
        receivedAt: now,
        late: taken.late !== null,
      })
      for (const role of taken.withdraws) {
        plan.withdraws.push({ cardId, role })
        plan.signatures = plan.signatures.map((one) =>
          one.cardId === cardId && one.role === role ? { ...one, withdrawnAt: now } : one,
        )
      }
    } else if (taken.kind === 'signature' && fact.kind === 'signature') {
      const { cardId, role, scores } = fact
      plan.signatures.push({
        ...origin,
        id: randomUUID(),
        cardId,
        role,
        entryId: taken.entryId,
        scores,
        signedAt: new Date(fact.writtenAt),
        receivedAt: now,
        withdrawnAt: null,
      })
      if (taken.handsIn) plan.handedIn.push(cardId)
    } else if (taken.kind === 'ball' && (fact.kind === 'drive' || fact.kind === 'ball-lost')) {
      plan.balls.push({
        ...origin,
        sideId: fact.sideId,
        kind: fact.kind,
        hole: fact.hole,
        entryId: fact.kind === 'drive' ? fact.entryId : null,
        lost: fact.kind === 'ball-lost' && fact.lost,
        writerId: fact.writer,
        userId: null,
        writtenAt: new Date(fact.writtenAt),
        receivedAt: now,
        late: taken.late !== null,
      })
    } else if (taken.kind === 'concession' && fact.kind === 'concession') {
      const { hole, by, writer } = fact
      const { match, late } = taken
      plan.concessions.push({
        ...origin,
        pairingId: match.id,
        hole,
        by,
        writerId: writer,
        writtenAt: new Date(fact.writtenAt),
        receivedAt: now,
        late: late !== null,
      })
      const ending = endingAfter(match.ending, fact)
      const say = (one: MatchEnding) => endingInWords(one, match.a, match.b)
      // Said again by another phone: it stands already.
      if (late === null && say(ending) !== say(match.ending))
        plan.endings.push({
          pairingId: match.id,
          subject: match.subject,
          ending,
          before: say(match.ending),
          after: say(ending),
          writer: sources.nameOf[writer] ?? 'a player of the group',
        })
    }
  }
  return { ...plan, lastSeq: due - 1 }
}

function answerTo(seq: number, taken: Taken): FactAnswer {
  if (taken.kind === 'refused') return { seq, answer: 'refused', code: taken.code, sentence: taken.sentence }
  if (taken.kind !== 'signature' && taken.late !== null) return { seq, answer: 'late', sentence: taken.late }
  return { seq, answer: 'received' }
}
