// What the schema found wrong, as places and sentences: `players[3].handicapIndex: Write a handicap index as 18.4 …`.

import type { z } from 'zod'
import type { Fault } from '@/lib/result'

type Issue = z.core.$ZodIssue

export class Faults {
  readonly list: Fault[] = []

  at(place: string, sentence: string): void {
    this.list.push({ place, sentence })
  }

  /** Complains about every id that was there before. */
  unique(ids: readonly string[], placeOf: (i: number) => string, what: string): void {
    const seen = new Set<string>()
    ids.forEach((id, i) => {
      if (seen.has(id)) this.at(placeOf(i), `There is already ${what} ${quoted(id)}.`)
      seen.add(id)
    })
  }
}

export function quoted(text: string): string {
  return `“${text}”`
}

/** `players[3].handicapIndex`; "day file" for the document itself. */
export function placeOf(path: readonly PropertyKey[]): string {
  let place = ''
  for (const step of path) {
    if (typeof step === 'number') place += `[${step}]`
    else place += place === '' ? String(step) : `.${String(step)}`
  }
  return place === '' ? 'day file' : place
}

function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  let value = document
  for (const step of path) {
    if (typeof value !== 'object' || value === null) return undefined
    value = Reflect.get(value, step)
  }
  return value
}

export function faultsOf(issues: readonly Issue[], document: unknown): Fault[] {
  return issues.flatMap((issue) => {
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        place: placeOf([...issue.path, key]),
        sentence: 'This key is not known here; check its spelling or leave it out.',
      }))
    }
    if (issue.code === 'invalid_union') {
      const closest = closestBranch(issue.errors)
      if (closest !== null)
        return faultsOf(
          closest.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })),
          document,
        )
    }
    if (issue.code === 'invalid_key') {
      return issue.issues.map((inner) => ({ place: placeOf(issue.path), sentence: inner.message }))
    }
    return [{ place: placeOf(issue.path), sentence: sentenceOf(issue, document) }]
  })
}

/** Of several ways to write a value the one that was meant: whose complaints lie inside the value, not with all of it. */
function closestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | null {
  const inside = branches.filter((issues) => {
    return issues.every((issue) => issue.path.length > 0 || issue.code === 'unrecognized_keys')
  })
  return inside.length === 1 ? inside[0]! : null
}

function sentenceOf(issue: Issue, document: unknown): string {
  const missing = issue.path.length > 0 && valueAt(document, issue.path) === undefined
  if (missing) return issue.message.startsWith('Invalid') ? 'This is missing.' : `This is missing. ${issue.message}`
  if (!issue.message.startsWith('Invalid') && !issue.message.startsWith('Too')) return issue.message
  switch (issue.code) {
    case 'invalid_type':
      return `Expected ${KINDS[issue.expected] ?? issue.expected} here.`
    case 'too_small':
      return `At least ${issue.minimum} here.`
    case 'too_big':
      return `At most ${issue.maximum} here.`
    case 'invalid_value':
      return `Write one of: ${issue.values.map(String).join(', ')}.`
    default:
      return 'This cannot be read: see the description of the day file.'
  }
}

const KINDS: Readonly<Record<string, string>> = {
  object: 'a group of keys in braces',
  record: 'a group of keys in braces',
  array: 'a list in square brackets',
  string: 'a text in quotation marks',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
}
