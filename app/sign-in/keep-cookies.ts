import 'server-only'
import { cookies } from 'next/headers'
import type { CookieToSet } from '@/lib/society/sign-in'

export async function keepCookies(sent: readonly CookieToSet[]): Promise<void> {
  const jar = await cookies()
  for (const { name, value, ...rest } of sent) jar.set(name, value, rest)
}
