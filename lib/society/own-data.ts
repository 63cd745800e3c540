// What is held about me: read, taken away, put right. On the member's own page, by the private link.

import { fullName } from '@/lib/facts/person-name'
import { zoneOfInstallation } from '@/lib/store/settings'
import 'server-only'
import Papa from 'papaparse'
import { type HeldPart, heldInWords } from '@/lib/boards/held-in-words'
import { actInWords } from '@/lib/boards/record-of-acts'
import type { Actor } from '@/lib/facts/actor'
import {
  type AskCorrection,
  askCorrection as askSchema,
  type CorrectDetails,
  correctDetails as correctSchema,
} from '@/lib/facts/privacy-commands'
import type { SocietySettings } from '@/lib/facts/society-settings'
import { ok, type Result } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { personIn } from '@/lib/store/people'
import { heldAbout, setContact } from '@/lib/store/privacy'
import { societyKept } from '@/lib/store/society-settings'
import { write } from '@/lib/store/write'
import { mayNot } from './acts'
import { notFound } from './desk-only'
import { parseInput } from './parse-input'

type Member = Extract<Actor, { kind: 'member' }>
type Refusals = 'not-allowed' | 'not-found'

export interface OwnData {
  readonly societyName: string
  readonly societySlug: string
  readonly name: string
  readonly email: string | null
  readonly phone: string | null
  readonly leftOn: string | null
  readonly parts: readonly HeldPart[]
  readonly settings: SocietySettings
}

export async function ownData(actor: Actor): Promise<Result<OwnData, Refusals>> {
  const no = mayNot(actor, 'read-own-page')
  if (no) return no
  if (actor.kind !== 'member') return notFound('person')
  const held = await heldAbout(actor.societyId, actor.personId)
  const society = await societyKept(actor.societyId)
  if (!held || !society) return notFound('person')
  const { societyName, societySlug, firstName, familyName, email, phone, leftOn } = held
  return ok({
    societyName,
    societySlug,
    name: `${firstName} ${familyName}`,
    email,
    phone,
    leftOn,
    parts: heldInWords(held, actInWords, zoneOfInstallation()),
    settings: society.settings,
  })
}

/** The same, whole, to take away. */
export async function ownDataFile(
  actor: Actor,
  as: 'json' | 'csv',
): Promise<Result<{ readonly text: string; readonly fileName: string }, Refusals>> {
  const data = await ownData(actor)
  if (!data.ok) return data
  const { societyName, name, parts } = data.value
  if (as === 'json') {
    const text = `${JSON.stringify({ society: societyName, name, held: parts }, null, 2)}\n`
    return ok({ text, fileName: 'held-about-me.json' })
  }
  const rows = parts.flatMap((part) =>
    part.lines.map((one) => ({ Part: part.title, What: one.what, Value: one.value })),
  )
  const text = `\uFEFF${Papa.unparse(rows, { escapeFormulae: true, newline: '\r\n' })}\r\n`
  return ok({ text, fileName: 'held-about-me.csv' })
}

/** The own e-mail and telephone. */
export async function correctOwnDetails(
  actor: Actor,
  input: CorrectDetails,
  now: Date = new Date(),
): Promise<Result<void, Refusals | 'not-understood'>> {
  return asMember(actor, async (member) => {
    const read = parseInput(correctSchema, input)
    if (!read.ok) return read
    return write<Result<void, 'not-found'>>(async (tx) => {
      const done = await setContact(tx, member.societyId, member.personId, read.value)
      const person = done && (await personIn(tx, member.societyId, member.personId))
      if (!person) return notFound('person')
      const subject = fullName(person)
      const after = { 'Contact details': 'changed by the member' }
      const record = { act: 'correct-own-details', area: 'book' as const, subject, subjectId: member.personId, after }
      await recordAct(tx, actor, record, now)
      return ok()
    })
  })
}

/** What the member cannot change: asked of the officers, and kept where they read it. */
export async function askForCorrection(
  actor: Actor,
  input: AskCorrection,
  now: Date = new Date(),
): Promise<Result<void, Refusals | 'not-understood'>> {
  return asMember(actor, async (member) => {
    const read = parseInput(askSchema, input)
    if (!read.ok) return read
    return write<Result<void, 'not-found'>>(async (tx) => {
      const person = await personIn(tx, member.societyId, member.personId)
      if (!person) return notFound('person')
      const subject = fullName(person)
      const after = { 'Asks to put right': read.value.what }
      const record = { act: 'correct-own-details', area: 'book' as const, subject, subjectId: member.personId, after }
      await recordAct(tx, actor, record, now)
      return ok()
    })
  })
}

async function asMember<T, C extends string>(
  actor: Actor,
  act: (member: Member) => Promise<Result<T, C>>,
): Promise<Result<T, C | Refusals>> {
  const no = mayNot(actor, 'correct-own-details')
  if (no) return no
  return actor.kind === 'member' ? act(actor) : notFound('person')
}
