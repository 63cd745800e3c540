// Promise: a day is called from what is usual or was last, with its own address and its own copy of the tees; nonsense is
// refused in its place, and a figure says it is published only if it is.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DayId } from '@/lib/facts/ids'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
let dayId: DayId

beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  dayId = (await aDay(w, { places: 8 })).dayId
})
afterAll(() => close())

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!

describe('calling a day', () => {
  it('proposes the published allowance for the field, the published countback and the tees of the course', async () => {
    const proposal = got(await proposeDay(w.actor, w.seasonId))
    expect(proposal.competitions[0]).toMatchObject({ format: 'stableford', terms: { allowanceFrom: 'published' } })
    expect(proposal.teeMen).not.toBeNull()
    expect(proposal.teeWomen).not.toBeNull()
  })

  it('gives the day an address of its own, copies the tees and numbers the season by date', async () => {
    const earlier = got(
      await callDay(w.actor, {
        ...got(await proposeDay(w.actor, w.seasonId)),
        name: 'Spring Cup',
        date: '2031-03-01',
        entriesCloseOn: null,
      }),
    )
    expect(earlier.slug).toBe('spring-cup-2031-2')
    expect((await record()).slug).toBe('spring-cup-2031')
    expect((await record()).number).toBe(2)
    expect((await record()).tees.map((tee) => [tee.name, tee.gender, tee.isDefault, tee.holes.length])).toEqual([
      ['Red', 'women', true, 18],
      ['Yellow', 'men', true, 18],
    ])
  })

  it('refuses a date outside the season, an unknown format and a nine on eighteen holes, each at its place', async () => {
    const proposal = got(await proposeDay(w.actor, w.seasonId))
    const bad = await callDay(w.actor, {
      ...proposal,
      date: '2032-06-14',
      holes: 9,
      entriesCloseOn: null,
      competitions: [{ ...proposal.competitions[0]!, format: 'croquet' }],
    })
    if (bad.ok) throw new Error('called')
    expect(bad.code).toBe('not-understood')
    expect(bad.faults.map((fault) => fault.place)).toEqual(['date', 'holes', 'competitions[0].format'])
  })

  it('says house choice when a figure is not the published one, whatever the form says', async () => {
    const proposal = got(await proposeDay(w.actor, w.seasonId))
    const one = proposal.competitions[0]!
    const { dayId: other } = got(
      await callDay(w.actor, {
        ...proposal,
        name: 'House',
        date: '2031-11-01',
        entriesCloseOn: null,
        competitions: [{ ...one, terms: { ...one.terms, allowance: 90, allowanceFrom: 'published' } }],
      }),
    )
    const day = await readDayRecord({ societyId: w.actor.societyId, dayId: other })
    expect(day?.competitions[0]?.terms.allowanceFrom).toBe('house-choice')
  })
})
