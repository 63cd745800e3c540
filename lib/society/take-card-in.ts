// The desk accepts a card: complete, agreed and signed, or ruled upon. A ruling by which the
// day was closed without it is taken back. After this a ruling changes it, or it is opened again.

import 'server-only'
import type { z } from 'zod'
import { type CurrentCard, currentCard, faultsOf } from '@/lib/boards/current-card'
import type { Actor } from '@/lib/facts/actor'
import { takeCardIn as schema } from '@/lib/facts/commands'
import type { CardId, DayId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { takeIn } from '@/lib/store/card-states'
import type { Tx } from '@/lib/store/client'
import { type DayNow, versionText } from '@/lib/store/day-versions'
import { cardSources, moveScores, type OneCardSources } from '@/lib/store/score-facts'
import { cardInWords } from '@/lib/store/subjects'
import { write } from '@/lib/store/write'
import { changedSince } from './card-as-seen'
import { takeDayOn } from './day-on'
import { deskOnly, notFound, type Officer } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import { putRuling, type RulingToGive } from './ruling-in-book'
import { cardInItsDay } from './signing-sources'

/** Refused as `card-not-ready` with every fault named. Taking a card in twice answers the same. */
export async function takeCardIn(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<
  Result<
    { scoreVersion: number },
    | 'not-allowed'
    | 'not-understood'
    | 'not-found'
    | 'day-called-off'
    | 'day-closed'
    | 'card-not-ready'
    | 'no-such-ruling'
    | 'card-moved-on'
  >
> {
  const officer = deskOnly(actor, 'take-card-in')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, cardId, seen } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on.code === 'not-found' ? notFound('card') : on
    const day = on.value
    const sources = await cardSources(tx, { societyId, dayId, cardId })
    if (!sources) return notFound('card')
    const card = await cardInItsDay(tx, { societyId, dayId }, sources.card.entryId, currentCard(sources))
    const isAccepted = sources.card.state === 'taken-in'
    const other = seen ? changedSince(card, { was: seen, scores: seen, isAccepted }) : null
    if (other) return other
    if (isAccepted) return ok({ scoreVersion: day.scoreVersion, version: null })
    if (day.status === 'closed') return dayClosed()
    const faults = faultsOf(card)
    if (faults.length)
      return refused('card-not-ready', 'The card cannot be accepted yet; each reason stands below.', faults)
    const accepted = await accept(tx, officer.value, { dayId, day, sources, card }, now)
    if (!accepted.ok) return accepted
    const moved = await moveScores(tx, dayId, false)
    return ok({ scoreVersion: moved.scoreVersion, version: versionText(moved) })
  })
  if (!done.ok) return done
  const { version, scoreVersion } = done.value
  if (version) live().announce(dayId, version)
  return ok({ scoreVersion })
}

/** The day was closed without this card and opened again: that ruling of the close counts no longer. */
const returnedAfterAll = (of: { readonly dayId: DayId; readonly cardId: CardId }, number: number): RulingToGive => ({
  dayId: of.dayId,
  cardId: of.cardId,
  kind: 'withdrawn-ruling',
  hole: null,
  value: null,
  clause: '',
  reason: 'The card was returned after the day was opened again.',
  replaces: number,
})

export const dayClosed = () =>
  refused('day-closed', 'The day is closed. Open it again, with the reason, before you accept a card.')

interface ToAccept {
  readonly dayId: DayId
  readonly day: DayNow
  readonly sources: OneCardSources
  readonly card: CurrentCard
}

/** With its line in the record of acts; the ruling by which the day was closed without the card is taken back. */
export async function accept(
  tx: Tx,
  officer: Officer,
  { dayId, day, sources, card }: ToAccept,
  now: Date,
): Promise<Result<void, 'not-understood' | 'day-closed' | 'no-such-ruling'>> {
  const { societyId, userId } = officer
  const { id: cardId, state } = sources.card
  if (card.closedWithout !== null) {
    const ruling = returnedAfterAll({ dayId, cardId }, card.closedWithout)
    const back = await putRuling(tx, officer, day, sources, ruling, now)
    if (!back.ok) return back
  }
  await takeIn(tx, { societyId, cardId, by: userId, at: now })
  const subject = await cardInWords(tx, societyId, cardId)
  const [before, after] = [{ Card: state.replace('-', ' ') }, { Card: 'accepted' }]
  await recordAct(tx, officer, { act: 'take-card-in', area: 'results', subject, subjectId: cardId, before, after }, now)
  return ok()
}
