// Games inside a group, matches of sides, and the remaining singles: the engine and the second way agree.
import { describe, expect, test, vi } from 'vitest'
import { DAYS, disagreements } from './agreement'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 600_000 })

/** A quarter of the days each. */
const SOME = Math.ceil(DAYS / 4)

const named = (formats: readonly string[]) => formats.map((format) => ({ id: format, format }))

describe(`${SOME} random days`, () => {
  test('skins with ties carried and not carried', () => {
    expect(disagreements({ competitions: named(['skins', 'skins-not-carried']), sideSize: 1 }, SOME)).toEqual([])
  })

  test('split sixes of three, with and without the clear win', () => {
    const competitions = named(['split-sixes', 'split-sixes-clear-win'])
    expect(disagreements({ competitions, sideSize: 1, players: 3 }, SOME)).toEqual([])
  })

  test('modified points, and holes that count twice', () => {
    const competitions = [
      { id: 'modified', format: 'modified-points' },
      { id: 'doubled', format: 'double-point-stableford', namedHoles: [3, 7, 12] },
    ]
    expect(disagreements({ competitions, sideSize: 1 }, SOME)).toEqual([])
  })

  test('matches of sides: better ball, total of two, one ball', () => {
    const formats = ['four-ball-match', 'total-of-two-match', 'foursomes-match', 'greensomes-match', 'pinehurst-match']
    const competitions = formats.map((format) => ({ id: format, format, matches: [{ id: 'm1', a: 's1', b: 's2' }] }))
    expect(disagreements({ competitions, sideSize: 2 }, SOME)).toEqual([])
  })
})
