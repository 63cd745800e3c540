// Prizes that nobody can win by the form of play, said while they are written down: a match gives no places, and a game inside
// each group gives none for the whole field.

import type { Format } from '@/lib/rules/formats/format'

interface Terms {
  readonly format: Pick<Format, 'isMatch' | 'value'> | null
  /** Skins and split sixes: places inside each group, unless the terms rank everybody. */
  readonly ranking: string | undefined
  readonly prizes: readonly { readonly division?: string | undefined }[]
}

/** One sentence; null where every prize can fall to somebody. */
export function prizesNobodyWins({ format, ranking, prizes }: Terms): string | null {
  if (prizes.length === 0 || format === null) return null
  const [these, them] = prizes.length === 1 ? ['this prize', 'it'] : ['these prizes', 'them']
  if (format.isMatch)
    return `Nobody can win ${these}: the matches decide, and there is no table with places. Leave ${them} out, or put ${them} under a competition with places.`
  const ofField = prizes.filter((prize) => !prize.division).length
  if (format.value.kind === 'shared' && ranking !== 'everybody' && ofField > 0)
    return `With more than one group nobody can win a prize of the whole field: each group is a game of its own. Choose places over everybody under More terms, or leave ${them} out.`
  return null
}
