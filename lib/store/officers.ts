import type { PersonId, SocietyId, UserId } from '@/lib/facts/ids'
import 'server-only'
import type { Duty } from '@/lib/facts/actor'
import { recordAct } from './acts'
import { type Book, book, type Tx } from './client'
import { newId } from './new-id'
import { hashOfPassword } from './password'
import { write } from './write'

export interface SocietyToFound {
  readonly name: string
  readonly slug: string
  readonly foundedYear: number | null
  readonly isDemo: boolean
}

/** A society with its first officer, who holds the duty of secretary. Null when the address part is taken. */
export async function insertSociety(
  society: SocietyToFound,
  officer: { name: string; email: string; password: string },
  now: Date,
  /** Said in the same transaction; false leaves everything as it was. */
  mayGoOn: (tx: Tx) => Promise<boolean> = async () => true,
): Promise<{ societyId: SocietyId; userId: UserId } | null | 'may-not'> {
  // Hashing takes a tenth of a second on purpose: before the transaction, not inside it.
  const passwordHash = await hashOfPassword(officer.password)
  return write(async (tx) => {
    // First: a link that is used up for an address that is taken could not be used for another one.
    if (await tx.society.findUnique({ where: { slug: society.slug }, select: { id: true } })) return null
    if (!(await mayGoOn(tx))) return 'may-not'
    const societyId = newId<SocietyId>()
    await tx.society.create({ data: { id: societyId, ...society, createdAt: now } })
    const userId = await userWith(tx, { ...officer, passwordHash }, now)
    await tx.dutyHeld.create({ data: { id: newId(), societyId, userId, duty: 'secretary', from: now } })
    const after = { Society: society.name, Secretary: officer.name }
    const record = { act: 'found-society', area: 'access' as const, subject: society.name, subjectId: societyId, after }
    await recordAct(tx, { kind: 'server' }, record, now, societyId)
    return { societyId, userId }
  })
}

/** The user of this e-mail address, made when there is none; a password is only set on a new one. */
export async function userWith(
  tx: Tx,
  officer: { name: string; email: string; passwordHash: string | null },
  now: Date,
): Promise<UserId> {
  const email = officer.email.toLowerCase()
  const known = await tx.user.findUnique({ where: { email }, select: { id: true } })
  if (known) return known.id
  const id = newId<UserId>()
  await tx.user.create({ data: { id, name: officer.name, email, createdAt: now, updatedAt: now } })
  if (officer.passwordHash !== null) await setPassword(tx, id, officer.passwordHash, now)
  return id
}

export async function setPassword(tx: Tx, userId: UserId, password: string, now: Date): Promise<void> {
  const where = { userId, providerId: 'credential' }
  const changed = await tx.account.updateMany({ where, data: { password, updatedAt: now } })
  if (changed.count > 0) return
  await tx.account.create({
    data: { id: newId(), accountId: userId, ...where, password, createdAt: now, updatedAt: now },
  })
}

export interface DutyRow {
  readonly dutyId: string
  readonly userId: UserId
  readonly name: string
  readonly email: string
  readonly duty: Duty
  readonly from: Date
  readonly until: Date | null
  /** False until the one-time link was used. */
  readonly canSignIn: boolean
}

const present = (now: Date) => ({ from: { lte: now }, OR: [{ until: null }, { until: { gt: now } }] })

const dutyColumns = {
  id: true,
  userId: true,
  duty: true,
  from: true,
  until: true,
  user: {
    select: {
      name: true,
      email: true,
      accounts: { where: { password: { not: null } }, select: { id: true }, take: 1 },
      passkeys: { select: { id: true }, take: 1 },
    },
  },
} as const

/** Everybody who holds or held a duty in this society, present ones first. */
export async function dutiesIn(societyId: SocietyId, on: Book | Tx = book()): Promise<readonly DutyRow[]> {
  const rows = await on.dutyHeld.findMany({
    where: { societyId },
    select: dutyColumns,
    orderBy: [{ from: 'desc' }, { id: 'asc' }],
  })
  return rows.map(({ id, user, duty, ...row }) => ({
    ...row,
    dutyId: id,
    duty: duty as Duty,
    name: user.name,
    email: user.email,
    canSignIn: user.accounts.length + user.passkeys.length > 0,
  }))
}

/** Takes the write lock with the society's own row: what is read after it is true until the transaction ends. */
export async function holdSociety(tx: Tx, societyId: SocietyId): Promise<{ name: string } | null> {
  const held = await tx.$executeRaw`UPDATE "Society" SET "isDemo" = "isDemo" WHERE "id" = ${societyId}`
  if (held === 0) return null
  return tx.society.findUnique({ where: { id: societyId }, select: { name: true } })
}

/** True when somebody else holds full duty and can sign in. */
export async function hasOtherSecretary(tx: Tx, societyId: SocietyId, dutyId: string, now: Date): Promise<boolean> {
  const others = await tx.dutyHeld.count({
    where: {
      societyId,
      duty: 'secretary',
      id: { not: dutyId },
      ...present(now),
      user: { OR: [{ accounts: { some: { password: { not: null } } } }, { passkeys: { some: {} } }] },
    },
  })
  return others > 0
}

/** A duty from now on; the one already held when it is held already. */
export async function insertDuty(
  tx: Tx,
  societyId: SocietyId,
  held: { userId: UserId; duty: Duty; personId: PersonId | null },
  now: Date,
): Promise<{ dutyId: string; fresh: boolean }> {
  const { userId, duty, personId } = held
  const known = await tx.dutyHeld.findFirst({
    where: { societyId, userId, duty, OR: [{ until: null }, { until: { gt: now } }] },
    select: { id: true },
  })
  if (known) return { dutyId: known.id, fresh: false }
  const id = newId()
  await tx.dutyHeld.create({ data: { id, societyId, userId, duty, personId, from: now } })
  return { dutyId: id, fresh: true }
}

/** False when it had ended already. */
export async function closeDuty(tx: Tx, societyId: SocietyId, dutyId: string, now: Date): Promise<boolean> {
  const ended = await tx.dutyHeld.updateMany({
    where: { id: dutyId, societyId, OR: [{ until: null }, { until: { gt: now } }] },
    data: { until: now },
  })
  return ended.count === 1
}

export async function userByEmail(
  tx: Tx,
  email: string,
): Promise<{ userId: UserId; name: string; canSignIn: boolean } | null> {
  const user = await tx.user.findUnique({
    where: { email: email.toLowerCase() },
    select: {
      id: true,
      name: true,
      accounts: { where: { password: { not: null } }, select: { id: true }, take: 1 },
      passkeys: { select: { id: true }, take: 1 },
    },
  })
  return user && { userId: user.id, name: user.name, canSignIn: user.accounts.length + user.passkeys.length > 0 }
}

/** True when another society waits for this user to open a link: ours would open its desk too. */
export async function isAwaitedElsewhere(tx: Tx, societyId: SocietyId, userId: UserId, now: Date): Promise<boolean> {
  return (await tx.dutyHeld.count({ where: { userId, societyId: { not: societyId }, ...present(now) } })) > 0
}

export async function userName(userId: UserId, on: Book | Tx = book()): Promise<string | null> {
  return (await on.user.findUnique({ where: { id: userId }, select: { name: true } }))?.name ?? null
}

export interface DeskOf {
  readonly societyId: SocietyId
  readonly slug: string
  readonly name: string
  readonly duties: readonly Duty[]
}

/** The societies in which this user holds a duty at this moment. */
export async function desksOfUser(userId: UserId, now: Date, on: Book | Tx = book()): Promise<readonly DeskOf[]> {
  const held = await on.dutyHeld.findMany({
    where: { userId, ...present(now) },
    select: { duty: true, society: { select: { id: true, slug: true, name: true } } },
    orderBy: [{ society: { name: 'asc' } }, { duty: 'asc' }],
  })
  const desks = new Map<string, DeskOf>()
  for (const { duty, society } of held) {
    const duties = [...(desks.get(society.id)?.duties ?? []), duty as Duty]
    desks.set(society.id, { societyId: society.id, slug: society.slug, name: society.name, duties })
  }
  return [...desks.values()]
}

export async function societyCount(kept: Book | Tx = book()): Promise<number> {
  return kept.society.count()
}

export async function societies(): Promise<readonly { slug: string; name: string; isDemo: boolean }[]> {
  return book().society.findMany({ select: { slug: true, name: true, isDemo: true }, orderBy: { name: 'asc' } })
}
