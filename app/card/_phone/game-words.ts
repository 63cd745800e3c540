// Games shared inside a group, in the words of the phone: what a hole is worth, and who has won how many.

import { counted, inWords, listed } from '@/lib/boards/in-words'
import type { PackGame } from '@/lib/facts/card-pack'
import type { GameNow } from '@/lib/rules/score/game-now'

type Named = Pick<PackGame, 'unit' | 'players' | 'game'>

const ONE = { skins: 'skin', points: 'point' } as const
const PLACES = ['the best', 'the second', 'the third', 'the fourth']

/** "3 skins", "1 point". */
export const wonSaid = (number: number, unit: PackGame['unit']): string =>
  `${number} ${number === 1 ? ONE[unit] : unit}`

/** "This hole is worth 3 skins: two were carried"; null where it does not count, or what is carried is not known yet. */
export function worthOfHole({ unit, game }: Named, now: GameNow, hole: number): string | null {
  const at = game.holes.indexOf(hole)
  const pot = now.pots[at] ?? null
  if (pot === null) return null
  const worth = `This hole is worth ${wonSaid(pot, unit)}`
  const times = game.times[at]!
  if (game.shares.kind === 'by-place') {
    const places = game.shares.points.flatMap((points, place) =>
      points > 0 ? [`${points * times} for ${PLACES[place] ?? `number ${place + 1}`}`] : [],
    )
    return `${worth}: ${listed(places)}`
  }
  const carried = pot / times - 1
  return carried > 0 ? `${worth}: ${inWords(carried)} ${carried === 1 ? 'was' : 'were'} carried` : worth
}

/** "Storrey wins it", "tied, and carried to the next hole", "Storrey 3, Verrow 3"; null until the hole is finished. */
export function wonOnHole({ game, players }: Named, now: GameNow, hole: number): string | null {
  const at = game.holes.indexOf(hole)
  const won = players.map(({ name }, ball) => ({ name, share: now.shares[ball]?.[at] ?? null }))
  if (won.some(({ share }) => share === null)) return null
  const takers = won.flatMap(({ name, share }) => (typeof share === 'number' && share > 0 ? [{ name, share }] : []))
  if (game.shares.kind === 'by-place') return listed(takers.map(({ name, share }) => `${name} ${share}`))
  if (takers.length > 0) return `${listed(takers.map(({ name }) => name))} wins it`
  return game.shares.tied === 'carried' && !isLast({ game }, hole)
    ? 'tied, and carried to the next hole'
    : 'tied, nobody wins it'
}

/** Nothing that counts is played after it. */
function isLast({ game: { holes, start, times } }: Pick<Named, 'game'>, hole: number): boolean {
  const inPlay = [...holes.keys()].map((at) => (start + at) % holes.length)
  const last = inPlay.findLast((at) => times[at]! > 0)
  return last !== undefined && holes[last] === hole
}

/** "after 7 holes". */
export const afterHoles = (now: Pick<GameNow, 'played'>): string => `after ${counted(now.played, 'hole')}`
