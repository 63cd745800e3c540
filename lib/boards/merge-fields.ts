// Two desks, one thing: what each of them changed of what both saw, field by field.

export interface Merged<T> {
  /** Mine, with theirs wherever I changed nothing. */
  readonly merged: T
  /** Fields that both changed, each to something else. */
  readonly collisions: readonly (keyof T & string)[]
  /** Fields that only they changed. */
  readonly taken: readonly (keyof T & string)[]
}

export function mergeFields<T extends object>(was: Readonly<Record<string, unknown>>, mine: T, theirs: T): Merged<T> {
  const merged = { ...mine }
  const collisions: (keyof T & string)[] = []
  const taken: (keyof T & string)[] = []
  for (const key of Object.keys(mine) as (keyof T & string)[]) {
    if (!(key in was) || sameValue(theirs[key], was[key]) || sameValue(theirs[key], mine[key])) continue
    if (sameValue(mine[key], was[key])) {
      merged[key] = theirs[key]
      taken.push(key)
    } else collisions.push(key)
  }
  return { merged, collisions, taken }
}

/** The same content whatever the order of its keys; what is not there is the same as nothing. */
export function sameValue(a: unknown, b: unknown): boolean {
  return canonical(a) === canonical(b)
}

function canonical(value: unknown): string {
  return JSON.stringify(value ?? null, (_, part) =>
    part && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(
          Object.entries(part)
            .filter(([, one]) => one !== undefined && one !== null)
            .sort(([a], [b]) => (a < b ? -1 : 1)),
        )
      : part,
  )
}
