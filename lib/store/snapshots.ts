import type { DayId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { reading } from './client'
import { boardVersionOf, WITH_EARLIER } from './day-matches'
import { write } from './write'

export interface DayNowWithBoard {
  readonly dayId: DayId
  readonly societyId: SocietyId
  readonly version: number
  /** Moves with the scores of the day, and with everything on the earlier days it is added up with. */
  readonly boardVersion: number
  /** The finished board as text, when it is of this very version. */
  readonly board: string | null
}

/** One question for a reader of the board: which version is the day at, and is it counted already? */
export async function boardNow(societySlug: string, daySlug: string): Promise<DayNowWithBoard | null> {
  const day = await reading().day.findFirst({
    where: { slug: daySlug, society: { slug: societySlug } },
    select: {
      id: true,
      societyId: true,
      status: true,
      version: true,
      scoreVersion: true,
      snapshot: { select: { scoreVersion: true, dayVersion: true, board: true, countedAt: true } },
      ...WITH_EARLIER,
    },
  })
  if (!day) return null
  const { snapshot, id, status, societyId, version } = day
  const { boardVersion, settled } = boardVersionOf(day)
  // Before the freeze a member's changed figure shows at once, although the day itself has not moved.
  const fresh =
    status !== 'called' &&
    settled &&
    snapshot?.scoreVersion === boardVersion &&
    snapshot.dayVersion === version &&
    isOfThisBuild(snapshot.countedAt)
  return { dayId: id, societyId, version, boardVersion, board: fresh ? snapshot.board : null }
}

/** A board kept before this process began may be in the shape of an older version of the program: it is counted anew. */
function isOfThisBuild(countedAt: Date): boolean {
  return countedAt.getTime() >= Date.now() - process.uptime() * 1000
}

/**
 * Kept only if nobody has kept a newer one: of two processes the later version wins, whoever is slower. A change of the
 * day itself is newer whatever the scores: it may have taken an earlier day out of the count.
 */
export async function keepSnapshot(snapshot: {
  readonly dayId: DayId
  /** The board version it was counted from. */
  readonly scoreVersion: number
  readonly dayVersion: number
  readonly board: string
  readonly countedAt: Date
}): Promise<void> {
  const { dayId, ...counted } = snapshot
  await write(async (tx) => {
    const older = await tx.standingsSnapshot.updateMany({
      where: {
        dayId,
        OR: [
          { dayVersion: { lt: counted.dayVersion } },
          { dayVersion: counted.dayVersion, scoreVersion: { lte: counted.scoreVersion } },
        ],
      },
      data: counted,
    })
    if (older.count === 0 && (await tx.standingsSnapshot.count({ where: { dayId } })) === 0)
      await tx.standingsSnapshot.create({ data: snapshot })
  })
}
