// What a form of ours looks like on the wire. Anything else sent to a page is refused at the door: it can only come from
// somebody who builds requests by hand, and must not reach code that takes a form for granted.

import { z } from 'zod'

const ACTION = /^[0-9a-f]{40,44}$/

const word = z.union([z.string().max(500), z.number(), z.boolean(), z.null()])
const bound = z.union([word, z.record(z.string(), word)])
// What a form remembers between two tries; a form without script begins with what the page was made with.
const remembered = z.looseObject({})
const reference = z.string().regex(/^\$K[0-9a-f]{1,4}$/)

/** The arguments of an act: what is bound to the form, what it remembers, the form itself; or nothing at all. */
const withScript = z
  .array(z.unknown())
  .max(6)
  .refine((all) => all.length === 0 || sound(all), 'ends with what the form remembers and the form')

function sound(all: readonly unknown[]): boolean {
  return (
    reference.safeParse(all.at(-1)).success &&
    remembered.safeParse(all.at(-2)).success &&
    all.slice(0, -2).every((one) => bound.safeParse(one).success)
  )
}

function read(text: unknown): unknown {
  if (typeof text !== 'string') return undefined
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Sent by the page's own script: an act named in the header, its arguments in part 0. */
export function isScriptedForm(action: string, parts: FormData): boolean {
  return ACTION.test(action) && withScript.safeParse(read(parts.get('0'))).success
}

/** Arguments without a form travel as text. */
export function isScriptedText(action: string, text: string): boolean {
  const all = z.array(bound).max(6).safeParse(read(text))
  return ACTION.test(action) && all.success
}

const plainReference = z.strictObject({ id: z.string().regex(ACTION), bound: z.union([z.null(), z.string()]) })

/** Sent by the browser without script: the act and what is bound to it stand in hidden fields. */
export function isPlainForm(parts: FormData): boolean {
  const names = [...parts.keys()].filter((name) => name.startsWith('$ACTION_'))
  if (names.length === 0) return false
  return names.every((name) => {
    if (name === '$ACTION_KEY') return true
    const id = /^\$ACTION_ID_(.+)$/.exec(name)?.[1]
    if (id !== undefined) return ACTION.test(id)
    if (/^\$ACTION_REF_\d{1,3}$/.test(name)) return parts.has(`$ACTION_${name.slice('$ACTION_REF_'.length)}:0`)
    const part = /^\$ACTION_\d{1,3}:(\d{1,2})$/.exec(name)?.[1]
    if (part === undefined) return false
    const value = read(parts.get(name))
    if (part === '0') return plainReference.safeParse(value).success
    return z
      .array(z.union([bound, remembered]))
      .max(6)
      .safeParse(value).success
  })
}
