// Rules of Golf 2023, 3.3b(1): a marker certifies the card, and nobody marks their own. In a group everybody is
// marked by the next, and the last by the first.

/** Who marks whose card: marker by player. Nobody for a player alone. */
export function markersOf(group: readonly string[]): ReadonlyMap<string, string | null> {
  return new Map(group.map((player, at) => [player, group.length < 2 ? null : group[(at + 1) % group.length]!]))
}
