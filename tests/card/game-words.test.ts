// Promise: in skins and split sixes the phone says from its own cards what a hole is worth and who has won how many, in the
// order in which the group plays. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { wonOnHole, wonSaid, worthOfHole } from '@/app/card/_phone/game-words'
import { groupPack } from '@/lib/boards/group-pack'
import { cardsNow, scoresIn } from '@/lib/outbox/card-now'
import { gameNow } from '@/lib/rules/score/game-now'
import { smallRecord } from '../boards/small-record'

const PEOPLE = ['Ashgill', 'Verrow', 'Storrey']

/** By hole number, who is not named makes four. */
type Written = Readonly<Record<number, Readonly<Record<string, number | 'x'>>>>

/** The game as the phone has it since before the first score, counted on the cards as they are written. */
function onPhone(format: string, written: Written, startHole = 1) {
  const dayWith = (scores: Readonly<Record<string, readonly (number | 'x' | null)[]>>) => {
    const record = smallRecord({ people: PEOPLE, competitions: [{ format }], scores })
    return { ...record, groups: record.groups.map((one) => ({ ...one, startHole })) }
  }
  const scoreOf = (who: string) =>
    Array.from({ length: 18 }, (_, at) => (written[at + 1] ? (written[at + 1]![who] ?? 4) : null))
  const [before, after] = [dayWith({}), dayWith(Object.fromEntries(PEOPLE.map((who) => [who, scoreOf(who)])))]
  const [game] = groupPack(before, before.groups[0]!).games ?? []
  const now = gameNow(game!.game, scoresIn(cardsNow(groupPack(after, after.groups[0]!), [], 'phone')))
  return {
    worth: (hole: number) => worthOfHole(game!, now, hole),
    won: (hole: number) => wonOnHole(game!, now, hole),
    all: game!.players.map(({ name }, ball) => `${name} ${wonSaid(now.won[ball]!, game!.unit)}`),
  }
}

describe('skins', () => {
  it('are carried in the order of play, from the 17th over the 18th to the first', () => {
    const { worth, won, all } = onPhone('skins', { 17: { Storrey: 5 }, 18: {}, 1: { Ashgill: 3 } }, 17)
    expect([17, 18, 1, 2].map(worth)).toEqual([
      'This hole is worth 1 skin',
      'This hole is worth 2 skins: one was carried',
      'This hole is worth 3 skins: two were carried',
      'This hole is worth 1 skin',
    ])
    expect([18, 1, 2].map(won)).toEqual(['tied, and carried to the next hole', 'Ashgill wins it', null])
    // What the third is worth hangs on the second.
    expect(worth(3)).toBeNull()
    expect(all).toEqual(['Ashgill 3 skins', 'Verrow 0 skins', 'Storrey 0 skins'])
  })

  it('are lost on the last hole of the group, and where the terms carry nothing', () => {
    const every = Object.fromEntries(Array.from({ length: 18 }, (_, at) => [at + 1, {}]))
    expect(onPhone('skins', every, 3).won(2)).toBe('tied, nobody wins it')
    expect(onPhone('skins-not-carried', { 1: {} }).won(1)).toBe('tied, nobody wins it')
    expect(onPhone('skins-not-carried', { 1: {} }).worth(9)).toBe('This hole is worth 1 skin')
  })
})

it('split sixes share four, two and nothing, and tied places theirs', () => {
  const { worth, won, all } = onPhone('split-sixes', { 1: { Verrow: 3 }, 2: { Storrey: 'x', Verrow: 5 } })
  expect(worth(3)).toBe('This hole is worth 6 points: 4 for the best and 2 for the second')
  expect(won(1)).toBe('Ashgill 1, Verrow 4 and Storrey 1')
  expect(won(2)).toBe('Ashgill 4 and Verrow 2')
  expect(all).toEqual(['Ashgill 5 points', 'Verrow 6 points', 'Storrey 1 point'])
})
