// The committee chooses what was wrong with a card and which answer of the list it gets. The rulings that carry the answer
// out are put in together, or none of them.

import 'server-only'
import { currentCard } from '@/lib/boards/current-card'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { actsOfChoice } from '@/lib/boards/ruling-acts'
import { scoreEffect } from '@/lib/boards/score-effect'
import type { Actor } from '@/lib/facts/actor'
import { type RuleByChoice, ruleByChoice as schema } from '@/lib/facts/commands'
import { ok, type Result } from '@/lib/result'
import { dayRecordIn } from '@/lib/store/day-record'
import { versionText } from '@/lib/store/day-versions'
import { cardSources, moveScores } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { takeDayOn } from './day-on'
import { deskOnly, notFound } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'
import type { RulingRefusals } from './rule-on-card'
import { putRuling } from './ruling-in-book'

/** `number` of the last ruling put in. */
export async function ruleByChoice(
  actor: Actor,
  input: RuleByChoice,
  now: Date = new Date(),
): Promise<Result<{ number: number; rulings: number; scoreVersion: number }, RulingRefusals>> {
  const officer = deskOnly(actor, 'rule-on-card')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { dayId, cardId, reason } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on.code === 'not-found' ? notFound('card') : on
    const day = on.value
    const record = await dayRecordIn(tx, { societyId, dayId })
    const first = await cardSources(tx, { societyId, dayId, cardId })
    if (!record || !first) return notFound('card')
    const group = record.groups.find((one) => one.entryIds.includes(first.card.entryId))
    const chosen = actsOfChoice(
      read.value,
      cardsAsTheyStand(record).get(first.card.entryId) ?? currentCard(first),
      group?.startHole ?? record.round.firstHole,
      (hole, made) => scoreEffect(record, first.card.entryId, hole, made),
    )
    if (!chosen.ok) return chosen
    const { ruling, choice, acts, said } = chosen.value
    let number = 0
    let given = 0
    for (const act of acts) {
      const sources = await cardSources(tx, { societyId, dayId, cardId })
      if (!sources) return notFound('card')
      const put = await putRuling(
        tx,
        officer.value,
        day,
        sources,
        {
          dayId,
          cardId,
          ...act,
          clause: choice.clause,
          reason: `${ruling.name}. ${said === null ? '' : `${said} `}${reason}`.slice(0, 400),
          replaces: null,
        },
        now,
      )
      if (!put.ok) return put
      number = put.value.number
      if (!put.value.repeated) given++
    }
    if (given === 0) return ok({ number, rulings: 0, scoreVersion: day.scoreVersion, version: null })
    const moved = await moveScores(tx, dayId, false)
    return ok({ number, rulings: given, scoreVersion: moved.scoreVersion, version: versionText(moved) })
  })
  if (!done.ok) return done
  const { version, ...answer } = done.value
  if (version) live().announce(dayId, version)
  return ok(answer)
}
