'use server'

import { randomInt } from 'node:crypto'
import { refresh } from 'next/cache'
import { type ActState, doneState, refusedState } from '@/app/desk/_form/act-state'
import { askedBy } from '@/app/desk/_form/answer'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import { idIn } from '@/app/desk/_form/form-ids'
import { arrangeGroups as arrangeGroupsSchema, makeDraw as makeDrawSchema } from '@/lib/facts/commands'
import type { DayId, GroupId } from '@/lib/facts/ids'
import { arrangeSides as arrangeSidesSchema } from '@/lib/facts/match-commands'
import { refused } from '@/lib/result'
import { arrangeSides } from '@/lib/society/arrange-sides'
import { orNotSaved } from '@/lib/society/cannot-save'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { parseInput } from '@/lib/society/parse-input'
import { renewGroupLink } from '@/lib/society/publish-start'

export async function drawGroups(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const written = String(form.get('seed') ?? '').trim()
  const seed = /^\d{1,9}$/.test(written) ? Number(written) : randomInt(1, 1_000_000)
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(makeDrawSchema, {
        ...dayOfForm(form),
        way: form.get('way'),
        groupSize: Number(form.get('groupSize')),
        threes: form.get('threes') ?? 'last',
        seed,
        evenSizes: form.get('sizes') === 'even',
      })
      return asked.ok ? makeDraw(actor, asked.value) : asked
    },
    () => `Drawn. The number of this draw is ${seed}: the same number draws the same groups again.`,
  )
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

export async function keepGroups(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(arrangeGroupsSchema, {
        ...dayOfForm(form),
        groups: readJson(String(form.get('groups') ?? '')),
      })
      return asked.ok ? arrangeGroups(actor, asked.value) : asked
    },
    () => 'The draw is kept as it stands here.',
  )
}

export async function keepSides(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const sides = form
    .getAll('pairing')
    .map((one) => readJson(String(one)))
    .flatMap((one) => (Array.isArray(one) ? one : []))
  // Radio buttons carry a name for each group; they are read as one list.
  const chosen = [...form.keys()]
    .filter((name) => name.startsWith('group-'))
    .map((name) => readJson(String(form.get(name))))
    .flatMap((one) => (Array.isArray(one) ? one : []))
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(arrangeSidesSchema, {
        ...dayOfForm(form),
        competitionId: form.get('competitionId'),
        sides: [...sides, ...chosen],
      })
      return asked.ok ? arrangeSides(actor, asked.value) : asked
    },
    () => 'The sides are kept.',
  )
}

export async function renewLink(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const who = await askedBy(where.society)
  if (!who.ok) return refusedState(before, form, who)
  const groupId = idIn<GroupId>(form, 'groupId')
  if (!groupId) return refusedState(before, form, refused('not-understood', 'Choose the group first.'))
  const dayId = idIn<DayId>(form, 'dayId')
  const done = await orNotSaved(() => renewGroupLink(who.value, { dayId, groupId }))
  if (!done.ok) return refusedState(before, form, done)
  refresh()
  return doneState(before, 'New link and code. The old ones no longer open the card; what was written is kept.')
}
