// The record of acts: who did what, when, from where, and what it was before and after. In words, so that it reads the
// same in ten years; without contact details, keys or passwords, whoever writes it.

import type { Actor } from './actor'

export const ACT_AREAS = ['handicaps', 'money', 'results', 'entries', 'access', 'day', 'book'] as const
export type ActArea = (typeof ACT_AREAS)[number]

/** What stood there: the words a reader knows the thing by, and its value. `{ 'First tee': '10:00' }` */
export type InWords = Readonly<Record<string, string | number | boolean | null | readonly (string | number)[]>>

export interface ActToRecord {
  /** A row of the act table. */
  readonly act: string
  readonly area: ActArea
  /** What it was done to: a day's name, a player's name, a course. */
  readonly subject: string
  /** The id of what it was done to; the day's id for everything that steps the day's version. */
  readonly subjectId?: string | null | undefined
  readonly before?: InWords | null | undefined
  readonly after?: InWords | null | undefined
  /** The version the subject has from now on: what a second desk is told by. */
  readonly version?: number | undefined
}

/** Whoever acts; the server itself when it carries out what the settings say. */
export type Doer = Actor | { readonly kind: 'server' }

const EMAIL = /[^\s@"',;:<>()]+@[^\s@"',;:<>()]+\.[^\s@"',;:<>()]+/g
// A long run of letters and figures with no word in it is a key or a hash; ids carry hyphens and are shorter in each part.
const KEY = /\b(?=[A-Za-z0-9_]*\d)(?=[A-Za-z0-9_]*[A-Za-z])[A-Za-z0-9_-]{24,}\b/g
const ID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/
const PHONE = /(?:\+|\b0)\d[\d ()-]{7,}\d\b/g

/** A last guard behind every writer of a record: whatever looks like a contact detail or a key does not get in. */
export function withoutSecrets(text: string): string {
  return text
    .replace(EMAIL, '(e-mail address)')
    .replace(KEY, (found) => (ID.test(found) ? found : '(key)'))
    .replace(PHONE, '(telephone number)')
}

/** Only what differs, on both sides: a record says what changed and not everything that stayed. */
export function changedInWords(before: InWords, after: InWords): { before: InWords; after: InWords } {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])].filter(
    (key) => JSON.stringify(before[key] ?? null) !== JSON.stringify(after[key] ?? null),
  )
  const only = (words: InWords): InWords =>
    Object.fromEntries(keys.flatMap((key) => (words[key] === undefined ? [] : [[key, words[key]]])))
  return { before: only(before), after: only(after) }
}

/**
 * The network an address belongs to: enough to see that it was another place, too little to find a person by. The last
 * octet of a short address and the last 80 bits of a long one are dropped.
 */
export function shortened(address: string | null | undefined): string | null {
  const plain = address
    ?.trim()
    .replace(/^::ffff:(?=\d+\.)/i, '')
    .replace(/%.*$/, '')
  if (!plain) return null
  const short = /^(\d{1,3})\.(\d{1,3})\.(\d{1,3})\.\d{1,3}$/.exec(plain)
  if (short) return `${short[1]}.${short[2]}.${short[3]}.0/24`
  if (!/^[0-9a-f:]+$/i.test(plain) || !plain.includes(':')) return null
  const [head = '', tail] = plain.toLowerCase().split('::')
  const front = head === '' ? [] : head.split(':')
  const back = tail === undefined || tail === '' ? [] : tail.split(':')
  const zeros = tail === undefined ? 0 : 8 - front.length - back.length
  const parts = [...front, ...Array<string>(Math.max(0, zeros)).fill('0'), ...back]
  if (parts.length !== 8) return null
  return `${parts
    .slice(0, 3)
    .map((part) => part.replace(/^0+(?=.)/, ''))
    .join(':')}::/48`
}
