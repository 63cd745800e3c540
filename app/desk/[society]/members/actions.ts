'use server'

import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answer } from '@/app/desk/_form/answer'
import { idIn } from '@/app/desk/_form/form-ids'
import { changeHandicap as changeSchema, keepPerson as keepSchema } from '@/lib/facts/commands'
import type { PersonId } from '@/lib/facts/ids'
import { labelsIn } from '@/lib/facts/labels'
import { ok, type Result } from '@/lib/result'
import { changeHandicap } from '@/lib/society/change-handicap'
import { deletePerson } from '@/lib/society/delete-person'
import { keepPerson } from '@/lib/society/keep-person'
import { parseInput } from '@/lib/society/parse-input'
import { readFigure } from '../_figures/read-figure'

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()

/** An empty figure is no figure yet; anything written must be one. */
function figureOrNone(written: string): Result<number | null, 'not-understood'> {
  return written === '' ? ok(null) : readFigure(written, 'indexTenths')
}

/** Anything odd in the hidden field counts as nothing seen. */
function seenIn(written: string): unknown {
  try {
    return JSON.parse(written)
  } catch {
    return undefined
  }
}

export async function keepMember(society: string, before: ActState, form: FormData): Promise<ActState> {
  const personId = text(form, 'personId')
  let added = false
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const figure = figureOrNone(text(form, 'indexTenths'))
      if (!figure.ok) return figure
      const asked = parseInput(keepSchema, {
        ...(personId ? { personId } : {}),
        firstName: form.get('firstName'),
        familyName: form.get('familyName'),
        ...(form.has('knownAs') ? { knownAs: text(form, 'knownAs') } : {}),
        isAnother: form.has('isAnother'),
        gender: form.get('gender'),
        kind: form.get('kind') ?? 'member',
        regular: form.has('regular'),
        junior: form.has('junior'),
        ...(personId
          ? { was: seenIn(text(form, 'was')), overrule: text(form, 'overrule').split(' ').filter(Boolean) }
          : {}),
        email: text(form, 'email') || null,
        phone: text(form, 'phone') || null,
        handicapSource: form.get('handicapSource'),
        indexTenths: figure.value,
        memberSince: text(form, 'memberSince') ? Number(text(form, 'memberSince')) : null,
        membershipNumber: text(form, 'membershipNumber') || null,
        homeClub: text(form, 'homeClub') || null,
        leftOn: text(form, 'leftOn') || null,
        labels: labelsIn(text(form, 'labels')),
      })
      if (!asked.ok) return asked
      const done = await keepPerson(actor, asked.value)
      added = done.ok && !personId
      return done
    },
    () => 'Saved.',
  )
  if (added)
    redirect(
      `/desk/${society}/members?added=${encodeURIComponent(`${text(form, 'firstName')} ${text(form, 'familyName')}`)}`,
    )
  return state
}

export async function changeFigure(society: string, before: ActState, form: FormData): Promise<ActState> {
  return answer(
    before,
    form,
    society,
    async (actor) => {
      const figure = readFigure(text(form, 'indexTenths'), 'indexTenths')
      if (!figure.ok) return figure
      const asked = parseInput(changeSchema, {
        personId: text(form, 'personId'),
        indexTenths: figure.value,
        source: form.get('source'),
        from: form.get('from'),
        reason: form.get('reason'),
      })
      return asked.ok ? changeHandicap(actor, asked.value) : asked
    },
    () => 'The new figure is in the book, with its reason. Days already frozen do not change.',
  )
}

export async function deleteTheMember(society: string, before: ActState, form: FormData): Promise<ActState> {
  let deleted = ''
  const state = await answer(
    before,
    form,
    society,
    async (actor) => {
      const done = await deletePerson(actor, { personId: idIn<PersonId>(form, 'personId') })
      if (done.ok) deleted = done.value.name
      return done
    },
    () => 'Deleted.',
  )
  if (deleted !== '') redirect(`/desk/${society}/members?deleted=${encodeURIComponent(deleted)}`)
  return state
}
