// Leaving: by the member on the own page, or carried out at the desk with the contact details taken out of the book.
// Results stay; the name on them becomes what the society chose for leavers, or less if the member asks for less.

import { dateInWords } from '@/lib/boards/dates-in-words'
import { fullName } from '@/lib/facts/person-name'
import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import {
  type ErasePerson,
  erasePerson as eraseSchema,
  type LeaveSociety,
  leaveSociety as leaveSchema,
} from '@/lib/facts/privacy-commands'
import { SHOWN_AS, type ShownAs } from '@/lib/facts/society-settings'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { personIn } from '@/lib/store/people'
import { changePageKey, eraseDetails, setLeft } from '@/lib/store/privacy'
import { today } from '@/lib/store/settings'
import { societyKept } from '@/lib/store/society-settings'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { deskOnly, notFound } from './desk-only'
import { parseInput } from './parse-input'

const words = (as: ShownAs) => as.replace('-', ' ')

export async function leaveSociety(
  actor: Actor,
  input: LeaveSociety,
  now: Date = new Date(),
): Promise<Result<{ readonly shownAs: ShownAs }, 'not-allowed' | 'not-understood' | 'not-found' | 'left-already'>> {
  const no = mayNot(actor, 'leave-society')
  if (no) return no
  if (actor.kind !== 'member') return notFound('person')
  const read = parseInput(leaveSchema, input)
  if (!read.ok) return read
  const { societyId, personId } = actor
  return write<Result<{ shownAs: ShownAs }, 'not-found' | 'left-already'>>(async (tx) => {
    const person = await personIn(tx, societyId, personId)
    const society = await societyKept(societyId, tx)
    if (!person || !society) return notFound('person')
    if (person.leftOn !== null) return refused('left-already', `You left on ${dateInWords(person.leftOn)}.`)
    const shownAs = lessOf(society.settings.leaversShownAs, read.value.shownAs)
    await setLeft(tx, societyId, personId, { leftOn: today(now), shownAs })
    const record = {
      subject: fullName(person),
      subjectId: personId,
      before: { Left: 'no' },
      after: { Left: today(now), 'Shown as': words(shownAs) },
    }
    await recordAct(tx, actor, { act: 'leave-society', area: 'book', ...record }, now)
    return ok({ shownAs })
  })
}

/** Whichever shows less of the person. */
function lessOf(society: ShownAs, asked: ShownAs | undefined): ShownAs {
  return asked !== undefined && SHOWN_AS.indexOf(asked) > SHOWN_AS.indexOf(society) ? asked : society
}

/** For whoever has left or asks for it: contact details go, the page link ends, public sheets stop showing the name. */
export async function erasePerson(
  actor: Actor,
  input: ErasePerson,
  now: Date = new Date(),
): Promise<Result<void, 'not-allowed' | 'not-understood' | 'not-found'>> {
  const officer = deskOnly(actor, 'erase-person')
  if (!officer.ok) return officer
  const read = parseInput(eraseSchema, input)
  if (!read.ok) return read
  const { societyId } = officer.value
  const { personId, shownAs } = read.value
  return write<Result<void, 'not-found'>>(async (tx) => {
    const person = await personIn(tx, societyId, personId)
    if (!person) return notFound('person')
    await eraseDetails(tx, societyId, personId, { shownAs, leftOn: person.leftOn ?? today(now), now })
    await changePageKey(tx, societyId, personId, 'ended')
    const record = {
      subject: fullName(person),
      subjectId: personId,
      after: { 'Contact details': 'taken out', 'Link of the own page': 'ended', 'Shown as': words(shownAs) },
    }
    await recordAct(tx, actor, { act: 'erase-person', area: 'book', ...record }, now)
    return ok()
  })
}
