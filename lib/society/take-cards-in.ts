// The desk accepts every card that is handed in with nothing open on it, in one press: each as it was on the screen, and
// each with its own line in the record of acts.

import 'server-only'
import type { z } from 'zod'
import { currentCard, faultsOf } from '@/lib/boards/current-card'
import { totalsThatDiffer } from '@/lib/boards/paper-totals'
import type { Actor } from '@/lib/facts/actor'
import { takeCardsIn as schema } from '@/lib/facts/commands'
import { ok, type Result } from '@/lib/result'
import { versionText } from '@/lib/store/day-versions'
import { cardSources, moveScores } from '@/lib/store/score-facts'
import { cardInWords } from '@/lib/store/subjects'
import { write } from '@/lib/store/write'
import { changedSince } from './card-as-seen'
import { takeDayOn } from './day-on'
import { deskOnly, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import { cardInItsDay } from './signing-sources'
import { accept, dayClosed } from './take-card-in'

interface CardsTakenIn {
  readonly accepted: number
  /** Whose card was left as it is, because it is not any more what was on the screen. */
  readonly left: readonly string[]
}

export async function takeCardsIn(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<CardsTakenIn, 'not-allowed' | 'not-understood' | 'not-found' | 'day-called-off' | 'day-closed'>> {
  const officer = deskOnly(actor, 'take-card-in')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, cards } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on
    if (on.value.status === 'closed') return dayClosed()
    // All are looked up before the first is accepted: a refusal halfway would leave cards accepted that no board hears of.
    const found = []
    for (const { cardId, seen } of cards) {
      const sources = await cardSources(tx, { societyId, dayId, cardId })
      if (!sources) return notFound('card')
      found.push({ cardId, seen, sources })
    }
    const left: string[] = []
    let accepted = 0
    for (const { cardId, seen, sources } of found) {
      const { card } = sources
      if (card.state === 'taken-in') continue
      const stands = await cardInItsDay(tx, { societyId, dayId }, card.entryId, currentCard(sources))
      const isOther = changedSince(stands, { was: seen, scores: seen, isAccepted: false }) !== null
      const differs = card.paper ? totalsThatDiffer(stands.scores, card.paper).length > 0 : false
      if (isOther || differs || card.state !== 'handed-in' || faultsOf(stands).length > 0) {
        left.push(await cardInWords(tx, societyId, cardId))
        continue
      }
      const done = await accept(tx, officer.value, { dayId, day: on.value, sources, card: stands }, now)
      if (done.ok) accepted++
      else left.push(await cardInWords(tx, societyId, cardId))
    }
    if (accepted === 0) return ok({ accepted, left, version: null })
    return ok({ accepted, left, version: versionText(await moveScores(tx, dayId, false)) })
  })
  if (!done.ok) return done
  const { version, ...answer } = done.value
  if (version) live().announce(dayId, version)
  return ok(answer)
}
