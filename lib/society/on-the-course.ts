// The desk's look at the course: groups, pace, silence, phones, and what phones brought after their link had ended.

import type { DeviceId, GroupId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import 'server-only'
import { type CourseView, onTheCourse } from '@/lib/boards/on-the-course'
import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import { ok, type Result } from '@/lib/result'
import { slugOfSociety } from '@/lib/store/desk'
import { type HeldFact, heldNow, phonesOfDay } from '@/lib/store/phones'
import { zoneOfInstallation } from '@/lib/store/settings'
import { deskOnly, notFound } from './desk-only'
import { recordAtVersion } from './record-at-version'

export interface HeldPhone {
  readonly deviceId: DeviceId
  readonly groupNumber: number | null
  readonly broughtAt: string
  /** "Jago Trevennor, hole 15: 5", in the order they were written. */
  readonly lines: readonly string[]
}

export interface DeskCourse extends CourseView {
  readonly version: number
  readonly held: readonly HeldPhone[]
}

export async function onCourse(
  actor: Actor,
  daySlug: string,
  now: Date = new Date(),
): Promise<Result<DeskCourse, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const societySlug = await slugOfSociety(officer.value.societyId)
  const record = societySlug === null ? null : await recordAtVersion(societySlug, daySlug)
  if (!record) return notFound('day')
  const phones = await phonesOfDay(record.id)
  const view = onTheCourse(record, phones, now, zoneOfInstallation())
  return ok({ ...view, version: record.version, held: heldPhones(record, await heldNow(record.id), phones) })
}

function heldPhones(
  record: DayRecord,
  held: readonly HeldFact[],
  phones: readonly { readonly deviceId: DeviceId; readonly groupId: GroupId }[],
): readonly HeldPhone[] {
  const byPhone = new Map<DeviceId, HeldFact[]>()
  for (const one of held) byPhone.set(one.deviceId, [...(byPhone.get(one.deviceId) ?? []), one])
  return [...byPhone].map(([deviceId, facts]) => {
    const groupId = phones.find((phone) => phone.deviceId === deviceId)?.groupId
    return {
      deviceId,
      groupNumber: record.groups.find((group) => group.id === groupId)?.number ?? null,
      broughtAt: (facts.at(-1)?.heldAt ?? new Date(0)).toISOString(),
      lines: facts.map(({ fact }) => lineOf(record, fact)),
    }
  })
}

function lineOf(record: DayRecord, fact: HeldFact['fact']): string {
  const card = record.cards.find((one) => one.id === fact.cardId)
  const entry = record.entries.find((one) => one.id === card?.entryId)
  const name = entry ? fullName(entry) : 'A card of another group'
  const { kind } = fact
  if (fact.kind === 'signature') return `${name}: signed as ${fact.role}`
  if (fact.kind !== 'score') return `${name}: ${kind}`
  const score = fact.score === null ? 'cleared' : fact.score === 'x' ? 'no score' : String(fact.score)
  return `${name}, hole ${fact.hole}: ${score}`
}
