// How a match and its parts came out, as the table of the board and the sheet both say it.

import { wonHow } from '@/lib/boards/match-ending-words'
import type { CompetitionBoard } from '@/lib/boards/views'

type Match = CompetitionBoard['matches'][number]
type NamesOf = CompetitionBoard['names']

/** The winner's name and how. A result that names who leads has the name in it already. */
export function matchEnd(
  { winner, result }: Pick<Match, 'winner' | 'result'>,
  names: NamesOf,
): { readonly winner: string | null; readonly how: string } {
  return winner === null ? { winner: null, how: result } : { winner: names[winner] ?? winner, how: wonHow(result) }
}

/** A match that was given because one of the two was not there any more has no cards to open. */
export const isPlayed = (match: Match): boolean => Object.keys(match.strokes).length > 0

/** Front nine, back nine and whole, in a match of several; nothing in any other. */
export function MatchParts({ match, names }: { match: Match; names: NamesOf }) {
  return match.parts?.map((part) => {
    const { winner, how } = matchEnd(part, names)
    return (
      <span className="small second block" key={part.name}>
        {part.name}: {winner === null ? how : `${winner} ${how}`}
      </span>
    )
  })
}
