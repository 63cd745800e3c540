// What a page's script says it shows already, in a header, when it asks for the next page. A header that says nothing of the
// kind is left out before the framework sees it: it would fail on it, where a page asked for as a whole does as well.

import { z } from 'zod'

const MOST = 40_000
const DEEPEST = 30

const KINDS = [
  'c',
  'ci(..)(..)',
  'ci(.)',
  'ci(..)',
  'ci(...)',
  'oc',
  'd',
  'di(..)(..)',
  'di(.)',
  'di(..)',
  'di(...)',
] as const
const segment = z.union([z.string(), z.tuple([z.string(), z.string(), z.enum(KINDS), z.array(z.string()).nullable()])])
const rest = [
  z.tuple([z.string(), z.string()]).nullish(),
  z.enum(['refetch', 'inside-shared-layout', 'metadata-only']).nullish(),
  z.number().nullish(),
  z.string().optional(),
] as const

export function isRouterState(header: string): boolean {
  if (header.length > MOST) return false
  try {
    return isState(JSON.parse(decodeURIComponent(header)), DEEPEST)
  } catch {
    // Neither encoded text nor JSON.
    return false
  }
}

function isState(state: unknown, deep: number): boolean {
  if (!Array.isArray(state) || state.length < 2 || state.length > 2 + rest.length || deep === 0) return false
  const [name, below, ...more] = state as unknown[]
  if (!segment.safeParse(name).success || typeof below !== 'object' || below === null || Array.isArray(below))
    return false
  return (
    more.every((one, at) => rest[at]?.safeParse(one).success) &&
    Object.values(below).every((one) => isState(one, deep - 1))
  )
}
