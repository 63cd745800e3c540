// A new society with its first officer. Only the start of an installation and the demonstration call it: no actor, no address.

import { type FoundSociety, foundSociety as schema } from '@/lib/facts/commands'
import type { SocietyId, UserId } from '@/lib/facts/ids'
import { ok, type Result, refused } from '@/lib/result'
import { societyAtDesk } from '@/lib/store/desk'
import { insertSociety, societies, societyCount } from '@/lib/store/officers'
import { societyBySlug } from '@/lib/store/society-settings'
import { parseInput } from './parse-input'

export async function foundSociety(
  input: FoundSociety,
  now: Date = new Date(),
): Promise<Result<{ societyId: SocietyId; userId: UserId }, 'not-understood' | 'address-taken'>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { officer, ...society } = read.value
  const made = await insertSociety(society, officer, now)
  if (!made || made === 'may-not')
    return refused('address-taken', `The address part ${society.slug} belongs to another society. Choose another.`)
  return ok(made)
}

/** True on a book in which nobody has founded anything yet. */
export async function isBookEmpty(): Promise<boolean> {
  return (await societyCount()) === 0
}

/** The societies of this installation, for the first page. */
export async function societyList(): Promise<readonly { slug: string; name: string; isDemo: boolean }[]> {
  return societies()
}

/** Marked on the pages that belong to no society, where one of the installation is the invented one. */
export async function hasDemo(): Promise<boolean> {
  return (await societies()).some((one) => one.isDemo)
}

export async function isDemoSociety(societyId: SocietyId): Promise<boolean> {
  return (await societyAtDesk(societyId))?.isDemo ?? false
}

/** Marked on every page. */
export async function isDemo(slug: string): Promise<boolean> {
  return (await societyBySlug(slug))?.isDemo ?? false
}
