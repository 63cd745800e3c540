// What each player brings to the one ball of a side: a limit, a figure set by hand. Rules of Handicapping 2024, Appendix C
// for the shares, 7.2 for a limit of the committee; that a figure by hand takes the place of the course handicap is ours.
import fc from 'fast-check'
import { expect, it, test } from 'vitest'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult } from '@/lib/rules/standings'
import { divisionWorkings } from '@/lib/rules/working/division-working'
import { holeWorking } from '@/lib/rules/working/hole-working'
import { aldermoss, CARDS, PLAYERS } from './aldermoss'

const sides = [{ id: 's', players: ['coldbrook', 'trevennor'] }]
const card = { player: 's', scores: CARDS[0]!.scores }
const greensomes = { id: 'c', format: 'greensomes-stableford' } as const

const handicapOf = ([result]: readonly CompetitionResult[]) => result!.standings[0]!.playingHandicap

test('with a limit, a higher handicap never gets a side fewer strokes', () => {
  const limit = { handicapLimit: { men: 18, women: 18 } }
  const formats = fc.constantFrom('greensomes-stableford', 'foursomes-medal', 'scramble-2')
  fc.assert(
    fc.property(
      formats,
      fc.integer({ min: -50, max: 539 }),
      fc.integer({ min: -50, max: 540 }),
      (format, one, other) => {
        const strokes = [one, one + 1].map(
          (indexTenths) =>
            handicapOf(
              scoreDay(
                aldermoss({
                  sides,
                  cards: [card],
                  players: PLAYERS.map((player) =>
                    player.id === 'coldbrook'
                      ? { ...player, indexTenths }
                      : player.id === 'trevennor'
                        ? { ...player, indexTenths: other }
                        : player,
                  ),
                  competitions: [{ id: 'c', format, ...limit }],
                }),
              ),
            )!,
        )
        expect(strokes[1]).toBeGreaterThanOrEqual(strokes[0]!)
      },
    ),
    { numRuns: 500 },
  )
})

it('takes a playing handicap set by hand in place of the course handicap: 60 % of 10 and 40 % of 20.098', () => {
  const players = PLAYERS.map((player) =>
    player.id === 'coldbrook' ? { ...player, playingHandicap: { c: 10 } } : player,
  )
  const day = aldermoss({ sides, cards: [card], players, competitions: [greensomes] })
  // 6 + 8.039 = 14.039; computed it is 60 % of 17.554 and 40 % of 20.098, 18.572.
  expect(handicapOf(scoreDay(day))).toBe(14)
  expect(handicapOf(scoreDay(aldermoss({ sides, cards: [card], competitions: [greensomes] })))).toBe(19)
  const said = holeWorking(day, 'c', 's', 1)!.steps.map(({ figure, label }) => `${figure} ${label}`)
  expect(said).toContain('10 Handicap of coldbrook')
  expect(said).toContain('14 Playing handicap of the side')
})

it('says which weights a side of three in a scramble of four is given', () => {
  const three = [{ id: 's', players: ['haldane', 'coldbrook', 'trevennor'], competitions: ['c'] }]
  const said = (allowance?: readonly number[]) => {
    const day = aldermoss({
      sides: three,
      cards: [card],
      competitions: [{ id: 'c', format: 'scramble-4', ...(allowance ? { allowance } : {}) }],
    })
    return holeWorking(day, 'c', 's', 1)!.steps.find(({ label }) => label === 'Playing handicap of the side')
  }
  // 0.629 × 30 % + 17.554 × 20 % + 20.098 × 10 % = 0.189 + 3.511 + 2.010 = 5.709
  expect(said()).toMatchObject({
    figure: '6',
    sentence: expect.stringContaining('the published figure for a side of three'),
  })
  expect(said([20, 20, 20, 20])?.sentence).toContain('the first three of the weights for four')
})

it('says which handicap decides a division where none counts', () => {
  const divisions = [{ id: 'low', name: 'Low', handicapTo: 12 }]
  const competition = { id: 'c', format: 'gross', divisions }
  const way = divisionWorkings(aldermoss({ competitions: [competition] }), competition).get('trevennor')!
  expect(way.handicap).toMatchObject({ figure: '20', label: 'Course handicap' })
  expect(way.divisions[0]).toMatchObject({ isIn: false, step: { sentence: '20 is more than 12.' } })
})
