// Reads what a form or a request sent with the act's schema; what does not fit comes back as one refusal with its places.

import type { z } from 'zod'
import { type Fault, ok, type Refused, type Result, refused } from '@/lib/result'

export function parseInput<S extends z.ZodType>(schema: S, input: unknown): Result<z.output<S>, 'not-understood'> {
  const read = schema.safeParse(input, { error: inOurWords })
  if (read.success) return ok(read.data)
  return notUnderstood(
    read.error.issues.map((issue) => ({
      place: placeOf(issue.path),
      sentence: sentenceOf(issue),
      ...(inOurWords(issue) === issue.message ? { isBare: true as const } : {}),
    })),
  )
}

/** The same refusal for what no schema can see, such as a stroke index that is there twice. */
export function notUnderstood(faults: readonly Fault[]): Refused<'not-understood'> {
  const first = faults[0]?.sentence ?? 'Something is missing.'
  return refused(
    'not-understood',
    faults.length > 1 ? `${first} And ${faults.length - 1} more to put right.` : first,
    faults,
  )
}

/** Where the schema has no sentence of its own: the library's would name types and signs that no golfer knows. */
function inOurWords(issue: z.core.$ZodRawIssue | z.core.$ZodIssue): string | undefined {
  switch (issue.code) {
    case 'too_small':
      if (issue.origin !== 'string') return `It must be at least ${issue.minimum}.`
      return Number(issue.minimum) <= 1 ? 'Something is to be written here.' : `Write at least ${issue.minimum} signs.`
    case 'too_big':
      return issue.origin === 'string' ? `Write at most ${issue.maximum} signs.` : `It may be at most ${issue.maximum}.`
    case 'invalid_type':
      if (issue.expected === 'number' || issue.expected === 'int') return 'A whole number is needed here.'
      return 'Something is missing here.'
    case 'invalid_value':
      return 'Choose one of what is offered here.'
    case 'invalid_format':
      return issue.format === 'email' ? 'That is no e-mail address.' : 'That cannot be read as it is written.'
    default:
      return undefined
  }
}

function sentenceOf(issue: { code: string; message: string; path: readonly PropertyKey[] }): string {
  if (issue.code === 'unrecognized_keys') return `${issue.message}.`
  return issue.message.endsWith('.') ? issue.message : `${issue.message}.`
}

function placeOf(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (place, part) =>
      typeof part === 'number' ? `${place}[${part}]` : place ? `${place}.${String(part)}` : String(part),
    '',
  )
}
