import 'server-only'
import { headers } from 'next/headers'
import { notFound, redirect } from 'next/navigation'
import type { Actor } from '@/lib/facts/actor'
import type { Result } from '@/lib/result'
import { officerAt } from '@/lib/society/who-is-asking'

export async function officerOr(slug: string, here: string): Promise<Actor> {
  const actor = await officerAt(await headers(), slug)
  if (!actor) redirect(`/sign-in?next=${encodeURIComponent(here)}`)
  return actor
}

/** For pages: what is not there, or not for this officer, has no address. */
export function shown<T>(answer: Result<T>): T {
  if (answer.ok) return answer.value
  notFound()
}
