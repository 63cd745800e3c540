// The start of an installation: what its settings say about the first society, and its calendar.

import { randomBytes } from 'node:crypto'
import { ok, type Result } from '@/lib/result'
import { settingsOfInstallation, today, zoneOfInstallation } from '@/lib/store/settings'
import { foundSociety, isBookEmpty } from './found-society'

export interface FirstOfficer {
  readonly name: string
  readonly email: string
  /** Only when it was made here: to be printed once and changed after the first sign-in. */
  readonly oneTimePassword: string | null
}

export function startSettings(now: Date = new Date()): { empty: boolean; today: string; zone: string } {
  return { empty: settingsOfInstallation().DAYBOOK_EMPTY === '1', today: today(now), zone: zoneOfInstallation() }
}

/** An empty society with one officer; null when the book already has a society. */
export async function firstSociety(now: Date = new Date()): Promise<Result<FirstOfficer | null>> {
  if (!(await isBookEmpty())) return ok(null)
  const set = settingsOfInstallation()
  const oneTimePassword = set.DAYBOOK_OFFICER_PASSWORD ? null : randomBytes(12).toString('base64url')
  const officer = { name: set.DAYBOOK_OFFICER_NAME, email: set.DAYBOOK_OFFICER_EMAIL }
  const made = await foundSociety(
    {
      name: set.DAYBOOK_SOCIETY,
      slug: addressPart(set.DAYBOOK_SOCIETY),
      officer: { ...officer, password: set.DAYBOOK_OFFICER_PASSWORD ?? oneTimePassword! },
    },
    now,
  )
  return made.ok ? ok({ ...officer, oneTimePassword }) : made
}

function addressPart(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-+|-+$/g, '')
  return plain || 'society'
}
