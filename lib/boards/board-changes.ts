// What is different between two boards, small enough to be sent to everybody who watches. Works on any plain JSON value;
// rows are recognised by their entrant or id, so that a row that climbs is a row that moved, not a table that changed.

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

/** Nothing (undefined) is: the same as before. */
export type Changes =
  | { readonly is: Json }
  | { readonly of: { readonly [key: string]: Changes }; readonly gone?: readonly string[] }
  | {
      /** For each place now, where it stood before; -1 for a new one. Left out when nothing moved. */
      readonly from?: readonly number[]
      /** Changes by the place now. */
      readonly at: { readonly [place: number]: Changes }
    }

const NAMES = ['entrant', 'id', 'entryId', 'cardId', 'number', 'hole'] as const

type Fields = { readonly [key: string]: Json }
const isFields = (value: Json): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value)
const isList = (value: Json): value is readonly Json[] => Array.isArray(value)

export function changesBetweenBoards(before: Json, after: Json): Changes | undefined {
  if (before === after) return undefined
  if (isList(before) && isList(after)) return listChanges(before, after)
  if (isFields(before) && isFields(after)) return fieldChanges(before, after)
  return { is: after }
}

function fieldChanges(before: Fields, after: Fields): Changes | undefined {
  const changed: [string, Changes][] = []
  for (const [key, value] of Object.entries(after)) {
    const change = Object.hasOwn(before, key) ? changesBetweenBoards(before[key] as Json, value) : { is: value }
    if (change) changed.push([key, change])
  }
  const of = Object.fromEntries(changed)
  const gone = Object.keys(before).filter((key) => !Object.hasOwn(after, key))
  if (gone.length) return { of, gone }
  return changed.length ? { of } : undefined
}

function listChanges(before: readonly Json[], after: readonly Json[]): Changes | undefined {
  const places = placesBefore(before, after)
  const at: { [place: number]: Changes } = {}
  for (const [place, value] of after.entries()) {
    const was = before[places[place] ?? -1]
    const change = was === undefined ? { is: value } : changesBetweenBoards(was, value)
    if (change) at[place] = change
  }
  const stayed = before.length === after.length && places.every((from, place) => from === place)
  if (!stayed) return { from: places, at }
  return Object.keys(at).length ? { at } : undefined
}

/** Where each value of `after` stood in `before`: by its name where all have one, else by its place. */
function placesBefore(before: readonly Json[], after: readonly Json[]): readonly number[] {
  for (const name of NAMES) {
    const was = named(before, name)
    const is = named(after, name)
    if (!was || !is) continue
    const place = new Map(was.map((each, at) => [each, at]))
    return is.map((each) => place.get(each) ?? -1)
  }
  return after.map((_, place) => (place < before.length ? place : -1))
}

function named(list: readonly Json[], name: string): readonly Json[] | null {
  const names = list.map((value) => (isFields(value) ? (value[name] ?? null) : null))
  const good = names.every((each) => typeof each === 'string' || typeof each === 'number')
  return good && new Set(names).size === names.length ? names : null
}

/** The board after the changes. Parts that stayed are the very same values. */
export function withChanges(before: Json, changes: Changes | undefined): Json {
  if (!changes) return before
  if ('is' in changes) return changes.is
  if ('of' in changes) {
    if (!isFields(before)) throw new Error('These changes are not of this board: fields expected.')
    const stayed = Object.entries(before).filter(([key]) => !changes.gone?.includes(key))
    const changed = Object.entries(changes.of).map(
      ([key, change]) => [key, withChanges(Object.hasOwn(before, key) ? (before[key] as Json) : null, change)] as const,
    )
    return Object.fromEntries([...stayed, ...changed])
  }
  if (!isList(before)) throw new Error('These changes are not of this board: a list expected.')
  const places = changes.from ?? before.map((_, place) => place)
  return places.map((from, place) => withChanges(before[from] ?? null, changes.at[place]))
}
