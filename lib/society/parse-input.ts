// Reads what a form or a request sent with the act's schema; what does not fit comes back as one refusal with its places.

import type { z } from 'zod'
import { type Fault, ok, type Refused, type Result, refused } from '@/lib/result'

export function parseInput<S extends z.ZodType>(schema: S, input: unknown): Result<z.output<S>, 'not-understood'> {
  const read = schema.safeParse(input)
  if (read.success) return ok(read.data)
  return notUnderstood(read.error.issues.map((issue) => ({ place: placeOf(issue.path), sentence: sentenceOf(issue) })))
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
