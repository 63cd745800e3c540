// The working of a prize: every sentence a sheet may show, on a field of five.

import { describe, expect, it } from 'vitest'
import { type PrizeCandidate, prizeWorking } from '@/lib/rules/working/prize-working'

const who = (entrant: string, place: number, more: Partial<PrizeCandidate> = {}): PrizeCandidate => ({
  entrant,
  name: entrant.toUpperCase(),
  place,
  tied: false,
  score: `${40 - place} points`,
  ...more,
})

const lines = (fall: Parameters<typeof prizeWorking>[0]) =>
  prizeWorking(fall).map(({ figure, label, sentence }) => [figure, label, sentence])

describe('the working of a prize', () => {
  it('passes over a guest and a holder, and says who steps up', () => {
    const fall = {
      name: 'Second',
      place: 2,
      isFor: 'members',
      candidates: [
        who('a', 1),
        who('b', 2, { barred: 'guests play for the guest prize' }),
        who('c', 3, { holds: 'First in the Pairs' }),
        who('d', 4),
        who('e', 5),
      ],
      winners: ['d'],
    }
    expect(lines(fall)).toEqual([
      ['2nd', 'Second', 'It is for members: the 2nd of those who may win it.'],
      ['1st', 'A', 'The 1st of those who may win it: this prize is for the 2nd.'],
      ['2nd', 'B', 'May not win it: guests play for the guest prize.'],
      ['3rd', 'C', 'Holds First in the Pairs already: the next one steps up.'],
      ['4th', 'D', 'Steps up and wins it.'],
    ])
    expect(prizeWorking(fall)[4]!.sum).toBe('36 points')
  })

  it('shares a tie that stands', () => {
    const candidates = [who('a', 1, { tied: true }), who('b', 1, { tied: true }), who('c', 3)]
    const fall = { name: 'First', place: 1, isFor: 'everybody', candidates, winners: ['a', 'b'] }
    expect(lines(fall).slice(1)).toEqual([
      ['1st', 'A', 'Level, and the tie stands: the prize is shared.'],
      ['1st', 'B', 'Level, and the tie stands: the prize is shared.'],
    ])
  })

  it('says why nobody wins it', () => {
    const fall = { name: 'Third', place: 3, isFor: 'guests', candidates: [] as PrizeCandidate[], winners: [] }
    expect(lines(fall)[1]).toEqual(['–', 'Nobody', 'Nobody has a place: nobody wins it.'])
    const barred = [who('a', 1, { barred: 'it is for guests' })]
    expect(lines({ ...fall, candidates: barred }).at(-1)![2]).toBe('Nobody with a place may win it.')
    expect(lines({ ...fall, candidates: [who('a', 1)] }).at(-1)![2]).toBe(
      'Too few are left for this place: nobody wins it.',
    )
  })
})
