// The day is closed once every card is in or ruled upon: ties are broken, and a score that comes later is a late fact.

import type { CardId, DayId } from '@/lib/facts/ids'
import 'server-only'
import type { z } from 'zod'
import { CLOSED_WITHOUT } from '@/lib/boards/current-card'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { type CardInTheWay, cardsInTheWay } from '@/lib/boards/returns'
import type { InWords } from '@/lib/facts/act-record'
import type { Actor } from '@/lib/facts/actor'
import { closeDay as schema } from '@/lib/facts/commands'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { closeTheDay } from '@/lib/store/day-closing'
import { dayRecordIn } from '@/lib/store/day-record'
import { versionText } from '@/lib/store/day-versions'
import { cardSources, moveScores } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { takeDayOn, whyAhead } from './day-on'
import { deskOnly, movedOn, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import { putRuling, type RulingToGive } from './ruling-in-book'

/**
 * Refused as `cards-still-out` with a fault for each card that is neither accepted nor ruled upon. Cards that never came
 * back may be closed over when the officer names how many: each is then ruled a no return, in the same transaction.
 */
export async function closeDay(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<
  Result<
    { version: number },
    | 'not-allowed'
    | 'not-understood'
    | 'not-found'
    | 'day-moved-on'
    | 'day-called-off'
    | 'day-not-in-play'
    | 'day-ahead'
    | 'no-cards'
    | 'cards-still-out'
  >
> {
  const officer = deskOnly(actor, 'close-day')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, version } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on
    const day = on.value
    // The same request sent twice: the first one closed the day.
    if (day.status === 'closed' && day.version === version + 1) return ok({ version: day.version, announce: null })
    if (day.version !== version) return movedOn()
    if (day.status === 'called' || day.status === 'closed')
      return refused(
        'day-not-in-play',
        day.status === 'closed' ? 'The day is closed already.' : 'The day has not begun: there are no cards yet.',
      )
    const ahead = whyAhead(day, now)
    if (ahead) return ahead
    const record = await dayRecordIn(tx, { societyId, dayId })
    if (!record) return notFound('day')
    if (record.cards.length === 0)
      return refused(
        'no-cards',
        'No card has been made out: publish the start sheet first. If nobody plays, call the day off.',
      )
    const inTheWay = cardsInTheWay(record, cardsAsTheyStand(record))
    const asks = mayClose(inTheWay, read.value.notReturned)
    if (asks) return asks
    for (const { cardId } of inTheWay) {
      const sources = await cardSources(tx, { societyId, dayId, cardId })
      if (!sources) return notFound('card')
      const put = await putRuling(tx, officer.value, day, sources, noReturnOf(dayId, cardId), now)
      if (!put.ok) throw new Error(`No return could not be ruled on card ${cardId}: ${put.code}.`)
    }
    if (inTheWay.length > 0) await moveScores(tx, dayId, false)
    if (!(await closeTheDay(tx, { societyId, dayId, version }, now))) return movedOn()
    const closed = { subject: record.name, subjectId: dayId, version: version + 1 }
    const notReturned: InWords = inTheWay.length > 0 ? { 'Not returned': inTheWay.map(({ place }) => place) } : {}
    const words = { before: { Day: day.status.replace('-', ' ') }, after: { Day: 'closed', ...notReturned } }
    await recordAct(tx, actor, { act: 'close-day', area: 'results', ...closed, ...words }, now)
    const scoreVersion = day.scoreVersion + (inTheWay.length > 0 ? 1 : 0)
    return ok({ version: version + 1, announce: versionText({ version: version + 1, scoreVersion }) })
  })
  if (!done.ok) return done
  if (done.value.announce) live().announce(dayId, done.value.announce)
  return ok({ version: done.value.version })
}

/** What is handed in must be accepted or ruled upon; what is still out asks to be named as not returned. */
function mayClose(inTheWay: readonly CardInTheWay[], notReturned: number): Refused<'cards-still-out'> | null {
  const handedIn = inTheWay.filter((card) => !card.isOut)
  if (inTheWay.length === notReturned && handedIn.length === 0) return null
  const faults = inTheWay.map(({ place, sentence }) => ({ place, sentence }))
  if (handedIn.length > 0)
    return refused(
      'cards-still-out',
      handedIn.length === 1
        ? 'One card is handed in and not accepted yet.'
        : `${handedIn.length} cards are handed in and not accepted yet.`,
      faults,
    )
  if (inTheWay.length === 0)
    return refused('cards-still-out', 'Every card is in by now: look at the result, then close the day again.')
  return refused(
    'cards-still-out',
    inTheWay.length === 1 ? 'One card is still out.' : `${inTheWay.length} cards are still out.`,
    faults,
  )
}

const noReturnOf = (dayId: DayId, cardId: CardId): RulingToGive => ({
  dayId,
  cardId,
  kind: 'no-return',
  hole: null,
  value: null,
  clause: '',
  reason: CLOSED_WITHOUT,
  replaces: null,
})
