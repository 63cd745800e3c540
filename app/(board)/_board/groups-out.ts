// "Groups 5, 6 and 7 are still out, on the 18th, 17th and 16th. Sixteen of 27 cards are in."

import { capital, inWords, listed, ordinal } from '@/lib/boards/in-words'
import type { ScreenBoard } from './screen-board'

function cardsIn(count: number, players: number): string {
  if (count === 0) return 'No card is in yet.'
  if (count === players) return 'Every card is in.'
  return `${capital(inWords(count))} of ${players} cards ${count === 1 ? 'is' : 'are'} in.`
}

export function groupsOut(board: Pick<ScreenBoard, 'groups' | 'players' | 'cardsIn' | 'head'>): string {
  const cards = cardsIn(board.cardsIn, board.players)
  const out = board.groups.filter((group) => group.onHole !== null)
  if (board.head.status !== 'in-play' || out.length === 0) return cards
  // A full field spread over the course is too many to name: the flags say it.
  if (out.length > 6) return `${capital(inWords(out.length))} groups are out. ${cards}`
  const numbers = listed(out.map((group) => String(group.number)))
  const holes = listed(out.map((group) => ordinal(group.onHole ?? 1)))
  const are =
    out.length === 1
      ? `Group ${numbers} is still out, on the ${holes}.`
      : `Groups ${numbers} are still out, on the ${holes}.`
  return `${are} ${cards}`
}
