// House practice: the arithmetic of groups. All fours when the number divides by four, otherwise one, two or three
// threes; never a player alone. The same for groups of three and of two. Where two of a group belong together, fours and a two.

import { floorDiv } from '../exact/fraction'

/** Sizes in starting order; empty when no group can be made of so few. */
export function groupSizes(
  players: number,
  size: 2 | 3 | 4,
  smaller: 'first' | 'last',
  inPairs = false,
): readonly number[] {
  if (players < 2) return []
  if (players <= size) return [players]
  const over = players % size
  if (inPairs && size === 4) return pairedFours(players, over, smaller)
  // Two-balls cannot get smaller: an odd player makes one group of three.
  if (size === 2) return placed(players - over * 3, 2, over, 3, smaller)
  const short = over === 0 ? 0 : size - over
  const fallsApart = short * (size - 1) > players
  // Five players in fours have no three threes in them: a three and a two.
  if (fallsApart) return placed(0, size, 1, size - 1, smaller, [players - (size - 1)])
  return placed(players - short * (size - 1), size, short, size - 1, smaller)
}

/** Fours and a two, so that nobody but one odd player is without a partner: nine are four, three and two. */
function pairedFours(players: number, over: number, smaller: 'first' | 'last'): readonly number[] {
  const rest = [[], [3, 2], [2], [3]][over]!
  return placed(over === 1 ? players - 5 : players - over, 4, 0, 0, smaller, rest)
}

function placed(
  inFull: number,
  full: number,
  others: number,
  other: number,
  where: 'first' | 'last',
  rest: readonly number[] = [],
): readonly number[] {
  const fulls = Array.from({ length: floorDiv(inFull, full) }, () => full)
  const differing = [...Array.from({ length: others }, () => other), ...rest]
  return where === 'first' ? [...differing.reverse(), ...fulls] : [...fulls, ...differing]
}
