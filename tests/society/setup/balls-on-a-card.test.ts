// Promise: own balls and one ball of a side are never put on the same cards: the call, the change and the day file refuse it
// by name. A day that was called so before stays readable, and says at the desk what is wrong.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import type { CompetitionInput } from '@/lib/facts/commands'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { changeDay } from '@/lib/society/change-day'
import { deskDay } from '@/lib/society/desk-day'
import { dayFileOf } from '@/lib/society/export-day'
import { book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { smallRecord } from '../../boards/small-record'
import { ownBook } from '../../setup/copy'
import { aDay, formOf, got, type World, world } from './world'

const one = (name: string, format: string, allowance: number | number[]): CompetitionInput => ({
  name,
  format,
  terms: {
    allowance,
    allowanceFrom: 'house-choice',
    allowanceReason: 'As always',
    ties: PUBLISHED_COUNTBACK,
    guests: 'guest-prize-only',
  },
  prizes: [],
})
const medal = one('June Medal', 'medal', 95)
const foursomes = one('Quaich', 'foursomes-medal', [50, 50])
const texas = one('Texas', 'scramble-4', [25, 20, 15, 10])
const CLASH =
  'June Medal is played with a ball each and Quaich with one ball a side: they cannot share the cards. Call a day of its own for one of them.'

let own: Awaited<ReturnType<typeof ownBook>>
let w: World
beforeAll(async () => {
  own = await ownBook()
  w = await world()
})
afterAll(() => own.close())

async function call(...competitions: CompetitionInput[]) {
  const proposal = got(await proposeDay(w.actor, w.seasonId))
  return callDay(w.actor, { ...proposal, entriesCloseOn: null, competitions })
}

describe('own balls and one ball', () => {
  it.each([
    ['after each other', [medal, foursomes]],
    ['the other way round', [foursomes, medal]],
  ] as const)('are refused in a call, %s', async (_, asked) => {
    expect(await call(...asked)).toMatchObject({
      ok: false,
      faults: [{ place: 'competitions[1].format', sentence: CLASH }],
    })
  })

  it('of sides of two sizes are refused too; two of one kind are called', async () => {
    expect(await call(foursomes, texas)).toMatchObject({
      ok: false,
      faults: [
        {
          place: 'competitions[1].format',
          sentence:
            'Quaich is played by sides of 2 with one ball and Texas by sides of 4: they cannot share the cards. Call a day of its own for one of them.',
        },
      ],
    })
    expect(await call(foursomes, one('Points', 'foursomes-stableford', [50, 50]))).toMatchObject({ ok: true })
  })

  it('are refused in a change, and said at the desk on a day that has them already', async () => {
    const { dayId, slug } = await aDay(w, { competitions: [medal, one('Pairs', 'four-ball-medal', 85)] })
    const day = (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
    const form = await formOf(w, day, { competitions: [medal, foursomes] })
    expect(await changeDay(w.actor, { dayId, version: day.version, day: form })).toMatchObject({
      ok: false,
      faults: [{ sentence: CLASH }],
    })
    await book().competition.updateMany({
      where: { dayId, name: 'Pairs' },
      data: { name: 'Quaich', format: 'foursomes-medal' },
    })
    expect(got(await deskDay(w.actor, slug)).cautions).toEqual([CLASH])
    expect(got(await dayFileOf(w.actor, dayId)).dayFile).toBeDefined()
  })

  it('are refused in a day file where the cards of players would have to stand for their side', () => {
    const people = ['Ashgill', 'Verrow']
    const record = smallRecord({
      people,
      scores: { Ashgill: [4, 4], Verrow: [5, 4] },
      competitions: [{ format: 'medal' }, { format: 'foursomes-medal', sides: [people] }],
    })
    const file = writeDayFile(dayOfRecord(record)) as { cards: { player: string }[]; sides: { id: string }[] }
    expect(parseDayFile(file).ok).toBe(true)
    const sides = new Set(file.sides.map(({ id }) => id))
    const cards = file.cards.filter(({ player }) => !sides.has(player))
    const read = parseDayFile({ ...file, cards })
    expect(read).toMatchObject({ ok: false, faults: [{ place: 'sides[0]' }] })
    expect(read.ok ? '' : read.faults[0]?.sentence).toContain('they cannot share the cards')
  })
})
