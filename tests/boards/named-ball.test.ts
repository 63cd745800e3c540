// A named ball may be said to be lost on two holes, by two phones: the first of them in the order of play counts.
import { expect, test } from 'vitest'
import { lossOnHole, lostBefore } from '@/app/card/_phone/side-ball'
import { sideBall } from '@/lib/boards/ball-facts'
import { scoresThatCount } from '@/lib/boards/scores-that-count'
import type { BallFactRecord } from '@/lib/facts/day-record'
import type { SideId } from '@/lib/facts/ids'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { type BallLost, ballLostInWords, inTurnOnceLost } from '@/lib/rules/formats/lost-ball'
import { asId } from '../setup/ids'

test('lost on the 2nd and on the 12th: the 12th for a group that began on the 10th', () => {
  const sideId = asId<SideId>('side')
  const lostOn = (hole: number): BallFactRecord => ({
    id: hole,
    sideId,
    kind: 'ball-lost',
    hole,
    entryId: null,
    lost: true,
    writer: 'desk',
    writtenAt: new Date('2026-06-13T10:00:00Z'),
    receivedAt: new Date('2026-06-13T10:00:00Z'),
    late: false,
  })
  const facts = [lostOn(2), lostOn(12)]
  const round = { holes: 18, firstHole: 1 }
  expect(sideBall(sideId, facts, round).ballLostOn).toBe(2)
  expect(sideBall(sideId, facts, round, 10).ballLostOn).toBe(12)
})

test('on the phone it was lost before a hole only where the group came to that hole later', () => {
  const order = [10, 11, 12, 13, 14, 15, 16, 17, 18, 1, 2, 3, 4, 5, 6, 7, 8, 9]
  const ball = { lost: [2] }
  expect(lostBefore(ball, order, 10)).toBeNull()
  expect(lostBefore(ball, order, 18)).toBeNull()
  expect(lostBefore(ball, order, 2)).toBeNull()
  expect(lostBefore(ball, order, 3)).toBe(2)
  expect(lostBefore(ball, order, 9)).toBe(2)
})

test('terms and phone say alike who is named after the loss, and what that score does', () => {
  const on = (format: string, lost: BallLost) => {
    const { count } = formatOf(format)!
    if (count.kind !== 'named-player') throw new Error(`${format} names nobody`)
    const inTurn = inTurnOnceLost(lost, count.times)
    const cost = ballLostInWords(lost, count.times)
    return [
      cost,
      lossOnHole({ cost, ...(inTurn === null ? {} : { inTurn }) }, 'Coldbrook'),
      scoresThatCount({ ...count, lost }, 12, 4, true),
    ]
  }
  expect(on('yellow-ball-doubled', 'counts-once')).toEqual([
    'Once the named ball is lost the score of the player in turn still counts, but once.',
    'Coldbrook is in turn: that score still counts, but once.',
    'The score of the player in turn and the best score of the others count here',
  ])
  expect(on('yellow-ball', 'counts-once')).toEqual([
    'A named ball that is lost costs nothing: the player in turn still counts.',
    'Coldbrook is in turn: that score still counts.',
    'The score of the player in turn and the best score of the others count here',
  ])
  expect(on('yellow-ball', 'named-score-nothing')).toEqual([
    'Once the named ball is lost the score of the player in turn counts nothing.',
    'Coldbrook is in turn: that score counts nothing.',
    'The best score of the others counts here',
  ])
  expect(on('yellow-ball', 'side-out')).toEqual([
    'A side that loses the named ball is out.',
    'A side that loses the named ball is out.',
    'The side is out',
  ])
})
