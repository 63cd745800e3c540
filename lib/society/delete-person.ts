// Deletes a member or guest who was entered by mistake. Whoever has played, brought a guest or held a duty stays in the
// book: they leave the society instead.

import { personWords } from '@/lib/boards/acts-in-words'
import type { Actor } from '@/lib/facts/actor'
import { type DeletePerson, deletePerson as schema } from '@/lib/facts/commands'
import { fullName } from '@/lib/facts/person-name'
import { type Fault, ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { deletePersonRows, type PersonUsed, personIn, personUsed } from '@/lib/store/people'
import { write } from '@/lib/store/write'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

type Deleted = Result<{ name: string }, 'not-allowed' | 'not-understood' | 'not-found' | 'person-in-use'>

export async function deletePerson(actor: Actor, input: DeletePerson, now: Date = new Date()): Promise<Deleted> {
  const officer = deskOnly(actor, 'delete-person')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { personId } = read.value
  return write<Deleted>(async (tx) => {
    const person = await personIn(tx, societyId, personId)
    if (!person) return notFound('person')
    const name = fullName(person)
    const reasons = reasonsToStay(await personUsed(tx, societyId, personId))
    if (reasons.length > 0)
      return refused(
        'person-in-use',
        `${name} cannot be deleted. Write the day under “Left on” instead: then ${person.firstName} is on no list, and the days played stay as they are.`,
        reasons,
      )
    await deletePersonRows(tx, societyId, personId)
    const said = { act: 'delete-person', area: 'book' as const, subject: name, subjectId: personId }
    await recordAct(tx, actor, { ...said, before: personWords(person), after: { Person: 'deleted' } }, now)
    return ok({ name })
  })
}

function reasonsToStay({ days, hosted, duties, handicaps }: PersonUsed): readonly Fault[] {
  return [
    ...days.map((day) => ({ place: day.date, sentence: `Entered on ${day.name}, withdrawn or not.` })),
    ...hosted.map((day) => ({ place: day.date, sentence: `Host of a guest on ${day.name}.` })),
    ...(duties > 0 ? [{ place: 'duties', sentence: 'Is or was an officer.' }] : []),
    ...(handicaps > 1
      ? [{ place: 'handicaps', sentence: `Has ${handicaps} handicaps, each with its date and reason.` }]
      : []),
  ]
}
