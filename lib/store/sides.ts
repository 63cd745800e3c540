import type { CompetitionId, EntryId, SideId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { Tx } from './client'
import { newId } from './new-id'

/** On the way no two rows may have the same number or place. */
const OUT_OF_THE_WAY = 100_000

/**
 * The sides as they should be, in this order. A side of the same players keeps its row, so that its matches, its drives
 * and its lost ball stay with it; their order inside the side may have changed.
 * `names`: what each side is called, where that was asked; a side that keeps its row keeps its name otherwise.
 */
export async function replaceSides(
  tx: Tx,
  societyId: SocietyId,
  competitionId: CompetitionId,
  sides: readonly (readonly EntryId[])[],
  names?: readonly (string | null)[],
): Promise<void> {
  const rows = await tx.side.findMany({
    where: { competitionId },
    select: { id: true, members: { select: { entryId: true } } },
  })
  const sameAs = (ids: readonly string[]) => [...ids].sort().join(' ')
  const there = new Map(rows.map((row) => [sameAs(row.members.map((one) => one.entryId)), row.id]))
  const wanted = sides.map((entryIds, at) => {
    const kept = there.get(sameAs(entryIds)) ?? null
    return { id: kept ?? newId<SideId>(), isNew: kept === null, number: at + 1, entryIds }
  })
  await tx.side.deleteMany({ where: { competitionId, id: { notIn: wanted.map((side) => side.id) } } })
  await tx.side.updateMany({ where: { competitionId }, data: { number: { increment: OUT_OF_THE_WAY } } })
  await tx.sideMember.deleteMany({ where: { competitionId } })
  for (const { id, isNew, number } of wanted) if (!isNew) await tx.side.update({ where: { id }, data: { number } })
  await tx.side.createMany({
    data: wanted.flatMap(({ id, isNew, number }) => (isNew ? [{ id, societyId, competitionId, number }] : [])),
  })
  for (const [at, name] of (names ?? []).entries())
    if (wanted[at]) await tx.side.update({ where: { id: wanted[at].id }, data: { name } })
  await tx.sideMember.createMany({
    data: wanted.flatMap(({ id, entryIds }) =>
      entryIds.map((entryId, at) => ({ sideId: id, competitionId, entryId, position: at + 1 })),
    ),
  })
}
