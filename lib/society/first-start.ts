// The start of an installation: what its settings say, and the one-time links behind which the first society, and further
// ones, are founded.

import 'server-only'
import { type FirstStart, firstStart as schema } from '@/lib/facts/duty-commands'
import { ok, type Result, refused } from '@/lib/result'
import { book } from '@/lib/store/client'
import { insertSociety, societyCount } from '@/lib/store/officers'
import { endOneTimes, issueOneTime, oneTimeOf, spendOneTime } from '@/lib/store/one-time'
import { settingsOfInstallation, today, zoneOfInstallation } from '@/lib/store/settings'
import { foundSociety, hasDemo, isBookEmpty } from './found-society'
import { parseInput } from './parse-input'
import { LINK_ENDED } from './set-first-password'

const LINK_HOURS = 48

/** What the start prints: the officer of the settings, or a link for whoever sits at the server. */
export type FirstOfficer =
  | { readonly kind: 'from-settings'; readonly name: string; readonly email: string }
  | { readonly kind: 'link'; readonly path: string; readonly hours: number }

export interface StartSettings {
  readonly empty: boolean
  readonly today: string
  readonly zone: string
  /** Where people reach the installation; undefined: at whatever address a request came to. */
  readonly origin: string | undefined
}

export function startSettings(now: Date = new Date()): StartSettings {
  const { DAYBOOK_EMPTY, DAYBOOK_ORIGIN: origin } = settingsOfInstallation()
  return { empty: DAYBOOK_EMPTY === '1', today: today(now), zone: zoneOfInstallation(), origin }
}

/** Null when the book already has a society. A start without one makes a new link and ends the last. */
export async function firstSociety(now: Date = new Date()): Promise<Result<FirstOfficer | null>> {
  if (!(await isBookEmpty())) return ok(null)
  const set = settingsOfInstallation()
  if (!set.DAYBOOK_OFFICER_PASSWORD) return ok(await firstLink(now))
  const officer = { name: set.DAYBOOK_OFFICER_NAME, email: set.DAYBOOK_OFFICER_EMAIL }
  const made = await foundSociety(
    {
      name: set.DAYBOOK_SOCIETY,
      slug: addressPart(set.DAYBOOK_SOCIETY),
      officer: { ...officer, password: set.DAYBOOK_OFFICER_PASSWORD },
    },
    now,
  )
  return made.ok ? ok({ kind: 'from-settings', ...officer }) : made
}

async function firstLink(now: Date): Promise<FirstOfficer> {
  await endOneTimes(book(), 'first-start')
  const until = new Date(now.getTime() + LINK_HOURS * 3_600_000)
  const token = await issueOneTime(book(), { purpose: 'first-start' }, until, now)
  return { kind: 'link', path: `/sign-in/first/${token}`, hours: LINK_HOURS }
}

export interface FurtherLink {
  readonly path: string
  readonly hours: number
}

/** By a command on the server only. Several may be open at once: each founds one society, for whoever it is given to. */
export async function furtherSociety(
  now: Date = new Date(),
): Promise<Result<FurtherLink, 'book-empty' | 'demonstration'>> {
  if (await isBookEmpty())
    return refused(
      'book-empty',
      'The book has no society yet: its first one is founded behind the link that the start of the server prints.',
    )
  if (await hasDemo())
    return refused(
      'demonstration',
      'The book holds the invented demonstration, whose password is printed: begin a book of your own with DAYBOOK_EMPTY=1.',
    )
  const until = new Date(now.getTime() + LINK_HOURS * 3_600_000)
  const token = await issueOneTime(book(), { purpose: 'further-society' }, until, now)
  return ok({ path: `/sign-in/first/${token}`, hours: LINK_HOURS })
}

/** What may be founded behind the link; null when it has ended. Nothing is used up by looking. */
export async function foundingLink(token: string, now: Date = new Date()): Promise<'first' | 'further' | null> {
  const purpose = (await oneTimeOf(token, now))?.purpose
  if (purpose === 'first-start') return (await isBookEmpty()) ? 'first' : null
  return purpose === 'further-society' ? 'further' : null
}

/** Founds the society of the link with its secretary, once. */
export async function foundFirstSociety(
  token: string,
  input: FirstStart,
  now: Date = new Date(),
): Promise<Result<{ readonly email: string }, 'not-understood' | 'link-ended' | 'address-taken'>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  if ((await foundingLink(token, now)) === null) return refused('link-ended', LINK_ENDED)
  const { officer, ...society } = read.value
  if (RESERVED.has(society.slug))
    return refused('address-taken', `The address part ${society.slug} is used by Daybook itself. Choose another.`)
  const made = await insertSociety({ ...society, isDemo: false }, officer, now, async (tx) => {
    const what = await oneTimeOf(token, now, tx)
    if (what?.purpose !== 'first-start' && what?.purpose !== 'further-society') return false
    if (!(await spendOneTime(tx, token, now))) return false
    return what.purpose === 'further-society' || (await societyCount(tx)) === 0
  })
  if (made === 'may-not') return refused('link-ended', LINK_ENDED)
  if (!made) return refused('address-taken', `The address part ${society.slug} is taken. Choose another.`)
  return ok({ email: officer.email })
}

/** Addresses of the installation itself: a society under one of them could not be reached. */
const RESERVED = new Set(['desk', 'card', 'member', 'sign-in', 'api', 'house-style'])

export function addressPart(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-+|-+$/g, '')
  return plain || 'society'
}
