// A refusal on a public page is either "there is no such page" or a sentence to show; this parts the two.

import { notFound } from 'next/navigation'
import type { Refused, Result } from '@/lib/result'

/** Codes that mean the address leads nowhere. */
const NOWHERE = new Set([
  'no-such-society',
  'no-such-day',
  'no-such-card',
  'no-such-sheet',
  'no-such-player',
  'not-found',
])

/** The value, the 404 page, or the refusal for the screen to say. */
export function found<T>(answer: Result<T>): { value: T; refusal: null } | { value: null; refusal: Refused } {
  if (answer.ok) return { value: answer.value, refusal: null }
  if (NOWHERE.has(answer.code)) notFound()
  return { value: null, refusal: answer }
}

export type Asked = Promise<Record<string, string | string[] | undefined>>

/** One value of a query; the first when somebody wrote it twice. */
export function one(value: string | string[] | undefined): string | undefined {
  return Array.isArray(value) ? value[0] : value
}

/** A whole number from 1 up, or nothing. */
export function counting(value: string | string[] | undefined): number | undefined {
  const text = one(value)
  return text && /^[1-9]\d{0,3}$/.test(text) ? Number(text) : undefined
}
