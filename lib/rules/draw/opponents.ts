// House practice: who plays whom inside a group. First against second and third against fourth; in a match between teams
// the first of one team against the first of the other. Whoever is left over has no opponent until the desk finds one.

export interface Drawn {
  /** A player, or a side. */
  readonly id: string
  /** The team it plays for; null without teams. */
  readonly team: string | null
}

export function opponentsOf(group: readonly Drawn[]): readonly (readonly [string, string])[] {
  const waiting = [...group]
  const pairs: [string, string][] = []
  while (waiting.length > 1) {
    const first = waiting.shift()!
    const at = waiting.findIndex((one) => first.team === null || one.team !== first.team)
    if (at < 0) continue
    pairs.push([first.id, waiting.splice(at, 1)[0]!.id])
  }
  return pairs
}
