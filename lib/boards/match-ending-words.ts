// How a match ended other than on the course, in words: "Verrow conceded; hole 4 to Ashgill".

import type { MatchEnding } from '@/lib/facts/match-ending'
import { counted, listed } from './in-words'

const HOW: Readonly<Record<string, string>> = {
  conceded: 'by concession',
  walkover: 'by walkover',
  disqualified: 'by disqualification',
}

/** To stand after the winner's name: "3&2", "2 up", "by concession". */
export const wonHow = (result: string): string => HOW[result] ?? result

/** "3&2" as it is said: "3 and 2". */
export const resultSaid = (result: string): string => wonHow(result).replace(/^(\d+)&(\d+)/, '$1 and $2')

function givenInWords(
  { winner, up, left }: NonNullable<MatchEnding['result']>,
  nameOf: (end: 'a' | 'b') => string,
): string {
  if (winner === null) return 'halved'
  return `${nameOf(winner)} won ${left === 0 ? `${up} up` : `${up} and ${left}`}`
}

export function endingInWords(ending: MatchEnding, a: string, b: string): string {
  const nameOf = (end: 'a' | 'b') => (end === 'a' ? a : b)
  const given = ending.concededHoles ?? []
  const said = [
    ...(ending.walkover ? [`walkover for ${nameOf(ending.walkover)}`] : []),
    ...(ending.concededBy ? [`${nameOf(ending.concededBy)} conceded`] : []),
    ...(ending.result ? [givenInWords(ending.result, nameOf)] : []),
    ...(ending.abandoned ? ['abandoned, it stands as it was'] : []),
    ...(['a', 'b'] as const).flatMap((end) => {
      const holes = given.filter((one) => one.to === end).map((one) => one.hole)
      if (holes.length === 0) return []
      const named = listed([...holes].sort((x, y) => x - y).map(String))
      return [`${holes.length === 1 ? 'hole' : 'holes'} ${named} to ${nameOf(end)}`]
    }),
    ...(ending.extraHoles?.length ? [counted(ending.extraHoles.length, 'extra hole')] : []),
  ]
  return said.length > 0 ? said.join('; ') : 'as played'
}
