// House practice: sides inside a group. A guest with the host, then first with second and third with fourth; a side
// that stands is left alone as long as its players are still in one group.

export interface InGroup {
  readonly id: string
  readonly hostId: string | null
}

/** Sides of one group in order. Whoever is left over without a partner is in none. */
export function pairsOf(
  group: readonly InGroup[],
  size: number,
  standing: readonly (readonly string[])[] = [],
): readonly (readonly string[])[] {
  if (size < 2) return []
  const here = new Set(group.map((player) => player.id))
  const kept = standing.filter((side) => side.length > 0 && side.every((id) => here.has(id)))
  const taken = new Set(kept.flat())
  const free = group.filter((player) => !taken.has(player.id))
  // The whole group is one team when sides are larger than pairs, a short one too.
  if (size > 2) return free.length > 0 && kept.length === 0 ? [free.slice(0, size).map((player) => player.id)] : kept
  const made: string[][] = []
  for (const guest of free) {
    const host = free.find((player) => player.id === guest.hostId)
    if (!host || taken.has(guest.id) || taken.has(host.id)) continue
    made.push([host.id, guest.id])
    taken.add(guest.id).add(host.id)
  }
  const others = free.filter((player) => !taken.has(player.id)).map((player) => player.id)
  for (let at = 0; at + 1 < others.length; at += 2) made.push([others[at]!, others[at + 1]!])
  const place = (side: readonly string[]) => group.findIndex((player) => side.includes(player.id))
  return [...kept, ...made].sort((a, b) => place(a) - place(b))
}
