// A new figure for somebody, with its date and its reason. The old ones stay for ever.

import { figureWords } from '@/lib/boards/acts-in-words'
import { figureOf } from '@/lib/boards/figure'
import type { Actor } from '@/lib/facts/actor'
import { type ChangeHandicap, changeHandicap as schema } from '@/lib/facts/commands'
import type { PersonId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { addFigure, type PersonAndFigure, personIn, setHandicapSource } from '@/lib/store/people'
import { today } from '@/lib/store/settings'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'same-figure' | 'before-last-change' | 'not-yet'

export async function changeHandicap(
  actor: Actor,
  input: ChangeHandicap,
  now: Date = new Date(),
): Promise<Result<{ personId: PersonId }, Refusals>> {
  const officer = deskOnly(actor, 'change-handicap')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { personId, ...figure } = read.value
  const { societyId, userId } = officer.value
  return write<Result<{ personId: PersonId }, Refusals>>(async (tx) => {
    const person = await personIn(tx, societyId, personId)
    if (!person) return notFound('person')
    const no = decide(person, figure, today(now))
    if (no) return no
    await addFigure(tx, societyId, personId, { ...figure, byUserId: userId }, now)
    await setHandicapSource(tx, societyId, personId, figure.source)
    const record = {
      subject: fullName(person),
      subjectId: personId,
      before: figureWords(person.indexTenths, person.handicapSource),
      after: { ...figureWords(figure.indexTenths, figure.source), From: figure.from, Reason: figure.reason },
    }
    await recordAct(tx, actor, { act: 'change-handicap', area: 'handicaps', ...record }, now)
    return ok({ personId })
  })
}

function decide(person: PersonAndFigure, change: Omit<ChangeHandicap, 'personId'>, todayIs: string) {
  const who = fullName(person)
  if (change.indexTenths === person.indexTenths && change.source === person.handicapSource)
    return refused('same-figure', `${who} has ${figureOf(person.indexTenths)} already.`)
  if (change.from > todayIs)
    return refused('not-yet', 'A change counts from today or an earlier date. Enter it when it begins to count.')
  if (person.from !== null && change.from < person.from)
    return refused(
      'before-last-change',
      `${who} has a newer figure from ${person.from}. Give that date or a later one.`,
    )
  return null
}
