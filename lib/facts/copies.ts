// Copies of the book: what stands beside each, and which of them are kept.

import { z } from 'zod'

export const COPY_KINDS = ['asked', 'scheduled', 'before-migration'] as const
export type CopyKind = (typeof COPY_KINDS)[number]

/** Written beside every copy when it is complete and checked: a copy without it is not one. */
export const copyManifest = z.strictObject({
  daybookCopy: z.literal(1),
  kind: z.enum(COPY_KINDS),
  madeAt: z.iso.datetime(),
  /** Names of the migrations the copy has been through, in order. */
  migrations: z.array(z.string()),
  /** Rows of every table. */
  rows: z.record(z.string(), z.number().int().min(0)),
  bytes: z.number().int().min(0),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
})
export type CopyManifest = z.infer<typeof copyManifest>

export interface Copy extends Pick<CopyManifest, 'kind' | 'madeAt' | 'bytes' | 'sha256'> {
  readonly fileName: string
}

export interface Rotation {
  readonly daily: number
  readonly weekly: number
  readonly monthly: number
}

const DAY = 86_400_000

/** Anything younger than this stays, whatever the rotation says: what was just made is what is wanted back. */
export const YOUNG = 2 * DAY

/**
 * The newest copy of each of the last days, weeks and months that have one; everything younger than two days; and the
 * last copy before a migration, because it is the only way back to the version before.
 */
export function copiesToDrop(copies: readonly Copy[], rotation: Rotation, now: Date): readonly Copy[] {
  const newestFirst = [...copies].sort((a, b) => b.madeAt.localeCompare(a.madeAt))
  const keep = new Set(newestFirst.filter((copy) => now.getTime() - Date.parse(copy.madeAt) < YOUNG))
  const spans = [
    [rotation.daily, (at: Date) => at.toISOString().slice(0, 10)],
    [rotation.weekly, (at: Date) => String(Math.floor((at.getTime() / DAY + 3) / 7))],
    [rotation.monthly, (at: Date) => at.toISOString().slice(0, 7)],
  ] as const
  for (const [many, spanOf] of spans) {
    const seen = new Set<string>()
    for (const copy of newestFirst) {
      const span = spanOf(new Date(copy.madeAt))
      if (seen.has(span)) continue
      if (seen.size >= many) break
      seen.add(span)
      keep.add(copy)
    }
  }
  const wayBack = newestFirst.find((copy) => copy.kind === 'before-migration')
  if (wayBack) keep.add(wayBack)
  return newestFirst.filter((copy) => !keep.has(copy))
}

/** Clocks of machines differ by minutes; a copy dated further ahead was made while the clock was wrong. */
const AHEAD = 10 * 60_000

/** The newest copy that was not made by a wrong clock: one dated next year says nothing of today. */
export const newestCopy = (copies: readonly Copy[], now: Date): Copy | undefined =>
  [...copies]
    .filter((copy) => Date.parse(copy.madeAt) <= now.getTime() + AHEAD)
    .sort((a, b) => b.madeAt.localeCompare(a.madeAt))[0]

/** When the desk begins to say that the last copy is old. */
export const OLD_COPY = 2 * DAY

export function isCopyOld(newest: Copy | undefined, bookSince: Date, now: Date): boolean {
  const since = newest ? Date.parse(newest.madeAt) : bookSince.getTime()
  return now.getTime() - since > OLD_COPY
}
