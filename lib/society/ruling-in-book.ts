// One ruling put into the book inside a transaction: checked, numbered, with what it takes the place of. Shared by a ruling
// of the committee's own words and by one chosen from the list.

import type { RulingId } from '@/lib/facts/ids'
import 'server-only'
import { randomUUID } from 'node:crypto'
import type { z } from 'zod'
import { HANDICAP_RULINGS, rulingsInForce } from '@/lib/boards/current-card'
import { rulingSentence, usualClause } from '@/lib/boards/ruling-sentences'
import type { Actor } from '@/lib/facts/actor'
import { indexTenths, type ruleOnCard } from '@/lib/facts/commands'
import type { RulingRecord } from '@/lib/facts/day-record'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import { hasHole, type RoundHoles, rangeInWords } from '@/lib/rules/hole-numbers'
import { recordAct } from '@/lib/store/acts'
import type { Tx } from '@/lib/store/client'
import type { DayNow } from '@/lib/store/day-versions'
import { addRuling, nextRulingNumber } from '@/lib/store/rulings'
import type { OneCardSources } from '@/lib/store/score-facts'
import { cardInWords } from '@/lib/store/subjects'
import { notUnderstood, parseInput } from './parse-input'

export type RulingToGive = z.output<typeof ruleOnCard>
type Officer = Extract<Actor, { kind: 'officer' }>
type Refusals = 'not-understood' | 'day-closed' | 'no-such-ruling'

/** `repeated` when the same ruling is in force already: the same form sent twice is one ruling. */
export async function putRuling(
  tx: Tx,
  officer: Officer,
  day: Pick<DayNow, 'status'>,
  sources: Pick<OneCardSources, 'holes' | 'firstHole' | 'rulings'>,
  ruling: RulingToGive,
  now: Date,
): Promise<Result<{ number: number; repeated: boolean }, Refusals>> {
  const { societyId, userId, name } = officer
  const { dayId, cardId } = ruling
  const wrong = wrongWith(ruling, sources)
  if (wrong) return wrong
  const inForce = rulingsInForce(sources.rulings)
  const twin = [...inForce, ...sources.rulings.filter(({ kind }) => kind === 'withdrawn-ruling')].find((one) =>
    isSame(one, ruling),
  )
  if (twin) return ok({ number: twin.number, repeated: true })
  if (day.status === 'closed')
    return refused('day-closed', 'The day is closed. Open it again, with the reason, before you rule on a card.')
  const replaced = ruling.replaces ?? takesPlaceOf(ruling, inForce)
  if (replaced !== null && !inForce.some((one) => one.number === replaced))
    return refused('no-such-ruling', `Ruling ${replaced} is not in force on this card. Look at the list again.`)
  const number = await nextRulingNumber(tx, dayId)
  await addRuling(tx, {
    id: randomUUID() as string as RulingId,
    societyId,
    dayId,
    cardId,
    number,
    kind: ruling.kind,
    hole: ruling.hole,
    value: ruling.value,
    clause: ruling.clause || usualClause(ruling.kind),
    reason: ruling.reason,
    byUserId: userId,
    byName: name,
    ruledAt: now,
    replaces: replaced,
  })
  const earlier = inForce.find((one) => one.number === replaced)
  const record = {
    subject: await cardInWords(tx, societyId, cardId),
    subjectId: cardId,
    before: earlier ? { [`Ruling ${earlier.number}`]: rulingSentence(earlier) } : null,
    after: { [`Ruling ${number}`]: rulingSentence(ruling), Reason: ruling.reason },
  }
  await recordAct(tx, officer, { act: 'rule-on-card', area: 'results', ...record }, now)
  return ok({ number, repeated: false })
}

function wrongWith(ruling: RulingToGive, round: RoundHoles): Refused<'not-understood'> | null {
  const { kind, hole, value } = ruling
  const fault = (place: string, sentence: string) => notUnderstood([{ place, sentence }])
  const ofHole = kind === 'hole-score' || kind === 'penalty-strokes'
  if (ofHole && hole === null) return fault('hole', 'Say which hole the ruling is about.')
  if (hole !== null && !hasHole(round, hole)) return fault('hole', `This round has ${rangeInWords(round)}.`)
  if (kind === 'hole-score' && value !== null && (value < 1 || value > 30))
    return fault('value', 'A hole takes 1 to 30 strokes, or no score.')
  if ((kind === 'penalty-strokes' || kind === 'penalty-points') && (value === null || value < 1))
    return fault('value', 'Say how many.')
  const handicap = HANDICAP_RULINGS.includes(kind)
  if (handicap && value === null) return fault('value', 'Say which handicap counts.')
  if (kind === 'handicap-index') {
    const index = parseInput(indexTenths, value)
    if (!index.ok) return fault('value', index.sentence)
  }
  if (handicap && kind !== 'handicap-index' && value !== null && (value < -20 || value > 99))
    return fault('value', 'A course or playing handicap is a whole number from +20 to 99.')
  if ((kind === 'penalty-strokes' || kind === 'penalty-points') && value !== null && value > 60)
    return fault('value', 'That is more than a penalty can be.')
  if (kind === 'withdrawn-ruling' && ruling.replaces === null)
    return fault('replaces', 'Say which ruling is taken back.')
  return null
}

const OUTCOMES: readonly string[] = ['no-return', 'disqualified', 'withdrawn']

/** A second ruling on the same thing stands in place of the first, also when nobody said so. */
function takesPlaceOf(ruling: RulingToGive, inForce: readonly RulingRecord[]): number | null {
  const before = inForce.findLast((one) => {
    // A card that stands after all is a returned one.
    if (ruling.kind === 'card-stands') return one.kind === 'no-return'
    if (OUTCOMES.includes(ruling.kind)) return OUTCOMES.includes(one.kind)
    if (ruling.kind === 'hole-score') return one.kind === 'hole-score' && one.hole === ruling.hole
    return HANDICAP_RULINGS.includes(ruling.kind) && HANDICAP_RULINGS.includes(one.kind)
  })
  return before?.number ?? null
}

function isSame(one: RulingRecord, ruling: RulingToGive): boolean {
  return (
    one.kind === ruling.kind &&
    one.hole === ruling.hole &&
    one.value === ruling.value &&
    one.reason === ruling.reason &&
    (ruling.replaces === null || one.replaces === ruling.replaces)
  )
}
