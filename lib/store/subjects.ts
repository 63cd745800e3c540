import type { CardId, DayId, GroupId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { fullName } from '@/lib/facts/person-name'
import type { Tx } from './client'

/** What an act was done to, in the words of the book; the id alone when it is not there any more. */
export async function dayInWords(tx: Tx, societyId: SocietyId, dayId: DayId): Promise<string> {
  const day = await tx.day.findFirst({ where: { id: dayId, societyId }, select: { name: true } })
  return day?.name ?? dayId
}

/** "Pat Quill, Spring Cup" */
export async function cardInWords(tx: Tx, societyId: SocietyId, cardId: CardId): Promise<string> {
  const card = await tx.card.findFirst({
    where: { id: cardId, societyId },
    select: {
      entry: { select: { person: { select: { firstName: true, familyName: true, knownAs: true } } } },
      round: { select: { day: { select: { name: true } } } },
    },
  })
  if (!card) return cardId
  return `${fullName(card.entry.person)}, ${card.round.day.name}`
}

/** "Group 3, Spring Cup" */
export async function groupInWords(tx: Tx, societyId: SocietyId, groupId: GroupId): Promise<string> {
  const group = await tx.group.findFirst({
    where: { id: groupId, societyId },
    select: { number: true, round: { select: { day: { select: { name: true } } } } },
  })
  return group ? `Group ${group.number}, ${group.round.day.name}` : groupId
}
