import 'server-only'
import { randomUUID } from 'node:crypto'
import type { Duty } from '@/lib/facts/actor'
import { type Book, book, type Tx } from './client'
import { hashOfPassword } from './sign-in'
import { write } from './write'

type Officer = { name: string; email: string; passwordHash: string }

/** A society with its first officer, who holds the duty of secretary. Null when the address part is taken. */
export async function insertSociety(
  society: { name: string; slug: string; foundedYear: number | null; isDemo: boolean },
  officer: { name: string; email: string; password: string },
  now: Date,
): Promise<{ societyId: string; userId: string } | null> {
  // Hashing takes a tenth of a second on purpose: before the transaction, not inside it.
  const passwordHash = await hashOfPassword(officer.password)
  return write(async (tx) => {
    if (await tx.society.findUnique({ where: { slug: society.slug }, select: { id: true } })) return null
    const societyId = randomUUID()
    await tx.society.create({ data: { id: societyId, ...society, createdAt: now } })
    const userId = await userWith(tx, { name: officer.name, email: officer.email, passwordHash }, now)
    await tx.dutyHeld.create({ data: { id: randomUUID(), societyId, userId, duty: 'secretary', from: now } })
    return { societyId, userId }
  })
}

/** Gives a duty to the user of this address, who is made when there is none. Null: new user without a password. */
export async function insertDuty(
  societyId: string,
  officer: { name: string; email: string; password: string | null; duty: Duty; personId: string | null },
  now: Date,
): Promise<string | null> {
  const passwordHash = officer.password === null ? null : await hashOfPassword(officer.password)
  return write(async (tx) => {
    const known = await tx.user.findUnique({ where: { email: officer.email.toLowerCase() }, select: { id: true } })
    if (!known && passwordHash === null) return null
    const userId =
      known?.id ?? (await userWith(tx, { name: officer.name, email: officer.email, passwordHash: passwordHash! }, now))
    const held = await tx.dutyHeld.findFirst({
      where: { societyId, userId, duty: officer.duty, OR: [{ until: null }, { until: { gt: now } }] },
      select: { id: true },
    })
    if (!held)
      await tx.dutyHeld.create({
        data: { id: randomUUID(), societyId, userId, duty: officer.duty, personId: officer.personId, from: now },
      })
    return userId
  })
}

async function userWith(tx: Tx, officer: Officer, now: Date): Promise<string> {
  const email = officer.email.toLowerCase()
  const known = await tx.user.findUnique({ where: { email }, select: { id: true } })
  if (known) return known.id
  const id = randomUUID()
  await tx.user.create({ data: { id, name: officer.name, email, createdAt: now, updatedAt: now } })
  await tx.account.create({
    data: {
      id: randomUUID(),
      accountId: id,
      providerId: 'credential',
      userId: id,
      password: officer.passwordHash,
      createdAt: now,
      updatedAt: now,
    },
  })
  return id
}

export interface DeskOf {
  readonly societyId: string
  readonly slug: string
  readonly name: string
  readonly duties: readonly Duty[]
}

/** The societies in which this user holds a duty at this moment. */
export async function desksOfUser(userId: string, now: Date): Promise<readonly DeskOf[]> {
  const held = await book().dutyHeld.findMany({
    where: { userId, from: { lte: now }, OR: [{ until: null }, { until: { gt: now } }] },
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

export async function societyCount(kept: Book = book()): Promise<number> {
  return kept.society.count()
}

export async function societies(): Promise<readonly { slug: string; name: string; isDemo: boolean }[]> {
  return book().society.findMany({ select: { slug: true, name: true, isDemo: true }, orderBy: { name: 'asc' } })
}
