// What a new society does first, in order, each step ticking itself. Gone once everything is done.

import type { Actor } from '@/lib/facts/actor'
import type { SeasonId, SocietyId } from '@/lib/facts/ids'
import { nameKey } from '@/lib/facts/person-name'
import { ok, type Result } from '@/lib/result'
import { societyAtDesk } from '@/lib/store/desk'
import { dutiesIn } from '@/lib/store/officers'
import { peopleOf } from '@/lib/store/people'
import { deskOnly, notFound } from './desk-only'

export type StepWhat = 'season' | 'members' | 'course' | 'day' | 'officer'

export interface FirstStep {
  readonly what: StepWhat
  readonly isDone: boolean
  /** "30 members", said when it is done. */
  readonly note: string
}

export interface FirstSteps {
  readonly steps: readonly FirstStep[]
  /** The season a first day is called in. */
  readonly seasonId: SeasonId | null
  /** The officer who asks is no member yet: the name as two fields of a form. */
  readonly addMe: { readonly firstName: string; readonly familyName: string } | null
}

/** Null once nothing of it is left to do. */
export async function firstSteps(
  actor: Actor,
  now: Date = new Date(),
): Promise<Result<FirstSteps | null, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const { societyId, name } = officer.value
  const society = await societyAtDesk(societyId)
  if (!society) return notFound('society')
  const [season] = society.seasons
  const days = society.seasons.reduce((sum, one) => sum + one.days.length, 0)
  const officers = await officersOf(societyId, now)
  const steps: FirstStep[] = [
    { what: 'season', isDone: season !== undefined, note: season?.name ?? '' },
    { what: 'members', isDone: society.members > 1, note: counted(society.members, 'member') },
    { what: 'course', isDone: society.courses > 0, note: counted(society.courses, 'course') },
    { what: 'day', isDone: days > 0, note: counted(days, 'golf day') },
    { what: 'officer', isDone: officers > 1, note: counted(officers, 'officer') },
  ]
  if (steps.every((step) => step.isDone)) return ok(null)
  const me = nameOf(name)
  const people = await peopleOf(societyId)
  const isMember = people.some((one) => one.kind === 'member' && nameKey(one) === nameKey(me))
  return ok({ steps, seasonId: season?.seasonId ?? null, addMe: isMember || me.familyName === '' ? null : me })
}

/** Those who hold a duty now and have used their link. */
async function officersOf(societyId: SocietyId, now: Date): Promise<number> {
  const rows = await dutiesIn(societyId)
  const able = rows.filter((row) => row.canSignIn && (row.until === null || row.until > now))
  return new Set(able.map((row) => row.userId)).size
}

function nameOf(name: string) {
  const words = name.trim().split(/\s+/)
  return { firstName: words.slice(0, -1).join(' '), familyName: words.length > 1 ? (words.at(-1) ?? '') : '' }
}

const counted = (many: number, one: string) => `${many} ${many === 1 ? one : `${one}s`}`
