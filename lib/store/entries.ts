import type { CompetitionId, DayId, EntryId, PersonId, RoundTeeId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { EntryRecord } from '@/lib/facts/day-record'
import type { Tx } from './client'
import { newId } from './new-id'

export interface EntryToKeep {
  readonly personId: PersonId
  readonly hostId: PersonId | null
  readonly kind: EntryRecord['kind']
  readonly status: EntryRecord['status']
  readonly roundTeeId: RoundTeeId
  readonly claimedTenths: number | null
}

export async function insertEntry(
  tx: Tx,
  societyId: SocietyId,
  dayId: DayId,
  entry: EntryToKeep,
  now: Date,
): Promise<EntryId> {
  const id = newId<EntryId>()
  await tx.entry.create({ data: { id, societyId, dayId, ...entry, enteredAt: now } })
  return id
}

export async function updateEntry(
  tx: Tx,
  entryId: EntryId,
  change: Partial<Pick<EntryToKeep, 'status' | 'roundTeeId' | 'hostId' | 'claimedTenths'>> & { enteredAt?: Date },
): Promise<void> {
  await tx.entry.update({ where: { id: entryId }, data: change })
}

/**
 * Out of the draw: no group, no side, no card. Only for an entry whose card is empty. The sides of `decided` stay whole:
 * the desk has written how their match ended.
 */
export async function takeOutOfDraw(tx: Tx, entryId: EntryId, decided: readonly string[] = []): Promise<void> {
  await tx.groupPlace.deleteMany({ where: { entryId } })
  const sides = await tx.sideMember.findMany({
    where: { entryId, sideId: { notIn: [...decided] } },
    select: { sideId: true },
  })
  await tx.sideMember.deleteMany({ where: { entryId, sideId: { notIn: [...decided] } } })
  for (const { sideId } of sides)
    if ((await tx.sideMember.count({ where: { sideId } })) < 2) await tx.side.delete({ where: { id: sideId } })
  await tx.card.updateMany({ where: { markerId: entryId }, data: { markerId: null } })
  await tx.card.deleteMany({ where: { entryId } })
}

export interface FrozenFigures {
  readonly entryId: EntryId
  readonly indexTenths: number
  readonly courseNumerator: number
  readonly courseDenominator: number
  readonly courseHandicap: number
  /** The society's words for the person, fixed with the figure: divisions rest on them. */
  readonly labels: readonly string[]
  readonly playing: readonly { readonly competitionId: CompetitionId; readonly playingHandicap: number }[]
}

/** Takes the frozen figures out again. The database refuses once the start sheet is out. */
export async function clearFigures(tx: Tx, entryIds: readonly EntryId[]): Promise<void> {
  const ids = [...entryIds]
  await tx.playingHandicap.deleteMany({ where: { entryId: { in: ids } } })
  await tx.entry.updateMany({
    where: { id: { in: ids } },
    data: { indexTenths: null, courseNumerator: null, courseDenominator: null, courseHandicap: null, labels: null },
  })
}

/** Writes the figures that count on this day. The database refuses a second time. */
export async function freezeFigures(tx: Tx, figures: readonly FrozenFigures[]): Promise<void> {
  for (const { entryId, playing: _, labels, ...figure } of figures)
    await tx.entry.update({ where: { id: entryId }, data: { ...figure, labels: JSON.stringify(labels) } })
  await tx.playingHandicap.createMany({
    data: figures.flatMap(({ entryId, playing }) => playing.map((one) => ({ entryId, ...one }))),
  })
}
