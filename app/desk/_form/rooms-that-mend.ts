// A refusal that names what must be done first leads to the room where it is done.

/** Rooms of a day, and lists of the society, by the code of the refusal. */
const ROOMS: Readonly<
  Record<string, { readonly room: string; readonly words: string; readonly of: 'day' | 'society' }>
> = {
  'not-frozen': { room: 'handicaps', words: 'Go to the handicaps', of: 'day' },
  'no-groups': { room: 'draw', words: 'Go to the draw', of: 'day' },
  'without-group': { room: 'draw', words: 'Go to the draw', of: 'day' },
  'alone-in-group': { room: 'draw', words: 'Go to the draw', of: 'day' },
  'too-few': { room: 'entries', words: 'Go to the entries', of: 'day' },
  'no-entries': { room: 'entries', words: 'Go to the entries', of: 'day' },
  'no-host': { room: 'entries', words: 'Go to the entries', of: 'day' },
  'no-figure': { room: 'handicaps', words: 'Go to the handicaps, where they are named', of: 'day' },
  'no-opponents': { room: 'draw', words: 'Go to the draw', of: 'day' },
  'no-tee': { room: 'change', words: 'Change the day', of: 'day' },
  'without-tee': { room: 'change', words: 'Change the day, and choose their tees', of: 'day' },
  'field-size': { room: 'change', words: 'Change the allowance', of: 'day' },
  'no-cards': { room: 'draw', words: 'Go to the draw', of: 'day' },
  'day-closed': { room: 'result', words: 'Go to the result, where a day is opened again', of: 'day' },
  'day-not-closed': { room: 'result', words: 'Go to the result', of: 'day' },
  'cards-still-out': { room: 'returns', words: 'Go to the cards', of: 'day' },
  'no-course': { room: 'courses/new', words: 'Add a course', of: 'society' },
}

export const CODES_WITH_A_ROOM = Object.keys(ROOMS)

/** From the address the officer is at; null when there is no such room, or the officer stands in it. */
export function roomThatMends(code: string, at: string): { readonly href: string; readonly words: string } | null {
  const found = ROOMS[code]
  if (!found) return null
  const day = /^\/desk\/[^/]+\/days\/[^/]+/.exec(at)?.[0]
  const society = /^\/desk\/[^/]+/.exec(at)?.[0]
  const base = found.of === 'day' ? day : society
  if (base === undefined) return null
  const href = `${base}/${found.room}`
  return href === at ? null : { href, words: found.words }
}
