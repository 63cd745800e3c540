import 'server-only'
import { cookies, headers } from 'next/headers'
import type { CookieToSet } from '@/lib/society/sign-in'

export async function keepCookies(sent: readonly CookieToSet[]): Promise<void> {
  const jar = await cookies()
  for (const { name, value, ...rest } of sent) jar.set(name, value, rest)
}

/** What was asked, with the cookies this answer sets: a page drawn after its own form has changed the session is still signed in. */
export async function askedWithNewCookies(): Promise<Headers> {
  const asked = new Headers(await headers())
  asked.set('cookie', (await cookies()).toString())
  return asked
}
