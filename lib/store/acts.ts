import 'server-only'
import { type ActToRecord, type Doer, type InWords, shortened, withoutSecrets } from '@/lib/facts/act-record'
import type { Tx } from './client'

/** Writes one row of the record of acts. Call it in the transaction of the act itself, so that neither is without the other. */
export async function recordAct(
  tx: Tx,
  actor: Doer,
  { act, area, subject, subjectId = null, before = null, after = null, version }: ActToRecord,
  now: Date,
  societyId: string = societyOf(actor),
): Promise<void> {
  const versioned = version === undefined ? after : { ...after, version }
  await tx.actRecord.create({
    data: {
      societyId,
      at: now,
      act,
      actorKind: actor.kind,
      userId: actor.kind === 'officer' ? actor.userId : null,
      actorName: await nameOf(tx, actor),
      from: 'from' in actor ? shortened(actor.from) : null,
      area,
      subject: withoutSecrets(subject).slice(0, 200),
      subjectId,
      before: written(before),
      after: written(versioned),
    },
  })
}

function societyOf(actor: Doer): string {
  if ('societyId' in actor) return actor.societyId
  throw new Error(`An act of ${actor.kind} must say in whose book it is recorded.`)
}

function written(words: InWords | null): string | null {
  if (words === null || Object.keys(words).length === 0) return null
  return JSON.stringify(words, (_, part) => (typeof part === 'string' ? withoutSecrets(part) : part))
}

async function nameOf(tx: Tx, actor: Doer): Promise<string> {
  switch (actor.kind) {
    case 'officer':
      return actor.name
    case 'scorer': {
      const group = await tx.group.findFirst({ where: { id: actor.groupId }, select: { number: true } })
      return group ? `Group ${group.number}` : 'A group'
    }
    case 'member': {
      const person = await tx.person.findUnique({
        where: { societyId_id: { societyId: actor.societyId, id: actor.personId } },
        select: { firstName: true, familyName: true },
      })
      return person ? `${person.firstName} ${person.familyName}` : 'A member'
    }
    case 'anybody':
      return 'Somebody with a link'
    case 'server':
      return 'Daybook'
  }
}
