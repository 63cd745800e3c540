// What a form of ours looks like on the wire. Anything else sent to a page is refused at the door: it can only come from
// somebody who builds requests by hand, and must not reach code that takes a form for granted.

import { z } from 'zod'

const ACTION = /^[0-9a-f]{40,44}$/

const word = z.string().max(500)
const bound = z.union([word, z.record(z.string(), word)])
// What a form remembers between two tries; a form without script begins with what the page was made with.
const remembered = z.looseObject({})
const reference = z.string().regex(/^\$K[0-9a-f]{1,4}$/)

/**
 * How many arguments an act takes, the form being the last: its name begins with a byte that says which of the first six it
 * uses, from the left, and whether there are more. Null where that is not said.
 */
function takes(action: string): number | null {
  const byte = Number.parseInt(action.slice(0, 2), 16)
  if ((byte & 1) === 1) return null
  const used = (byte >> 1) & 0b111111
  return [1, 2, 3, 4, 5, 6].findLast((place) => (used >> (6 - place)) & 1) ?? null
}

/** The arguments of an act: what is bound to the form, what it remembers, and the form itself; or the form alone. */
function sound(all: readonly unknown[]): boolean {
  return (
    reference.safeParse(all.at(-1)).success &&
    (all.length === 1 || remembered.safeParse(all.at(-2)).success) &&
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
  const all = read(parts.get('0'))
  return ACTION.test(action) && Array.isArray(all) && all.length === takes(action) && sound(all)
}

const plainReference = z.strictObject({ id: z.string().regex(ACTION), bound: z.union([z.null(), z.literal('$@1')]) })

/** Sent by the browser without script: the act and what is bound to it stand in hidden fields. */
export function isPlainForm(parts: FormData): boolean {
  const names = [...parts.keys()].filter((name) => name.startsWith('$ACTION_') && name !== '$ACTION_KEY')
  const acts = names.filter((name) => /^\$ACTION_(?:ID_.+|REF_\d{1,3})$/.test(name))
  if (acts.length === 0) return false
  const known = new Set(acts)
  for (const name of acts) {
    const id = /^\$ACTION_ID_(.+)$/.exec(name)?.[1]
    if (id !== undefined) {
      if (!ACTION.test(id) || takes(id) !== 1) return false
      continue
    }
    const part = `$ACTION_${name.slice('$ACTION_REF_'.length)}`
    const act = plainReference.safeParse(read(parts.get(`${part}:0`)))
    if (!act.success) return false
    const before = act.data.bound === null ? [] : read(parts.get(`${part}:1`))
    if (!Array.isArray(before) || before.length + 1 !== takes(act.data.id)) return false
    // The form itself comes last, and the framework adds it.
    if (!sound([...before, '$K1'])) return false
    known.add(`${part}:0`).add(`${part}:1`)
  }
  return names.every((name) => known.has(name))
}
