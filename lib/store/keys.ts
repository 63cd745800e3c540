import type { DayId, GroupId, PersonId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { book } from './client'
import { isEndedKey } from './privacy'

export interface GroupBehind {
  readonly groupId: GroupId
  readonly dayId: DayId
  readonly societyId: SocietyId
  readonly linkKey: string
  readonly until: Date
  readonly revoked: boolean
  readonly published: boolean
  /** Why the day was called off. */
  readonly calledOff: string | null
}

const columns = {
  id: true,
  societyId: true,
  linkKey: true,
  codeUntil: true,
  revokedAt: true,
  round: { select: { dayId: true, day: { select: { startPublishedAt: true, calledOffReason: true } } } },
} as const

export async function groupOfLink(linkKey: string): Promise<GroupBehind | null> {
  return behindOrNull(await book().group.findUnique({ where: { linkKey }, select: columns }))
}

export async function groupOfCode(code: string): Promise<GroupBehind | null> {
  return behindOrNull(await book().group.findUnique({ where: { code }, select: columns }))
}

/** Open groups whose code ends in these figures, with the word before them: two are enough to know that it is not one. */
export async function openGroupsOfFigures(
  figures: string,
  now: Date,
): Promise<readonly (GroupBehind & { readonly word: string })[]> {
  const rows = await book().group.findMany({
    where: {
      code: { endsWith: ` ${figures}` },
      revokedAt: null,
      codeUntil: { gt: now },
      round: { day: { startPublishedAt: { not: null } } },
    },
    select: { ...columns, code: true },
    take: 2,
  })
  return rows.map(({ code, ...group }) => ({ ...behind(group), word: code.split(' ')[0] ?? '' }))
}

/** By its own id, as a phone that once had the pack knows it. */
export async function groupOfId(groupId: GroupId): Promise<GroupBehind | null> {
  return behindOrNull(await book().group.findUnique({ where: { id: groupId }, select: columns }))
}

interface GroupRow {
  readonly id: GroupId
  readonly societyId: SocietyId
  readonly linkKey: string
  readonly codeUntil: Date
  readonly revokedAt: Date | null
  readonly round: {
    readonly dayId: DayId
    readonly day: { readonly startPublishedAt: Date | null; readonly calledOffReason: string | null }
  }
}

const behindOrNull = (group: GroupRow | null) => group && behind(group)

function behind(group: GroupRow): GroupBehind {
  return {
    groupId: group.id,
    dayId: group.round.dayId,
    societyId: group.societyId,
    linkKey: group.linkKey,
    until: group.codeUntil,
    revoked: group.revokedAt !== null,
    published: group.round.day.startPublishedAt !== null,
    calledOff: group.round.day.calledOffReason,
  }
}

export async function personOfPageKey(pageKey: string): Promise<{ societyId: SocietyId; personId: PersonId } | null> {
  if (isEndedKey(pageKey)) return null
  const person = await book().person.findUnique({ where: { pageKey }, select: { id: true, societyId: true } })
  return person ? { societyId: person.societyId, personId: person.id } : null
}
