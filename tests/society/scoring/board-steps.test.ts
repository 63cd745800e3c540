// Promise: whoever watches a day gets every version, and what changed makes exactly the board that is served; it is made
// once for everybody.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Changes, type Json, withChanges } from '@/lib/boards/board-changes'
import { boardStep } from '@/lib/society/board-steps'
import { countedBoard } from '@/lib/society/read-board'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, Phone } from './day-in-play'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

const said = (message: Uint8Array) => {
  const [id = '', event = '', data = ''] = new TextDecoder().decode(message).split('\n')
  return {
    id,
    event,
    ...(JSON.parse(data.slice('data: '.length)) as { version: string; from?: string; changes?: Changes }),
  }
}

it('leads every watcher from board to board', async () => {
  const [writer = '', other = ''] = day.players(1)
  const phone = new Phone(day, 1, writer)
  const which = { dayId: day.dayId, society: day.slug, day: day.daySlug }
  const served = async () => got(await countedBoard(day.slug, day.daySlug))
  const play = async (hole: number, score: number) => {
    await phone
      .score(asId(writer), hole, score)
      .score(asId(other), hole, score + 1)
      .send()
    const { version, text } = await served()
    const steps = await Promise.all([boardStep(which, version), boardStep(which, version)])
    expect(steps[0]).toBe(steps[1])
    return { step: said(steps[0]!.message), board: JSON.parse(text) as Json }
  }
  const first = await play(1, 4)
  expect(first.step).toMatchObject({ event: 'event: version', version: (await served()).version })
  expect(first.step.changes).toBeUndefined()
  let { board } = first
  for (let hole = 2; hole <= 6; hole++) {
    const now = await play(hole, 3 + (hole % 3))
    expect(now.step.from).toBe((board as { version: string }).version)
    board = withChanges(board, now.step.changes)
    expect(board).toEqual(now.board)
  }
})

it('tells the version when the board cannot be counted', async () => {
  expect(await boardStep({ dayId: asId('no-such-day'), society: day.slug, day: 'no-such-day' }, '1.1')).toBeNull()
})
