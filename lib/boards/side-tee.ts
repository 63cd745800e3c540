// The tees whose card a side of one ball plays to, where the terms name them: by name and gender, because a day has its own
// copy of its tees.

import type { DayRecord } from '@/lib/facts/day-record'
import type { RoundTeeId } from '@/lib/facts/ids'

interface TeeNamed {
  readonly name: string
  readonly gender: 'men' | 'women'
}

/** "Red, women": as the terms name it. */
export const teeTerm = ({ name, gender }: TeeNamed): string => `${name}, ${gender}`

/** "the red tees for women" */
export function teeTermInWords(term: string): string {
  const [, name, gender] = /^(.*), (men|women)$/.exec(term) ?? []
  return name === undefined ? `the tees ${term}` : `the ${name.toLowerCase()} tees for ${gender}`
}

/** Their copy on this day; null where the day has none, or nobody plays from them. */
export function sideTeeOf(
  { tees, entries }: Pick<DayRecord, 'tees' | 'entries'>,
  term: string | undefined,
): RoundTeeId | null {
  const tee = term === undefined ? undefined : tees.find((one) => teeTerm(one) === term)
  const isPlayed = entries.some(({ roundTeeId, status }) => status === 'entered' && roundTeeId === tee?.id)
  return tee && isPlayed ? tee.id : null
}
