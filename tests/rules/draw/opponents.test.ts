// Promise: the draw finds an opponent for everybody it can, of another team, and never one's own partner while there is another.
// Common practice, no source.

import { expect, test } from 'vitest'
import { type Drawn, opponentsOf } from '@/lib/rules/draw/opponents'

const players = (ids: string, more: (id: string) => Partial<Drawn> = () => ({})): Drawn[] =>
  [...ids].map((id) => ({ id, team: null, ...more(id) }))
const met = (group: readonly Drawn[]) => opponentsOf(group).map(([a, b]) => a + b)
const pairs =
  (...sides: string[]) =>
  (id: string) => ({
    partners: sides.filter((side) => side.includes(id)).flatMap((side) => [...side].filter((one) => one !== id)),
  })

test('without partners first meets second, and an odd one is left over', () => {
  expect(met(players('abcd'))).toEqual(['ab', 'cd'])
  expect(met(players('abc'))).toEqual(['ab'])
  expect(met(players('a'))).toEqual([])
})

test('partners of another competition do not meet where others are there', () => {
  expect(met(players('abcd', pairs('ab', 'cd')))).toEqual(['ac', 'bd'])
  expect(met(players('abcd', pairs('ac')))).toEqual(['ab', 'cd'])
  // Paired by the order alone the last two, partners, would be left to each other.
  expect(met(players('abcd', pairs('cd')))).toEqual(['ac', 'bd'])
  expect(met(players('abc', pairs('ab')))).toEqual(['ac'])
  // Two alone are opponents all the same.
  expect(met(players('ab', pairs('ab')))).toEqual(['ab'])
})

test('teams come first: nobody of one team meets another of it', () => {
  const teams = (id: string) => ({ team: 'ab'.includes(id) ? 'Heath' : 'Links', ...pairs('ac', 'bd')(id) })
  expect(met(players('abcd', teams))).toEqual(['ad', 'bc'])
  expect(met(players('abc', (id) => ({ team: id === 'c' ? 'Links' : 'Heath' })))).toEqual(['ac'])
})
