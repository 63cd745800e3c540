// Promise: what the desk says about play is on the next pack and on the board, newest word first, once however often it is
// pressed; nobody but those who may can say it, and it cannot be said when nobody is out. The card goes on taking scores.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import type { PlayNow } from '@/lib/facts/play-stop'
import { cardPack } from '@/lib/society/card-pack'
import { stopPlay } from '@/lib/society/stop-play'
import { watchPlay } from '@/lib/society/watch-play'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, Phone } from '../scoring/day-in-play'
import { aDay } from '../setup/world'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

const tell = (kind: PlayNow['kind'], reason: string, at = '2031-06-14T11:00:00Z') =>
  stopPlay(day.w.actor, { dayId: day.dayId, kind, reason }, new Date(at))

describe('suspension of play', () => {
  it('cannot be told before the day, nor ended before it began', async () => {
    const other = await aDay(day.w, { name: 'Another day', date: '2031-07-14' })
    const early = await stopPlay(day.w.actor, { dayId: other.dayId, kind: 'stop-at-once', reason: 'lightning' })
    expect(early).toMatchObject({ ok: false, code: 'day-not-in-play' })
    expect(await tell('resume', 'all clear')).toMatchObject({ ok: false, code: 'not-stopped' })
  })

  it('is on the pack and the board, wakes an open card once, and is recorded', async () => {
    const heard: PlayNow[] = []
    const end = got(await watchPlay(day.scorer(1), (play) => heard.push(play)))
    const before = await day.record()
    const play = got(await tell('stop-at-once', 'lightning'))
    expect(play).toMatchObject({ number: 1, kind: 'stop-at-once', toldAt: '2031-06-14T11:00:00.000Z' })
    await expect.poll(() => heard).toEqual([play])
    end()
    expect(got(await cardPack(day.scorer(2))).play).toEqual(play)
    const record = await day.record()
    expect(boardOf(record, new Date()).play).toEqual(play)
    // The day at the desk has not moved: nobody's form is refused for it.
    expect([record.version, record.scoreVersion]).toEqual([before.version, before.scoreVersion + 1])
    expect(await book().actRecord.count({ where: { act: 'stop-play', subjectId: day.dayId } })).toBe(1)
  })

  it('pressed twice is said once, and is not softened', async () => {
    expect(got(await tell('stop-at-once', 'lightning', '2031-06-14T11:00:05Z')).number).toBe(1)
    expect(await book().playStop.count()).toBe(1)
    expect(await tell('stop-after-hole', 'rain')).toMatchObject({ ok: false, code: 'stopped-at-once' })
  })

  it('stops no score that was made before', async () => {
    const [a] = day.players(1)
    expect(await new Phone(day, 1, a!).score(asId(a!), 1, 5).send()).toMatchObject([{ answer: 'received' }])
  })

  it('ends with a word of its own, and an open card that comes late hears only that', async () => {
    const play = got(await tell('resume', 'the course has given the signal', '2031-06-14T12:00:00Z'))
    expect(play).toMatchObject({ number: 2, kind: 'resume' })
    const heard: PlayNow[] = []
    got(await watchPlay(day.scorer(1), (one) => heard.push(one)))()
    expect(heard).toEqual([play])
    await expect(book().playStop.deleteMany()).rejects.toThrow()
  })

  it('is told by secretary, captain and committee, and by nobody else', async () => {
    const say = (duty: 'treasurer' | 'committee') =>
      stopPlay({ ...day.w.actor, duties: [duty] }, { dayId: day.dayId, kind: 'stop-after-hole', reason: 'fog' })
    expect(await say('treasurer')).toMatchObject({ ok: false, code: 'not-allowed' })
    expect(await stopPlay(day.scorer(1), { dayId: day.dayId, kind: 'stop-at-once', reason: 'a hoax' })).toMatchObject({
      ok: false,
      code: 'not-allowed',
    })
    expect(got(await say('committee')).kind).toBe('stop-after-hole')
    expect(await stopPlay(day.w.actor, { dayId: day.dayId, kind: 'stop-at-once', reason: '' })).toMatchObject({
      ok: false,
      code: 'not-understood',
    })
  })
})
