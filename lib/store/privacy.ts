import type { PersonId, SocietyId } from '@/lib/facts/ids'
import 'server-only'
import { randomBytes } from 'node:crypto'
import { fullName, type PersonName } from '@/lib/facts/person-name'
import { type ShownAs, settingsIn } from '@/lib/facts/society-settings'
import { type Book, reading, type Tx } from './client'

/** Keys that open nothing begin with this word: nobody was told them. */
const ENDED = 'ended-'
export const isEndedKey = (pageKey: string): boolean => pageKey.startsWith(ENDED)
const newKey = () => randomBytes(24).toString('base64url')

/** The new key of a person's own page; null when the society has no such person. The old one leads nowhere at once. */
export async function changePageKey(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  to: 'new' | 'ended',
): Promise<string | null> {
  const pageKey = to === 'new' ? newKey() : `${ENDED}${newKey()}`
  const changed = await tx.person.updateMany({ where: { id: personId, societyId }, data: { pageKey } })
  return changed.count === 1 ? pageKey : null
}

const SHOWN_LESS = { OR: [{ shownAs: { not: 'name' } }, { junior: true }] }

/** How those are shown to everybody who are not simply shown by name. */
export async function hiddenPeople(
  society: { readonly societyId: SocietyId } | { readonly slug: string },
  on: Book | Tx = reading(),
): Promise<ReadonlyMap<string, ShownAs>> {
  const rows = await on.person.findMany({
    where: {
      society: 'slug' in society ? { slug: society.slug } : { id: society.societyId },
      ...SHOWN_LESS,
    },
    select: { id: true, shownAs: true, society: { select: { settings: true } } },
  })
  const hidden = new Map<string, ShownAs>()
  for (const { id, shownAs, society: kept } of rows) {
    const as = shownAs === 'name' ? settingsIn(kept.settings).juniorsShownAs : (shownAs as ShownAs)
    if (as !== 'name') hidden.set(id, as)
  }
  return hidden
}

export interface PersonOfSheet extends PersonName {
  readonly personId: PersonId
}

/** Everybody who was entered on a day, or on any day of the society. */
export async function peopleOfSheets(
  where: { readonly societySlug: string; readonly daySlug?: string },
  on: Book | Tx = reading(),
): Promise<readonly PersonOfSheet[]> {
  const rows = await on.person.findMany({
    where: {
      society: { slug: where.societySlug },
      ...(where.daySlug === undefined ? {} : { entries: { some: { day: onBoardsOf(where.daySlug) } } }),
    },
    select: { id: true, firstName: true, familyName: true, knownAs: true },
  })
  return rows.map(({ id, ...row }) => ({ personId: id, ...row }))
}

/** The day itself, and every earlier one that a competition of it adds up: whoever missed this one is shown from there. */
const onBoardsOf = (slug: string) => ({ OR: [{ slug }, { countedBy: { some: { competition: { day: { slug } } } } }] })

export interface HeldPerson {
  readonly societyName: string
  readonly societySlug: string
  readonly firstName: string
  readonly familyName: string
  readonly gender: string
  readonly kind: string
  readonly regular: boolean
  readonly email: string | null
  readonly phone: string | null
  readonly handicapSource: string
  readonly memberSince: number | null
  readonly membershipNumber: string | null
  readonly homeClub: string | null
  readonly leftOn: string | null
  readonly junior: boolean
  readonly shownAs: ShownAs
  readonly labels: string
  readonly createdAt: Date
  readonly erasedAt: Date | null
  readonly duties: readonly { readonly duty: string; readonly from: Date; readonly until: Date | null }[]
  readonly records: readonly {
    readonly indexTenths: number
    readonly source: string
    readonly from: string
    readonly reason: string
  }[]
  readonly entries: readonly {
    readonly dayName: string
    readonly date: string
    readonly status: string
    readonly enteredAt: Date
    readonly indexTenths: number | null
    readonly claimedTenths: number | null
    readonly hostName: string | null
    readonly cards: readonly {
      readonly state: string
      readonly facts: readonly {
        readonly hole: number
        readonly strokes: number | null
        readonly outcome: string
        readonly writer: string
        readonly writtenAt: Date
      }[]
      readonly rulings: readonly { readonly number: number; readonly kind: string; readonly reason: string }[]
    }[]
  }[]
  readonly guestsBrought: number
  readonly acts: readonly { readonly at: Date; readonly act: string; readonly actorName: string }[]
}

/** Everything the book holds about one person, for that person. */
export async function heldAbout(societyId: SocietyId, personId: PersonId): Promise<HeldPerson | null> {
  const on = reading()
  const person = await on.person.findUnique({
    where: { societyId_id: { societyId, id: personId } },
    include: {
      society: { select: { name: true, slug: true } },
      duties: { select: { duty: true, from: true, until: true } },
      records: {
        select: { indexTenths: true, source: true, from: true, reason: true },
        orderBy: { sequence: 'desc' },
      },
      entries: {
        include: {
          day: { select: { name: true, date: true } },
          host: { select: { firstName: true, familyName: true, knownAs: true } },
          cards: {
            include: {
              facts: {
                select: { hole: true, strokes: true, outcome: true, writer: true, writtenAt: true },
                orderBy: { id: 'asc' },
              },
              rulings: { select: { number: true, kind: true, reason: true } },
            },
          },
        },
        orderBy: { day: { date: 'desc' } },
      },
      _count: { select: { hosted: true } },
    },
  })
  if (!person) return null
  const acts = await on.actRecord.findMany({
    where: { societyId, subjectId: personId },
    select: { at: true, act: true, actorName: true },
    orderBy: { id: 'desc' },
  })
  const { society, entries, shownAs, _count, ...rest } = person
  return {
    ...rest,
    shownAs: shownAs as ShownAs,
    societyName: society.name,
    societySlug: society.slug,
    entries: entries.map(({ day, host, ...entry }) => ({
      ...entry,
      dayName: day.name,
      date: day.date,
      hostName: host && fullName(host),
    })),
    guestsBrought: _count.hosted,
    acts,
  }
}

export async function setContact(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  contact: { readonly email: string | null; readonly phone: string | null },
): Promise<boolean> {
  return (await tx.person.updateMany({ where: { id: personId, societyId }, data: contact })).count === 1
}

/** The person leaves: from this day, and shown so from now on. */
export async function setLeft(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  leaving: { readonly leftOn: string; readonly shownAs: ShownAs },
): Promise<boolean> {
  return (await tx.person.updateMany({ where: { id: personId, societyId }, data: leaving })).count === 1
}

/** Contact details and the words people are sorted by leave the book; scores, figures and the name for the desk stay. */
export async function eraseDetails(
  tx: Tx,
  societyId: SocietyId,
  personId: PersonId,
  as: { readonly shownAs: ShownAs; readonly leftOn: string; readonly now: Date },
): Promise<void> {
  const { shownAs, leftOn, now } = as
  await tx.person.update({
    where: { societyId_id: { societyId, id: personId } },
    data: {
      email: null,
      phone: null,
      membershipNumber: null,
      homeClub: null,
      labels: '[]',
      regular: false,
      shownAs,
      leftOn,
      erasedAt: now,
    },
  })
}

export interface RunOut {
  readonly leaversContact: number
  readonly guestsContact: number
  readonly guestsNames: number
  readonly leaversPage: number
}

/** Dates of the calendar; a null date leaves its kind alone. */
export async function takeOutWhatRanOut(
  tx: Tx,
  societyId: SocietyId,
  before: {
    readonly leaversContact: string
    readonly guestsContact: string
    readonly guestsNames: string | null
    readonly leaversPage: string
  },
  now: Date,
): Promise<RunOut> {
  const reachable = { OR: [{ email: { not: null } }, { phone: { not: null } }] }
  const gone = { email: null, phone: null, erasedAt: now }
  const leavers = await tx.person.updateMany({
    where: { societyId, kind: 'member', leftOn: { lt: before.leaversContact }, ...reachable },
    data: gone,
  })
  // A guest who was never entered counts from the day on which the book got the name.
  const quietSince = (date: string) => ({
    societyId,
    kind: 'guest',
    createdAt: { lt: new Date(`${date}T00:00:00Z`) },
    entries: { none: { day: { date: { gte: date } } } },
  })
  const guests = await tx.person.updateMany({
    where: { ...quietSince(before.guestsContact), ...reachable },
    data: gone,
  })
  const names =
    before.guestsNames === null
      ? { count: 0 }
      : await tx.person.updateMany({
          where: { ...quietSince(before.guestsNames), shownAs: 'name' },
          data: { shownAs: 'initials' },
        })
  const pages = await tx.person.findMany({
    where: { societyId, leftOn: { lt: before.leaversPage }, pageKey: { not: { startsWith: ENDED } } },
    select: { id: true },
  })
  for (const { id } of pages) await changePageKey(tx, societyId, id, 'ended')
  return {
    leaversContact: leavers.count,
    guestsContact: guests.count,
    guestsNames: names.count,
    leaversPage: pages.length,
  }
}

/** What belongs to no society: sessions and one-time links that have run out, counted tries of another day. */
export async function forgetRunOut(tx: Tx, now: Date): Promise<void> {
  await tx.session.deleteMany({ where: { expiresAt: { lt: now } } })
  await tx.verification.deleteMany({ where: { expiresAt: { lt: now } } })
  await tx.rateLimit.deleteMany({ where: { lastRequest: { lt: BigInt(now.getTime() - 86_400_000) } } })
  await tx.attempt.deleteMany({ where: { until: { lt: BigInt(now.getTime()) } } })
}
