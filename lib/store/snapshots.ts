import 'server-only'
import { reading } from './client'
import { write } from './write'

export interface DayNowWithBoard {
  readonly dayId: string
  readonly societyId: string
  readonly version: number
  readonly scoreVersion: number
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
      snapshot: { select: { scoreVersion: true, dayVersion: true, board: true } },
    },
  })
  if (!day) return null
  const { snapshot, id, status, ...rest } = day
  // Before the freeze a member's changed figure shows at once, although the day itself has not moved.
  const fresh =
    status !== 'called' && snapshot?.scoreVersion === day.scoreVersion && snapshot.dayVersion === day.version
  return { ...rest, dayId: id, board: fresh ? snapshot.board : null }
}

/** Kept only if nobody has kept a newer one: of two processes the later version wins, whoever is slower. */
export async function keepSnapshot(snapshot: {
  readonly dayId: string
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
        dayVersion: { lte: counted.dayVersion },
        scoreVersion: { lte: counted.scoreVersion },
      },
      data: counted,
    })
    if (older.count === 0 && (await tx.standingsSnapshot.count({ where: { dayId } })) === 0)
      await tx.standingsSnapshot.create({ data: snapshot })
  })
}
