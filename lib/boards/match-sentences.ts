// How a match stands or ended, in a sentence with both names.

import type { MatchResult } from '@/lib/rules/standings'
import { counted } from './in-words'
import { wonHow } from './match-ending-words'

interface Both {
  readonly a: string
  readonly b: string
}

/** Holes with a score on each side, of so many. */
interface Written {
  readonly a: number
  readonly b: number
  readonly of: number
}

/** "A 2 up after 11" with the names of A. */
export function resultNamed({ result }: Pick<MatchResult, 'result'>, { a, b }: Both): string {
  const who = result.startsWith('A ') ? a : result.startsWith('B ') ? b : null
  return who === null ? result : `${who} ${result.slice(2)}`
}

/** As it stands beside the winner, who is named apart: "2&1", "1 up after 9, abandoned"; with a name where nobody won. */
export function resultShown(one: Pick<MatchResult, 'winner' | 'result'>, both: Both): string {
  return one.winner === null ? resultNamed(one, both) : one.result.replace(/^[AB] /, '')
}

/** "Trevennor beat Coldbrook 2&1.", "Trevennor and Haldane are 2 up after 11." */
export function matchSentence(match: MatchResult, both: Both, written?: Written): string {
  const { a, b } = both
  const { result } = match
  if (result === 'no result') return `The match of ${a} and ${b} counts for neither.`
  if (match.finished && !result.endsWith('abandoned')) {
    if (match.winner === null) return `${a} and ${b} halved the match.`
    const [winner, loser] = match.winner === match.a ? [a, b] : [b, a]
    return `${winner} beat ${loser} ${wonHow(result)}.`
  }
  const so = result.replace(', abandoned', '')
  const end = match.finished ? ' when the match was abandoned.' : '.'
  if (so === 'not started') return match.finished ? `${a} and ${b} did not play.` : notMet(both, written)
  if (so.startsWith('level')) return `${a} and ${b} ${match.finished ? 'were' : 'are'} ${so}${end}`
  const who = so.startsWith('A ') ? a : b
  const several = who.includes(' and ')
  const verb = match.finished ? (several ? 'were' : 'was') : several ? 'are' : 'is'
  return `${who} ${verb} ${so.slice(2)}${end}`
}

/** No hole has both scores yet: each is said by itself, because one of them may be in the bar already. */
function notMet({ a, b }: Both, written: Written = { a: 0, b: 0, of: 18 }): string {
  if (written.a === 0 && written.b === 0) return `${a} and ${b} have not started.`
  const each = (name: string, holes: number) => {
    const has = name.includes(' and ') ? 'have' : 'has'
    if (holes === 0) return `${name} ${has} not started`
    if (holes === written.of) return `${name} ${has} finished`
    return `${name} ${has} played ${counted(holes, 'hole')}`
  }
  return `No hole has both scores yet: ${each(a, written.a)}, ${each(b, written.b)}.`
}
