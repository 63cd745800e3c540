import 'server-only'
import { book } from './client'
import { isEndedKey } from './privacy'

export interface GroupBehind {
  readonly groupId: string
  readonly dayId: string
  readonly societyId: string
  readonly linkKey: string
  readonly until: Date
  readonly revoked: boolean
  readonly published: boolean
}

const columns = {
  id: true,
  societyId: true,
  linkKey: true,
  codeUntil: true,
  revokedAt: true,
  round: { select: { dayId: true, day: { select: { startPublishedAt: true } } } },
} as const

export async function groupOfLink(linkKey: string): Promise<GroupBehind | null> {
  return behind(await book().group.findUnique({ where: { linkKey }, select: columns }))
}

export async function groupOfCode(code: string): Promise<GroupBehind | null> {
  return behind(await book().group.findUnique({ where: { code }, select: columns }))
}

/** By its own id, as a phone that once had the pack knows it. */
export async function groupOfId(groupId: string): Promise<GroupBehind | null> {
  return behind(await book().group.findUnique({ where: { id: groupId }, select: columns }))
}

function behind(
  group: {
    id: string
    societyId: string
    linkKey: string
    codeUntil: Date
    revokedAt: Date | null
    round: { dayId: string; day: { startPublishedAt: Date | null } }
  } | null,
): GroupBehind | null {
  if (!group) return null
  return {
    groupId: group.id,
    dayId: group.round.dayId,
    societyId: group.societyId,
    linkKey: group.linkKey,
    until: group.codeUntil,
    revoked: group.revokedAt !== null,
    published: group.round.day.startPublishedAt !== null,
  }
}

export async function personOfPageKey(pageKey: string): Promise<{ societyId: string; personId: string } | null> {
  if (isEndedKey(pageKey)) return null
  const person = await book().person.findUnique({ where: { pageKey }, select: { id: true, societyId: true } })
  return person ? { societyId: person.societyId, personId: person.id } : null
}
