'use server'

import { randomInt } from 'node:crypto'
import { redirect } from 'next/navigation'
import type { ActState } from '@/app/desk/_form/act-state'
import { answerForDay, type DayAddress, dayOfForm } from '@/app/desk/_form/answer-for-day'
import {
  arrangePairings as arrangePairingsSchema,
  arrangeSides as arrangeSidesSchema,
  arrangeTeams as arrangeTeamsSchema,
  callAgain as callAgainSchema,
  countDays as countDaysSchema,
  endMatch as endMatchSchema,
  keyBall as keyBallSchema,
  makeSides as makeSidesSchema,
  makeTeams as makeTeamsSchema,
} from '@/lib/facts/match-commands'
import { refused } from '@/lib/result'
import { arrangePairings } from '@/lib/society/arrange-pairings'
import { arrangeSides, makeSides } from '@/lib/society/arrange-sides'
import { arrangeTeams, makeTeams } from '@/lib/society/arrange-teams'
import { callAgain } from '@/lib/society/call-again'
import { countDays } from '@/lib/society/count-days'
import { endMatch } from '@/lib/society/end-match'
import { keyBall } from '@/lib/society/key-ball'
import { parseInput } from '@/lib/society/parse-input'
import { readEnding } from './read-ending'

const text = (form: FormData, name: string) => String(form.get(name) ?? '').trim()

const seedOf = (form: FormData) => {
  const written = text(form, 'seed')
  return /^\d{1,9}$/.test(written) ? Number(written) : randomInt(1, 1_000_000)
}

/** Players under the number that was chosen for each: `side-<entry>` = 2. */
function numbered(form: FormData, prefix: string, count: number): string[][] {
  const lists: string[][] = Array.from({ length: count }, () => [])
  for (const [name, value] of form.entries()) {
    if (!name.startsWith(prefix)) continue
    lists[Number(value) - 1]?.push(name.slice(prefix.length))
  }
  return lists
}

export async function keepTeams(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const seed = seedOf(form)
  const names = form.getAll('team').map((one) => String(one).trim())
  if (form.get('then') === 'make')
    return answerForDay(
      where,
      before,
      form,
      async (actor) => {
        const asked = parseInput(makeTeamsSchema, { ...dayOfForm(form), names: names.filter(Boolean), seed })
        return asked.ok ? makeTeams(actor, asked.value) : asked
      },
      () => `Shared out. The number of this lot is ${seed}: the same number makes the same teams again.`,
    )
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const lists = numbered(form, 'in-team-', names.length)
      const teams = names.flatMap((name, at) => (name ? [{ name, entryIds: lists[at]! }] : []))
      const asked = parseInput(arrangeTeamsSchema, { ...dayOfForm(form), teams })
      return asked.ok ? arrangeTeams(actor, asked.value) : asked
    },
    () => 'The teams are kept.',
  )
}

export async function keepListedSides(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const competitionId = text(form, 'competitionId')
  const seed = seedOf(form)
  if (form.get('then') === 'make')
    return answerForDay(
      where,
      before,
      form,
      async (actor) => {
        const asked = parseInput(makeSidesSchema, { ...dayOfForm(form), competitionId, seed })
        return asked.ok ? makeSides(actor, asked.value) : asked
      },
      () => `Made. The number of this lot is ${seed}: the same number makes the same sides again.`,
    )
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const listed = numbered(form, 'side-', 100).map((side, at) => ({ side, name: text(form, `name-${at + 1}`) }))
      const there = listed.filter(({ side }) => side.length > 0)
      const asked = parseInput(arrangeSidesSchema, {
        ...dayOfForm(form),
        competitionId,
        sides: there.map(({ side }) => side),
        names: there.map(({ name }) => name),
      })
      return asked.ok ? arrangeSides(actor, asked.value) : asked
    },
    () => 'The sides are kept.',
  )
}

export async function keepPairings(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  const proposed = form.get('then') === 'make'
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const a = form.getAll('a').map(String)
      const b = form.getAll('b').map(String)
      const pairings = a.flatMap((one, at) => (one || b[at] ? [{ a: one, b: b[at] ?? '' }] : []))
      const half = pairings.findIndex((one) => !one.a || !one.b)
      if (!proposed && half >= 0)
        return refused('not-understood', 'A match needs two: choose the second one too, or clear the first.')
      const asked = parseInput(arrangePairingsSchema, {
        ...dayOfForm(form),
        competitionId: text(form, 'competitionId'),
        pairings: proposed ? null : pairings,
      })
      return asked.ok ? arrangePairings(actor, asked.value) : asked
    },
    ({ matches }) => (proposed ? `Paired from the draw: ${matches} matches.` : 'The matches are kept.'),
  )
}

export async function keepEnding(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const read = readEnding(form)
      if ('faults' in read) return refused('not-understood', 'Some of it cannot be read.', read.faults)
      const asked = parseInput(endMatchSchema, {
        ...dayOfForm(form),
        competitionId: text(form, 'competitionId'),
        matchId: text(form, 'matchId'),
        ending: read.ending,
        was: text(form, 'was') || undefined,
      })
      return asked.ok ? endMatch(actor, asked.value) : asked
    },
    () => 'Kept: the match stands so on the board.',
  )
}

export async function keepCountedDays(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(countDaysSchema, {
        ...dayOfForm(form),
        competitionId: text(form, 'competitionId'),
        dayIds: form.getAll('counted').map(String),
        underTheseTerms: form.get('underTheseTerms') !== null,
        recount: form.getAll('counted').filter((id) => form.get(`under-${id}`) === 'this-day'),
      })
      return asked.ok ? countDays(actor, asked.value) : asked
    },
    () => 'Kept: the board adds those days up.',
  )
}

export async function callNextRound(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  let slug: string | null = null
  const state = await answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const asked = parseInput(callAgainSchema, {
        ...dayOfForm(form),
        name: text(form, 'name'),
        date: text(form, 'date'),
        firstTee: text(form, 'firstTee'),
        courseId: text(form, 'courseId'),
        holes: Number(form.get('holes')),
      })
      if (!asked.ok) return asked
      const called = await callAgain(actor, asked.value)
      slug = called.ok ? called.value.slug : null
      return called
    },
    () => 'Called.',
  )
  if (slug) redirect(`/desk/${where.society}/days/${slug}`)
  return state
}

export async function keepBall(where: DayAddress, before: ActState, form: FormData): Promise<ActState> {
  return answerForDay(
    where,
    before,
    form,
    async (actor) => {
      const drives = form.getAll('drive').map((one) => String(one) || null)
      const lost = form.get('ballLostOn')
      const asked = parseInput(keyBallSchema, {
        dayId: dayOfForm(form).dayId,
        sideId: text(form, 'sideId'),
        ...(drives.length > 0 ? { drives } : {}),
        ...(lost === null ? {} : { ballLostOn: lost === '' ? null : Number(lost) }),
      })
      return asked.ok ? keyBall(actor, asked.value) : asked
    },
    ({ written }) => (written === 0 ? 'Nothing new to keep.' : 'Kept.'),
  )
}
