import type { PersonId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import { randomBytes } from 'node:crypto'
import type { EntryRecord } from '@/lib/facts/day-record'
import { labelsOf } from '@/lib/facts/labels'
import { byName } from '@/lib/facts/person-name'
import type { ShownAs } from '@/lib/facts/society-settings'
import { type Book, reading, type Tx } from './client'
import { newId } from './new-id'

type Gender = EntryRecord['gender']

export interface PersonKept {
  readonly personId: PersonId
  readonly firstName: string
  readonly familyName: string
  /** A word that tells two of one name apart. */
  readonly knownAs: string | null
  readonly gender: Gender
  readonly kind: 'member' | 'guest'
  readonly regular: boolean
  readonly email: string | null
  readonly phone: string | null
  readonly handicapSource: 'home-club' | 'society' | 'claimed'
  readonly memberSince: number | null
  readonly membershipNumber: string | null
  readonly homeClub: string | null
  readonly leftOn: string | null
  /** The words the society sorts people by. */
  readonly labels: readonly string[]
  readonly junior: boolean
  readonly shownAs: ShownAs
  readonly erased: boolean
  readonly pageKey: string
  readonly days: number
  /** The newest figure; null when nobody has given one. */
  readonly figure: { readonly indexTenths: number; readonly from: string; readonly reason: string } | null
}

export type PersonToKeep = Omit<
  PersonKept,
  | 'personId'
  | 'pageKey'
  | 'days'
  | 'figure'
  | 'labels'
  | 'junior'
  | 'shownAs'
  | 'erased'
  | 'knownAs'
  | 'membershipNumber'
  | 'homeClub'
> & {
  /** Left as they are when absent. */
  readonly knownAs?: string | null | undefined
  readonly membershipNumber?: string | null | undefined
  readonly homeClub?: string | null | undefined
  readonly labels?: readonly string[] | undefined
  readonly junior?: boolean | undefined
}

const columnsOf = ({ labels, knownAs, membershipNumber, homeClub, ...person }: PersonToKeep) => ({
  ...person,
  ...(knownAs === undefined ? {} : { knownAs }),
  ...(labels === undefined ? {} : { labels: JSON.stringify(labels) }),
  ...(membershipNumber === undefined ? {} : { membershipNumber }),
  ...(homeClub === undefined ? {} : { homeClub }),
})

export interface FigureToAdd {
  readonly indexTenths: number
  readonly source: PersonKept['handicapSource']
  readonly from: string
  readonly reason: string
  readonly byUserId: UserId | null
}

const columns = {
  id: true,
  firstName: true,
  familyName: true,
  knownAs: true,
  gender: true,
  kind: true,
  regular: true,
  email: true,
  phone: true,
  handicapSource: true,
  memberSince: true,
  membershipNumber: true,
  homeClub: true,
  leftOn: true,
  labels: true,
  junior: true,
  shownAs: true,
  erasedAt: true,
  pageKey: true,
  records: { select: { indexTenths: true, from: true, reason: true }, orderBy: { sequence: 'desc' }, take: 1 },
  _count: { select: { entries: { where: { status: 'entered' } } } },
} as const

/** Everybody in the society's book, whoever has left too, by family name. */
export async function peopleOf(societyId: SocietyId, on: Book | Tx = reading()): Promise<readonly PersonKept[]> {
  const rows = await on.person.findMany({ where: { societyId }, select: columns, orderBy: { id: 'asc' } })
  return rows.sort(byName).map(({ id, records, _count, erasedAt, ...row }) => ({
    ...row,
    shownAs: row.shownAs as ShownAs,
    erased: erasedAt !== null,
    personId: id,
    gender: row.gender as Gender,
    kind: row.kind as PersonKept['kind'],
    handicapSource: row.handicapSource as PersonKept['handicapSource'],
    labels: labelsOf(row.labels),
    days: _count.entries,
    figure: records[0] ?? null,
  }))
}

export interface KnownGuest {
  readonly personId: PersonId
  readonly firstName: string
  readonly familyName: string
  readonly knownAs: string | null
  /** The handicap of the book, or the one the host gave last. */
  readonly indexTenths: number | null
  readonly lastDay: string | null
  readonly lastHostId: PersonId | null
}

/** Guests of earlier days and guests added to the members' list, to be chosen without typing. */
export async function guestsOf(societyId: SocietyId, on: Book | Tx = reading()): Promise<readonly KnownGuest[]> {
  const rows = await on.person.findMany({
    where: { societyId, kind: 'guest', leftOn: null, erasedAt: null },
    select: {
      id: true,
      firstName: true,
      familyName: true,
      knownAs: true,
      records: columns.records,
      entries: {
        select: { claimedTenths: true, hostId: true, day: { select: { name: true } } },
        orderBy: { enteredAt: 'desc' },
        take: 1,
      },
    },
  })
  return rows.sort(byName).map(({ id, records, entries, ...name }) => ({
    ...name,
    personId: id,
    indexTenths: entries[0]?.claimedTenths ?? records[0]?.indexTenths ?? null,
    lastDay: entries[0]?.day.name ?? null,
    lastHostId: entries[0]?.hostId ?? null,
  }))
}

export async function insertPerson(
  tx: Tx,
  societyId: SocietyId,
  person: PersonToKeep,
  figure: FigureToAdd | null,
  now: Date,
): Promise<PersonId> {
  const id = newId<PersonId>()
  await tx.person.create({
    data: { id, societyId, ...columnsOf(person), pageKey: randomBytes(24).toString('base64url'), createdAt: now },
  })
  if (figure) await addFigure(tx, societyId, id, figure, now)
  return id
}

export async function updatePerson(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  person: PersonToKeep,
): Promise<void> {
  await tx.person.update({ where: { societyId_id: { societyId, id: personId } }, data: columnsOf(person) })
}

/** The next record of this person. The number is read and used in one transaction: two at once cannot get the same. */
export async function addFigure(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  figure: FigureToAdd,
  now: Date,
): Promise<void> {
  const last = await tx.handicapRecord.findFirst({
    where: { societyId, personId },
    select: { sequence: true },
    orderBy: { sequence: 'desc' },
  })
  await tx.handicapRecord.create({
    data: {
      id: newId(),
      societyId,
      personId,
      ...figure,
      recordedAt: now,
      sequence: (last?.sequence ?? 0) + 1,
    },
  })
}

export interface PersonAndFigure extends PersonToKeep {
  readonly personId: PersonId
  readonly indexTenths: number | null
  readonly from: string | null
}

export async function personIn(tx: Tx, societyId: SocietyId, personId: PersonId): Promise<PersonAndFigure | null> {
  const person = await tx.person.findUnique({
    where: { societyId_id: { societyId, id: personId } },
    select: columns,
  })
  if (!person) return null
  const { id, records, _count, pageKey: _, erasedAt: __, ...row } = person
  return {
    ...row,
    personId: id,
    gender: row.gender as Gender,
    kind: row.kind as PersonKept['kind'],
    handicapSource: row.handicapSource as PersonKept['handicapSource'],
    labels: labelsOf(row.labels),
    indexTenths: records[0]?.indexTenths ?? null,
    from: records[0]?.from ?? null,
  }
}

export async function setHandicapSource(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  handicapSource: PersonKept['handicapSource'],
): Promise<void> {
  await tx.person.update({ where: { societyId_id: { societyId, id: personId } }, data: { handicapSource } })
}

export interface PersonUsed {
  readonly days: readonly { readonly name: string; readonly date: string }[]
  /** Days on which this person brought a guest. */
  readonly hosted: readonly { readonly name: string; readonly date: string }[]
  readonly duties: number
  readonly handicaps: number
}

/** Everything in the book that names this person. */
export async function personUsed(tx: Tx, societyId: SocietyId, personId: PersonId): Promise<PersonUsed> {
  const day = { select: { day: { select: { name: true, date: true } } } } as const
  const [entries, hosted] = [
    await tx.entry.findMany({ where: { societyId, personId }, ...day }),
    await tx.entry.findMany({ where: { societyId, hostId: personId }, ...day }),
  ]
  return {
    days: entries.map((entry) => entry.day),
    hosted: hosted.map((entry) => entry.day),
    duties: await tx.dutyHeld.count({ where: { societyId, personId } }),
    handicaps: await tx.handicapRecord.count({ where: { societyId, personId } }),
  }
}

/** With the first handicap, which the database lets go only together with its person. */
export async function deletePersonRows(tx: Tx, societyId: SocietyId, personId: PersonId): Promise<void> {
  await tx.handicapRecord.deleteMany({ where: { societyId, personId } })
  await tx.person.delete({ where: { societyId_id: { societyId, id: personId } } })
}
