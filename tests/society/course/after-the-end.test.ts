// Promise: a phone whose link is over or was renewed is refused, yet what it brings is held where the desk sees it; the
// desk takes it in once, as if it had come in time, and the phone is then told what became of every number.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { EntryId } from '@/lib/facts/ids'
import { holdLateScores } from '@/lib/society/hold-late-scores'
import { onCourse } from '@/lib/society/on-the-course'
import { renewGroupLink } from '@/lib/society/publish-start'
import { takeLateScores } from '@/lib/society/take-late-scores'
import { groupLinkOfCode, scorerOf } from '@/lib/society/who-is-asking'
import { book } from '@/lib/store/client'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, LEVEL, Phone } from '../scoring/day-in-play'

let day: DayInPlay
let oldLink: string
let oldCode: string
const at = new Date('2031-06-14T15:00:00Z')

beforeAll(async () => {
  day = await dayInPlay()
  const group = (await day.record()).groups[0]!
  oldLink = group.linkKey
  oldCode = group.code
})
afterAll(() => day.close())

const bodyOf = (phone: Phone, group?: string) => ({
  deviceId: phone.deviceId,
  facts: phone.outbox,
  unsent: phone.outbox.length,
  ...(group ? { group } : {}),
})
const desk = async () => got(await onCourse(day.w.actor, day.daySlug, at))

describe('a phone with an old link', () => {
  it('is refused after a renewal, by link and by code, and what it brings without naming its group is nobody’s', async () => {
    const { groupId } = day.scorer(1)
    const fresh = got(await renewGroupLink(day.w.actor, { dayId: day.dayId, groupId }))
    expect(await scorerOf(oldLink, at)).toMatchObject({ ok: false, code: 'no-such-link' })
    expect(await groupLinkOfCode(oldCode, 'here', at)).toMatchObject({ ok: false, code: 'no-such-code' })
    expect((await scorerOf(fresh.linkKey, at)).ok).toBe(true)
    const [a] = day.players(1)
    expect(await holdLateScores(oldLink, bodyOf(new Phone(day, 1, a!).score(asId(a!), 1, 5)), at)).toBeNull()
    expect(await book().refusedFact.count()).toBe(0)
    expect(await holdLateScores(oldLink, { anything: true }, at)).toBeNull()
  })

  it('is seen by the desk with what it brought, knocks as often as it likes, and is taken in once', async () => {
    const { groupId } = day.scorer(1)
    const [a, b] = day.players(1) as [EntryId, EntryId]
    const phone = new Phone(day, 1, a)
      .score(asId(a), 1, 5)
      .score(asId(b), 1, 'x')
      .score(asId(day.players(2)[0]!), 1, 4)
    for (let knock = 0; knock < 3; knock++) expect(await holdLateScores(oldLink, bodyOf(phone, groupId), at)).toBeNull()
    const before = await desk()
    expect(before.held).toHaveLength(1)
    expect(before.held[0]?.groupNumber).toBe(1)
    expect(before.held[0]?.lines).toHaveLength(3)
    expect(before.held[0]?.lines[1]).toMatch(/, hole 1: no score$/)
    expect(before.groups[0]?.unsent).toBe(3)
    expect((await day.record()).facts).toHaveLength(0)

    const { deviceId } = before.held[0]!
    const taken = got(await takeLateScores(day.w.actor, { dayId: day.dayId, deviceId }, at))
    expect(taken).toEqual({ taken: 2, late: 0, refused: 1 })
    expect((await day.record()).facts.map((fact) => [fact.hole, fact.score, fact.late])).toEqual([
      [1, 5, false],
      [1, 'x', false],
    ])
    expect(await takeLateScores(day.w.actor, { dayId: day.dayId, deviceId }, at)).toMatchObject({
      code: 'nothing-held',
    })
    expect((await desk()).held).toEqual([])
    expect((await desk()).groups[0]?.unsent).toBe(0)

    // The phone asks again and learns what became of each number; nothing is written twice.
    const answer = await holdLateScores(oldLink, bodyOf(phone, groupId), at)
    expect(answer?.lastSeq).toBe(3)
    expect(answer?.answers.map((one) => one.answer)).toEqual(['received', 'received', 'refused'])
    expect((await day.record()).facts).toHaveLength(2)
  })

  it('after the day brings late facts to a closed card, which are kept and not counted', async () => {
    const group = (await day.record()).groups[1]!
    const afterwards = new Date('2031-06-20T09:00:00Z')
    expect(await scorerOf(group.linkKey, afterwards)).toMatchObject({ ok: false, code: 'link-ended' })
    const [a] = day.players(2) as [EntryId]
    const marker = (await day.record()).cards.find((card) => card.entryId === a)!.markerId!
    await new Phone(day, 2, a)
      .round(asId(a), LEVEL)
      .sign(asId(a), 'player', LEVEL, a)
      .sign(asId(a), 'marker', LEVEL, marker)
      .send()
    const forgotten = new Phone(day, 2, marker).score(asId(a), 18, 9)
    expect(await holdLateScores(group.linkKey, bodyOf(forgotten), afterwards)).toBeNull()
    const { deviceId } = (await desk()).held[0]!
    const taken = got(await takeLateScores(day.w.actor, { dayId: day.dayId, deviceId }, afterwards))
    expect(taken).toEqual({ taken: 0, late: 1, refused: 0 })
  })

  it('leaves little behind when a stranger has the old link', async () => {
    const { groupId } = day.scorer(1)
    const [a] = day.players(1) as [EntryId]
    for (let at = 0; at < 60; at++)
      await holdLateScores(
        oldLink,
        bodyOf(new Phone(day, 1, a).score(asId(a), 2, 5), groupId),
        new Date(2031, 5, 14, 16),
      )
    expect(await book().device.count({ where: { groupId } })).toBeLessThanOrEqual(40)
    expect(await takeLateScores(day.scorer(1), { dayId: day.dayId, deviceId: asId('x') })).toMatchObject({
      code: 'not-allowed',
    })
  })
})
