import type { SocietyId } from '@/lib/facts/ids'
import 'server-only'
import {
  type ActArea,
  type ActToRecord,
  type Doer,
  type InWords,
  shortened,
  withoutSecrets,
} from '@/lib/facts/act-record'
import { fullName } from '@/lib/facts/person-name'
import { reading, type Tx } from './client'

/** Writes one row of the record of acts. Call it in the transaction of the act itself, so that neither is without the other. */
export async function recordAct(
  tx: Tx,
  actor: Doer,
  { act, area, subject, subjectId = null, before = null, after = null, version }: ActToRecord,
  now: Date,
  societyId: SocietyId = societyOf(actor),
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

function societyOf(actor: Doer): SocietyId {
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
        select: { firstName: true, familyName: true, knownAs: true },
      })
      return person ? fullName(person) : 'A member'
    }
    case 'anybody':
      return 'Somebody with a link'
    case 'server':
      return 'Daybook'
  }
}

export interface ActRow {
  readonly id: number
  readonly at: Date
  readonly act: string
  readonly actorKind: string
  readonly actorName: string
  readonly from: string | null
  readonly area: ActArea
  readonly subject: string
  readonly before: InWords | null
  readonly after: InWords | null
}

export interface ActsAsked {
  readonly area?: ActArea | undefined
  readonly act?: string | undefined
  /** The name of whoever acted. */
  readonly who?: string | undefined
  /** A part of what it was done to. */
  readonly subject?: string | undefined
  readonly since?: Date | undefined
  readonly until?: Date | undefined
  /** Rows older than this one. */
  readonly olderThan?: number | undefined
}

/** Newest first. */
export async function actsOf(societyId: SocietyId, asked: ActsAsked, limit: number): Promise<readonly ActRow[]> {
  const { area, act, who, subject, since, until, olderThan } = asked
  const rows = await reading().actRecord.findMany({
    where: {
      societyId,
      ...(area ? { area } : {}),
      ...(act ? { act } : {}),
      ...(who ? { actorName: who } : {}),
      ...(subject ? { subject: { contains: subject } } : {}),
      ...(since || until ? { at: { ...(since ? { gte: since } : {}), ...(until ? { lt: until } : {}) } } : {}),
      ...(olderThan ? { id: { lt: olderThan } } : {}),
    },
    orderBy: { id: 'desc' },
    take: limit,
  })
  return rows.map(rowOf)
}

/** Who acted and what was done, for the choices of the filter. */
export async function choicesOfActs(
  societyId: SocietyId,
): Promise<{ readonly people: readonly string[]; readonly acts: readonly string[] }> {
  const on = reading()
  const people = await on.actRecord.findMany({
    where: { societyId },
    select: { actorName: true },
    distinct: ['actorName'],
    orderBy: { actorName: 'asc' },
  })
  const acts = await on.actRecord.findMany({
    where: { societyId },
    select: { act: true },
    distinct: ['act'],
    orderBy: { act: 'asc' },
  })
  return { people: people.map((one) => one.actorName), acts: acts.map((one) => one.act) }
}

/** What was done to a thing after the version a form was filled from, oldest first. */
export async function actsSince(societyId: SocietyId, subjectId: string, version: number): Promise<readonly ActRow[]> {
  const rows = await reading().actRecord.findMany({
    where: { societyId, subjectId },
    orderBy: { id: 'desc' },
    take: 200,
  })
  return rows
    .map(rowOf)
    .filter((row) => typeof row.after?.version === 'number' && row.after.version > version)
    .reverse()
}

function rowOf(row: {
  id: number
  at: Date
  act: string
  actorKind: string
  actorName: string
  from: string | null
  area: string
  subject: string
  before: string | null
  after: string | null
}): ActRow {
  const words = (json: string | null) => (json === null ? null : (JSON.parse(json) as InWords))
  const { id, at, act, actorKind, actorName, from, area, subject, before, after } = row
  return {
    id,
    at,
    act,
    actorKind,
    actorName,
    from,
    area: area as ActArea,
    subject,
    before: words(before),
    after: words(after),
  }
}
