// What it needs to win, in words: silent until the committee allows it and while nobody plays, and the same figures on the
// board and on the card.
import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { playerCardOf } from '@/lib/boards/player-card'
import { recordAt } from '../screens/day-of-four'
import { asId } from '../setup/ids'

const at = new Date('2026-04-25T14:00:00Z')
const holes = { haldane: 18, coldbrook: 18, trevennor: 12, tarrablane: 17 }
const allowed = (moment: Parameters<typeof recordAt>[0] = { holes }) => ({ ...recordAt(moment), showsChances: true })

describe('what it needs to win', () => {
  it('is not said until it is allowed, nor before play, nor once the day is closed', () => {
    for (const record of [
      recordAt({ holes }),
      allowed({ holes, status: 'closed' }),
      allowed({ holes: { haldane: 0, coldbrook: 0, trevennor: 0, tarrablane: 0 }, status: 'frozen' }),
    ]) {
      const board = boardOf(record, at)
      expect(board.competitions.every(({ chances }) => chances === undefined)).toBe(true)
      expect(JSON.stringify(playerCardOf(record, asId('trevennor')))).not.toContain('out of reach')
      expect(playerCardOf(record, asId('trevennor'))?.readings.every(({ chance }) => chance === undefined)).toBe(true)
    }
  })

  it('names the leader, both totals and the countback', () => {
    const [singles] = boardOf(allowed(), at).competitions
    const leader = singles!.rows.find(({ entrant }) => entrant === 'haldane')!
    const mine = singles!.rows.find(({ entrant }) => entrant === 'trevennor')!
    const chance = singles!.chances!.entrants.trevennor!
    expect(chance).toMatchObject({ first: 'possible', holesLeft: 6, stands: 'First place is still possible.' })
    const [tie, win] = /(\d+) points? on the six holes left ties? with \w+, (\d+) wins?/
      .exec(chance.needed)!
      .slice(1)
      .map(Number)
    const ahead = singles!.rows.filter(({ entrant }) => entrant !== 'trevennor')[0]!
    expect(mine.score! + tie!).toBe(ahead.score)
    expect(win).toBe(tie! + 1)
    expect(chance.range).toBe(`At the best ${/best (\d+)/.exec(chance.range)![1]} points, at the worst ${mine.score}.`)
    expect(singles!.chances!.entrants.haldane).toMatchObject({ holesLeft: 0, needed: '', range: '' })
    expect(leader.holesPlayed).toBe(18)
  })

  it('is the same on the card', () => {
    const record = allowed()
    const { stands, needed } = boardOf(record, at).competitions[0]!.chances!.entrants.trevennor!
    expect(playerCardOf(record, asId('trevennor'))!.readings[0]!.chance).toBe([stands, needed].join(' '))
  })
})
