// Rulings of the committee on a day as a whole, given after the terms are frozen: a play-off that was played, a round that
// was abandoned. Added in order with reason and name; one that is taken back stays in the list.

import { z } from 'zod'

/** What a round that could not be finished comes to. */
export const ABANDONED_COUNTS = ['nothing', 'first-holes', 'level', 'no-score'] as const
export type AbandonedCounts = (typeof ABANDONED_COUNTS)[number]

const given = {
  number: z.int().min(1),
  reason: z.string(),
  byUserId: z.string(),
  byName: z.string(),
  ruledAt: z.iso.datetime(),
}

export const dayRuling = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('play-off'),
    ...given,
    competitionId: z.string(),
    /** Entrants, best first. */
    order: z.array(z.string()).min(2),
  }),
  z.strictObject({
    kind: z.literal('abandoned'),
    ...given,
    afterHole: z.int().min(0).max(18),
    counts: z.enum(ABANDONED_COUNTS),
  }),
  z.strictObject({ kind: z.literal('taken-back'), ...given, replaces: z.int().min(1) }),
])
export type DayRuling = z.infer<typeof dayRuling>

type InForce = Exclude<DayRuling, { kind: 'taken-back' }>

/** In their order; a later play-off of a competition and a later word on the round take the place of the earlier ones. */
export function dayRulingsInForce(rulings: readonly DayRuling[]): readonly InForce[] {
  const back = new Set(rulings.flatMap((one) => (one.kind === 'taken-back' ? [one.replaces] : [])))
  const standing = rulings.filter((one): one is InForce => one.kind !== 'taken-back' && !back.has(one.number))
  const about = (one: InForce) => (one.kind === 'play-off' ? one.competitionId : one.kind)
  return standing.filter((one, at) => !standing.slice(at + 1).some((later) => about(later) === about(one)))
}

export function abandonedIn(rulings: readonly DayRuling[] = []): Extract<DayRuling, { kind: 'abandoned' }> | null {
  return dayRulingsInForce(rulings).find((one) => one.kind === 'abandoned') ?? null
}

/** Of the cards of a day whose round was abandoned: does anything on them count? */
export function stoppedBy(rulings: readonly DayRuling[] | undefined): 'nothing' | 'counts' | undefined {
  const abandoned = abandonedIn(rulings)
  if (abandoned === null) return undefined
  return abandoned.counts === 'nothing' ? 'nothing' : 'counts'
}
