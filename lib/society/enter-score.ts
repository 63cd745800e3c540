// Scores from a group's phone. Nothing is acknowledged before it is committed, and a repeat gets its first answer.

import { shownHole } from '@/lib/rules/hole-numbers'
import 'server-only'
import { randomUUID } from 'node:crypto'
import { holeWords, paperWords } from '@/lib/boards/acts-in-words'
import { calledOffSentence } from '@/lib/boards/called-off'
import { type CurrentCard, currentCard, faultsOf } from '@/lib/boards/current-card'
import { changedInWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { type KeyCard, keyCard as keySchema } from '@/lib/facts/commands'
import { type Delivery, type DeliveryAnswer, delivery as schema } from '@/lib/facts/score-fact'
import { deviceIn } from '@/lib/facts/writer'
import { type Ok, ok, type Refused, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { withSides } from '@/lib/store/ball-facts'
import { writePaper } from '@/lib/store/card-states'
import { versionText } from '@/lib/store/day-versions'
import {
  addFacts,
  addSignatures,
  cardSources,
  deskDevice,
  earlierAnswers,
  groupSources,
  handInCard,
  moveDevice,
  moveScores,
  type NewFact,
  type PhoneSays,
  takeDevice,
  withdrawSignatures,
} from '@/lib/store/score-facts'
import { cardInWords } from '@/lib/store/subjects'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { changedSince } from './card-as-seen'
import { whyAhead, whyCalledOff } from './day-on'
import { live } from './live'
import { parseInput } from './parse-input'
import { planDelivery } from './plan-delivery'
import { savePlan } from './save-plan'
import { cardInItsDay, cardsTouched, withSigning } from './signing-sources'
import { unsaved, whyClosed, withdrawnBy } from './take-fact'

/** The number that should have come is not there: nothing was taken, send from `expected` on. */
export interface DeliveryGap extends Refused<'gap'> {
  readonly expected: number
}
export type DeliveryRefused = DeliveryGap | Refused<'not-allowed' | 'not-understood' | 'no-such-group'>

export async function deliverFacts(
  actor: Actor,
  delivery: unknown,
  now: Date = new Date(),
): Promise<Ok<DeliveryAnswer> | DeliveryRefused> {
  const no = mayNot(actor, 'enter-score')
  if (no) return no
  if (actor.kind !== 'scorer') return refused('not-allowed', 'Cards are keyed at the desk from its own page.')
  const read = parseInput(schema, delivery)
  if (!read.ok) return read

  const device = {
    id: deviceIn(actor.groupId, read.value.deviceId),
    societyId: actor.societyId,
    groupId: actor.groupId,
  }
  const inOrder = [...read.value.facts].sort((a, b) => a.seq - b.seq)
  const done = await write(async (tx) => {
    const lastSeq = await takeDevice(tx, device, now, saysOf(read.value))
    const group = lastSeq === null ? null : await groupSources(tx, actor, cardsTouched(inOrder))
    if (lastSeq === null || !group)
      return refused('no-such-group', 'That group is not in this day any more. Ask the desk for the new start sheet.')
    if (group.calledOff !== null) return refused('no-such-group', calledOffSentence(group.calledOff))
    const sources = await withSigning(tx, actor, inOrder, await withSides(tx, actor, inOrder, group))
    const plan = planDelivery(sources, inOrder, lastSeq, actor.societyId, device.id, now)
    const repeats = await earlierAnswers(tx, device.id, plan.repeats)
    if (plan.lastSeq === lastSeq && !plan.repeats.length) return gap(lastSeq + 1)
    if (plan.lastSeq === lastSeq) {
      // Only as far as this delivery goes: what was settled beyond it, the phone has not been told yet.
      const told = Math.max(...plan.repeats)
      return ok({ answers: [...repeats.values()], lastSeq: told, scoreVersion: group.scoreVersion, version: null })
    }

    const sender = { ...actor, status: group.status, deviceId: device.id, lastSeq }
    const day = await savePlan(tx, sender, plan, now)
    return ok({
      answers: [...repeats.values(), ...plan.answers],
      lastSeq: plan.lastSeq,
      scoreVersion: day?.scoreVersion ?? group.scoreVersion,
      version: day && versionText(day),
    })
  })
  if (!done.ok) return done
  const { version, ...answer } = done.value
  if (version) live().announce(actor.dayId, version)
  return ok(answer)
}

/** After this delivery: what it carries is no longer only on the phone. */
export function saysOf({ unsent, app, facts }: Delivery): PhoneSays {
  return {
    ...(unsent === undefined ? {} : { unsent: Math.max(0, unsent - facts.length) }),
    ...(app === undefined ? {} : { appVersion: app }),
  }
}

function gap(expected: number): DeliveryGap {
  return { ...refused('gap', `Some scores before these have not arrived. Send from number ${expected} on.`), expected }
}

const ON_PAPER = 'Totals on the paper'

/** Who has signed what stands, for the record: a signature that was there before is no news. */
const signedWords = ({ player, marker }: CurrentCard) =>
  [player && 'player', marker && 'marker'].filter((role) => typeof role === 'string').join(', ') || 'no'

export interface Keyed {
  readonly scoreVersion: number
  /** True when nothing stands in the way of taking the card in. */
  readonly ready: boolean
}

/** A paper card keyed at the desk: the desk is one more writer on the card. Only what differs is written. */
export async function keyCard(
  actor: Actor,
  input: KeyCard,
  now: Date = new Date(),
): Promise<
  Result<
    Keyed,
    'not-allowed' | 'not-understood' | 'no-such-card' | 'day-called-off' | 'day-ahead' | 'card-closed' | 'card-moved-on'
  >
> {
  const no = mayNot(actor, 'enter-score')
  if (no) return no
  if (actor.kind !== 'officer') return refused('not-allowed', 'Paper cards are keyed at the desk.')
  const read = parseInput(keySchema, input)
  if (!read.ok) return read
  const { dayId, cardId, scores, was, paper: totals, signed } = read.value
  const { societyId, userId } = actor
  const device = { id: deskDevice(societyId, userId), societyId, groupId: null }

  const done = await write(async (tx) => {
    const lastSeq = await takeDevice(tx, device, now)
    const sources = await cardSources(tx, { societyId, dayId, cardId })
    if (!sources || lastSeq === null) return refused('no-such-card', 'That card is not in this day.')
    const notNow = whyCalledOff(sources.day) ?? whyAhead(sources.day, now)
    if (notNow) return notNow
    const { card, holes } = sources
    if (scores.length !== holes)
      return refused('not-understood', `This round has ${holes} holes, not ${scores.length}.`)
    const isAccepted = card.state === 'taken-in'
    const moved = was ? changedSince(currentCard(sources), { was, scores, isAccepted }) : null
    if (moved) return moved
    const closed = whyClosed(sources.status, card)
    if (closed) return refused('card-closed', `${closed} A change now is a ruling of the committee, with its reason.`)

    const origin = { societyId, cardId, deviceId: device.id, receivedAt: now }
    let { facts, signatures } = sources
    const added: NewFact[] = []
    const said = currentCard(sources).holes.map(
      (line) => line.opinions.find((one) => one.writer === 'desk')?.score ?? null,
    )
    for (const [at, score] of scores.entries()) {
      if (score === (said[at] ?? null)) continue
      const seq = lastSeq + added.length + 1
      const fact = {
        hole: shownHole(sources, at),
        score,
        writer: 'desk' as const,
        deviceId: device.id,
        seq,
        replaces: null,
      }
      const gone = withdrawnBy(
        { ...sources, facts, signatures },
        card,
        currentCard({ ...sources, facts, signatures }),
        fact,
      )
      for (const role of gone) await withdrawSignatures(tx, cardId, role, now)
      signatures = signatures.map((one) =>
        one.withdrawnAt === null && gone.includes(one.role) ? { ...one, withdrawnAt: now } : one,
      )
      facts = [...facts, unsaved(cardId, fact, { id: (facts.at(-1)?.id ?? 0) + 1 })]
      const by = { writerId: null, userId, replaces: null }
      added.push({ ...origin, ...by, seq, hole: fact.hole, score, writtenAt: now, late: false })
    }
    const live = currentCard({ ...sources, facts, signatures })
    const roles = (['player', 'marker'] as const).filter((role) => signed[role] && !live[role])
    const paper = roles.map((role, at) => ({
      ...origin,
      id: randomUUID(),
      role,
      entryId: null,
      scores,
      seq: lastSeq + added.length + at + 1,
      signedAt: now,
      withdrawnAt: null,
    }))
    await addFacts(tx, added)
    await addSignatures(tx, paper)
    const keyed = currentCard({ ...sources, facts, signatures: [...signatures, ...paper] })
    const after = await cardInItsDay(tx, { societyId, dayId }, card.entryId, keyed)
    const ready = faultsOf(after).length === 0
    if (ready && after.player && after.marker) await handInCard(tx, societyId, cardId)
    const steps = added.length + paper.length
    const sums = totals && paperWords(totals) !== paperWords(card.paper) ? totals : null
    if (sums) await writePaper(tx, { societyId, cardId, paper: sums })
    if (!steps && !sums) return ok({ scoreVersion: sources.scoreVersion, ready, version: null })
    if (steps && !(await moveDevice(tx, device.id, lastSeq, lastSeq + steps)))
      throw new Error(`The number of ${device.id} moved inside the transaction.`)
    const record = {
      subject: await cardInWords(tx, societyId, cardId),
      subjectId: cardId,
      ...changedInWords(
        {
          ...holeWords(said, sources),
          Signed: signedWords(currentCard(sources)),
          [ON_PAPER]: paperWords(card.paper),
        },
        {
          ...holeWords(scores, sources),
          Signed: signedWords(keyed),
          [ON_PAPER]: paperWords(sums ?? card.paper),
        },
      ),
    }
    await recordAct(tx, actor, { act: 'enter-score', area: 'results', ...record }, now)
    const day = await moveScores(tx, dayId, sources.status === 'frozen' && added.length > 0)
    return ok({ scoreVersion: day.scoreVersion, ready, version: versionText(day) })
  })
  if (!done.ok) return done
  const { version, ...keyed } = done.value
  if (version) live().announce(dayId, version)
  return ok(keyed)
}
