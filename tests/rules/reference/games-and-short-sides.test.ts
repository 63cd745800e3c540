// The second way once more where its rarest terms are usual: games in several groups from any hole, over one round or two,
// and sides that lack a player with everything that may stand for one.
import { expect, test, vi } from 'vitest'
import { disagreements } from './agreement'
import type { Wanted } from './random-day'

// Many days, and perhaps a busy machine: the time taken says nothing here.
vi.setConfig({ testTimeout: 1_200_000 })

/** `npm run prove` asks for as many as of every format; here fewer, for the other files have the same terms too. */
const DAYS = Number(process.env.RULES_DAYS ?? 500)

const named = (...formats: string[]) => formats.map((format) => ({ id: format, format }))

const WANTED: Readonly<Record<string, Wanted>> = {
  'skins in groups': { competitions: named('skins', 'skins-not-carried'), sideSize: 1, players: 5 },
  'split sixes in groups': { competitions: named('split-sixes', 'split-sixes-clear-win'), sideSize: 1, players: 6 },
  'teams of four that lack a player': {
    competitions: named('best-2-of-4-stableford', 'best-3-of-4-medal', 'waltz', 'yellow-ball', 'scramble-4'),
    sideSize: 4,
    shortSides: true,
  },
}

test.each(Object.entries(WANTED))(`${DAYS} days of %s`, (_, wanted) => {
  expect(disagreements({ ...wanted, everything: true, often: true }, DAYS)).toEqual([])
})
