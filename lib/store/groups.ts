import type { CardId, DayId, EntryId, GroupId, RoundId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { DayRecord } from '@/lib/facts/day-record'
import type { Tx } from './client'
import { newId } from './new-id'
import { drawnCode, newLinkKey } from './new-links'

export interface GroupToKeep {
  readonly startTime: string
  readonly startHole: number
  readonly entryIds: readonly EntryId[]
}

export interface HowDrawn {
  readonly drawWay: string
  readonly drawSeed: number | null
}

async function newCode(tx: Tx): Promise<string> {
  for (;;) {
    const code = drawnCode()
    // The figures by themselves, too: whoever types only them means one group.
    const [, figures = code] = code.split(' ')
    if ((await tx.group.count({ where: { code: { endsWith: figures } } })) === 0) return code
  }
}

/**
 * The groups as they should be. A group keeps its link and its code by its number, so that a printed sheet stays good;
 * phones and cards stay with their group and player.
 */
export async function replaceGroups(
  tx: Tx,
  day: Pick<DayRecord, 'society' | 'round' | 'groups'>,
  groups: readonly GroupToKeep[],
  codeUntil: Date,
  drawn: HowDrawn | null,
  now: Date,
): Promise<void> {
  await tx.groupPlace.deleteMany({ where: { group: { roundId: day.round.id } } })
  const ids: GroupId[] = []
  for (const [at, { startTime, startHole }] of groups.entries()) {
    const kept = day.groups.find((group) => group.number === at + 1)
    if (kept) await tx.group.update({ where: { id: kept.id }, data: { startTime, startHole, codeUntil } })
    ids.push(kept?.id ?? (await insertGroup(tx, day, at + 1, { startTime, startHole, codeUntil })))
  }
  await tx.groupPlace.createMany({
    data: groups.flatMap((group, at) =>
      group.entryIds.map((entryId, seat) => ({ groupId: ids[at]!, entryId, position: seat + 1 })),
    ),
  })
  await dropGroups(
    tx,
    day.groups.filter((group) => group.number > groups.length).map((group) => group.id),
    now,
  )
  if (drawn) await tx.round.update({ where: { id: day.round.id }, data: { drawnAt: now, ...drawn } })
}

async function insertGroup(
  tx: Tx,
  day: Pick<DayRecord, 'society' | 'round'>,
  number: number,
  start: { startTime: string; startHole: number; codeUntil: Date },
): Promise<GroupId> {
  const id = newId<GroupId>()
  await tx.group.create({
    data: {
      id,
      societyId: day.society.id,
      roundId: day.round.id,
      number,
      ...start,
      linkKey: newLinkKey(),
      code: await newCode(tx),
    },
  })
  return id
}

/** A group whose phone has already sent something is kept, empty and with its link closed: its scores must stay. */
async function dropGroups(tx: Tx, ids: readonly GroupId[], now: Date): Promise<void> {
  for (const id of ids) {
    const devices = await tx.device.count({ where: { groupId: id } })
    if (devices === 0) await tx.group.delete({ where: { id } })
    else await tx.group.update({ where: { id }, data: { revokedAt: now } })
  }
}

export interface CardsToWrite {
  readonly fresh: readonly { readonly entryId: EntryId; readonly markerId: EntryId | null }[]
  readonly marked: readonly { readonly cardId: CardId; readonly markerId: EntryId | null }[]
  /** Cards nobody plays any more and nobody wrote on. */
  readonly empty: readonly CardId[]
}

export async function writeCards(
  tx: Tx,
  day: Pick<DayRecord, 'society' | 'round'>,
  cards: CardsToWrite,
): Promise<void> {
  await tx.card.deleteMany({ where: { id: { in: [...cards.empty] } } })
  for (const { cardId, markerId } of cards.marked) await tx.card.update({ where: { id: cardId }, data: { markerId } })
  await tx.card.createMany({
    data: cards.fresh.map((card) => ({
      id: newId<CardId>(),
      societyId: day.society.id,
      roundId: day.round.id,
      ...card,
      state: 'out',
    })),
  })
}

export async function setCodesUntil(tx: Tx, roundId: RoundId, codeUntil: Date): Promise<void> {
  await tx.group.updateMany({ where: { roundId }, data: { codeUntil } })
}

/** The old link and code lead nowhere from this moment. Null when the society has no such group on that day. */
export async function renewLink(
  tx: Tx,
  societyId: SocietyId,
  dayId: DayId,
  groupId: GroupId,
): Promise<{ code: string; linkKey: string } | null> {
  const group = await tx.group.findFirst({ where: { id: groupId, societyId, round: { dayId } }, select: { id: true } })
  if (!group) return null
  const fresh = { linkKey: newLinkKey(), code: await newCode(tx) }
  await tx.group.update({ where: { id: groupId }, data: { ...fresh, revokedAt: null } })
  return fresh
}
