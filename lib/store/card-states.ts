import type { PaperTotals } from '@/lib/facts/day-record'
import type { CardId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import type { Tx } from './client'

/** What the paper adds up to, as it was read from it. */
export async function writePaper(
  tx: Tx,
  { societyId, cardId, paper }: { societyId: SocietyId; cardId: CardId; paper: PaperTotals },
): Promise<void> {
  const data = { paperOut: paper.out, paperIn: paper.in, paperTotal: paper.total }
  await tx.card.updateMany({ where: { id: cardId, societyId }, data })
}

/** Only a card that is not in yet; answers whether it was not. */
export async function takeIn(
  tx: Tx,
  card: { readonly societyId: SocietyId; readonly cardId: CardId; readonly by: string; readonly at: Date },
): Promise<boolean> {
  const taken = await tx.card.updateMany({
    where: { id: card.cardId, societyId: card.societyId, state: { not: 'taken-in' } },
    data: { state: 'taken-in', takenInAt: card.at, takenInBy: card.by },
  })
  return taken.count === 1
}

/** Accepted or handed in, and out again: its scores may be written once more. Answers whether it was. */
export async function takeOut(
  tx: Tx,
  card: { readonly societyId: SocietyId; readonly cardId: CardId },
): Promise<boolean> {
  const opened = await tx.card.updateMany({
    where: { id: card.cardId, societyId: card.societyId, state: { not: 'out' } },
    data: { state: 'out', takenInAt: null, takenInBy: null },
  })
  return opened.count === 1
}
