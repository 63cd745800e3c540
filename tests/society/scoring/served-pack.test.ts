// Promise: a day's cards are made once for everybody who looks, under a tag that changes when a group's own cards read
// otherwise and not before; what is erased or renamed is served no more; an open phone is told when to look.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GET } from '@/app/api/group/[link]/route'
import { SCORE_VERSION } from '@/lib/facts/card-pack'
import { servedPack } from '@/lib/society/card-pack'
import { erasePerson } from '@/lib/society/leave-society'
import { stopPlay } from '@/lib/society/stop-play'
import { watchCards } from '@/lib/society/watch-cards'
import { book } from '@/lib/store/client'
import { type DayInPlay, dayInPlay, got, Phone } from './day-in-play'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

const served = async (group: number) => got(await servedPack(day.scorer(group)))
let hole = 0
/** Somebody of the group writes a score nobody wrote before. */
async function score(group: number): Promise<void> {
  hole++
  const [a] = day.players(group)
  expect(await new Phone(day, group, a!).score(a!, hole, 5).send()).toMatchObject([{ answer: 'received' }])
}

const ask = async (group: number, tag?: string) => {
  const link = (await day.record()).groups.find((one) => one.number === group)!.linkKey
  const headers: Record<string, string> = tag === undefined ? {} : { 'if-none-match': tag }
  return GET(new Request('http://book/api', { headers }), { params: Promise.resolve({ link }) })
}

describe('the cards of a group', () => {
  it('are made once for a version, and one reading of the day serves every group', async () => {
    const [one, again] = [await served(1), await served(1)]
    expect(again).toBe(one)
    expect((await served(2)).pack.group.number).toBe(2)
    await score(1)
    expect(await served(1)).not.toBe(one)
  })

  it('keep their tag while another group scores, and change it with their own', async () => {
    const [one, two] = [await served(1), await served(2)]
    await score(1)
    expect((await served(1)).tag).not.toBe(one.tag)
    const after = await served(2)
    expect(after.tag).toBe(two.tag)
    expect(after.pack.scoreVersion).toBe(two.pack.scoreVersion + 1)
  })

  it('are not sent again to a phone that has them, which learns of which version that is true', async () => {
    const first = await ask(1)
    const tag = first.headers.get('etag')!
    expect([first.status, ((await first.json()) as { packVersion: number }).packVersion]).toEqual([200, 1])
    await score(2)
    const same = await ask(1, tag)
    expect([same.status, await same.text()]).toEqual([304, ''])
    expect(Number(same.headers.get(SCORE_VERSION))).toBe((await day.record()).scoreVersion)
    expect((await ask(1, `W/${tag}`)).status).toBe(304)
    await score(1)
    expect((await ask(1, tag)).status).toBe(200)
  })

  it('tell an open phone of the group, and no other', async () => {
    const heard: [string[], string[]] = [[], []]
    const ends = [
      got(await watchCards(day.scorer(1), (tag) => heard[0].push(tag))),
      got(await watchCards(day.scorer(2), (tag) => heard[1].push(tag))),
    ]
    expect(heard).toEqual([[(await served(1)).tag], [(await served(2)).tag]])
    await score(1)
    await expect.poll(() => heard[0].length).toBe(2)
    expect(heard[0][1]).toBe((await served(1)).tag)
    expect(heard[1]).toHaveLength(1)
    // A stop is told by itself: told twice, it would have every phone of the day fetch its cards in the same moment.
    const { tag } = await served(2)
    got(await stopPlay(day.w.actor, { dayId: day.dayId, kind: 'stop-at-once', reason: 'lightning' }))
    expect((await served(2)).tag).not.toBe(tag)
    await score(1)
    await expect.poll(() => heard[0].length).toBe(3)
    expect(heard[1]).toHaveLength(1)
    for (const end of ends) end()
  })

  it('follow a name that is corrected, and lose one that is erased, though no score moved', async () => {
    const before = await served(1)
    const [entryId] = day.players(1)
    const { personId } = (await day.record()).entries.find((one) => one.id === entryId)!
    await book().person.update({ where: { id: personId }, data: { familyName: 'Quillverton' } })
    const renamed = await served(1)
    expect(renamed.text).toContain('Quillverton')
    expect(renamed.tag).not.toBe(before.tag)
    got(await erasePerson(day.w.actor, { personId, shownAs: 'former-member' }))
    const erased = await served(1)
    expect(erased.text).not.toContain('Quillverton')
    expect(erased.tag).not.toBe(renamed.tag)
    expect((await ask(1, renamed.tag)).status).toBe(200)
  })
})
