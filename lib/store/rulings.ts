import type { CardId, DayId, RulingId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import type { RulingKind } from '@/lib/facts/day-record'
import type { Tx } from './client'

/** The next number of the day. Safe because the day's row is held by this transaction. */
export async function nextRulingNumber(tx: Tx, dayId: DayId): Promise<number> {
  const last = await tx.ruling.findFirst({ where: { dayId }, select: { number: true }, orderBy: { number: 'desc' } })
  return (last?.number ?? 0) + 1
}

export async function addRuling(
  tx: Tx,
  ruling: {
    readonly id: RulingId
    readonly societyId: SocietyId
    readonly dayId: DayId
    readonly cardId: CardId
    readonly number: number
    readonly kind: RulingKind
    readonly hole: number | null
    readonly value: number | null
    readonly clause: string
    readonly reason: string
    readonly byUserId: UserId
    readonly byName: string
    readonly ruledAt: Date
    readonly replaces: number | null
  },
): Promise<void> {
  await tx.ruling.create({ data: { ...ruling, ...kindInBook(ruling.kind) } })
}

/** The book has one kind for every handicap that is set, and says beside it which handicap that is. */
function kindInBook(kind: RulingKind): { readonly kind: string; readonly sets: 'index' | 'course' | null } {
  if (kind === 'handicap-index') return { kind: 'playing-handicap', sets: 'index' }
  if (kind === 'course-handicap') return { kind: 'playing-handicap', sets: 'course' }
  return { kind, sets: null }
}

export function kindFromBook(kind: string, sets: string | null): RulingKind {
  if (sets === 'index') return 'handicap-index'
  return sets === 'course' ? 'course-handicap' : (kind as RulingKind)
}
