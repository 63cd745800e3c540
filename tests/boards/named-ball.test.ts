// A named ball may be said to be lost on two holes, by two phones: the first of them in the order of play counts.
import { expect, test } from 'vitest'
import { lostBefore } from '@/app/card/_phone/side-ball'
import { sideBall } from '@/lib/boards/ball-facts'
import type { BallFactRecord } from '@/lib/facts/day-record'
import type { SideId } from '@/lib/facts/ids'
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
