// What the loss of a named ball costs, in the words that terms, phone, board and working share. From the hole of the loss on the
// player in turn stays named by the same rota; only what that score counts is another matter. House rule: common practice, no
// source.

import type { CountChoice } from './format'

export type BallLost = Extract<CountChoice, { kind: 'named-player' }>['lost']

/** What the score of the player in turn does once the ball is lost: "still counts, but once". Null: the side is out. */
export function inTurnOnceLost(lost: BallLost, times: number): string | null {
  if (lost === 'side-out') return null
  if (lost === 'named-score-nothing') return 'counts nothing'
  return times > 1 ? 'still counts, but once' : 'still counts'
}

export function ballLostInWords(lost: BallLost, times: number): string {
  const costs = inTurnOnceLost(lost, times)
  if (costs === null) return 'A side that loses the named ball is out.'
  if (lost === 'counts-once' && times <= 1)
    return 'A named ball that is lost costs nothing: the player in turn still counts.'
  return `Once the named ball is lost the score of the player in turn ${costs}.`
}
