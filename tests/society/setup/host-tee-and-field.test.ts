// Promise: at the entries of a day a guest's host is changed without withdrawing anybody, and a guest of the day is not
// taken for one of an earlier day; somebody without a tee is named, and nobody else waits for it; freezing asks once
// where the field is smaller than the allowance was chosen for.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DayId } from '@/lib/facts/ids'
import { proposeDay } from '@/lib/society/call-day'
import { changeHost } from '@/lib/society/change-host'
import { enterGuest, enterKnownGuest } from '@/lib/society/enter-guest'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { readRecord } from '@/lib/society/read-record'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from './world'

let close: () => Promise<void>
let w: World
let dayId: DayId

const GUEST = { firstName: 'Sorley', familyName: 'Maddock', gender: 'men', claimedTenths: 110 } as const

beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  w = await world()
  const [singles] = got(await proposeDay(w.actor, w.seasonId)).competitions
  const terms = { ...singles!.terms, allowance: 95 }
  const competitions = [{ ...singles!, terms }]
  dayId = (await aDay(w, { teeWomen: null, competitions })).dayId
})
afterAll(() => close())

const record = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const at = async () => ({ dayId, version: (await record()).version })
const [HALDANE, COLDBROOK, TREVENNOR, TARRABLANE] = [0, 1, 2, 3]

describe('a day without tees for women', () => {
  it('names who has none, and enters nobody', async () => {
    const enter = [HALDANE, COLDBROOK, TARRABLANE].map((one) => ({ personId: w.people[one]! }))
    const answer = await enterPlayers(w.actor, { ...(await at()), enter })
    expect(answer).toMatchObject({
      ok: false,
      code: 'without-tee',
      sentence: 'Una Tarrablane has no tee to play from: the day has no tee for women. Nobody was entered yet.',
      faults: [{ place: w.people[TARRABLANE] }],
    })
    expect((await record()).entries).toEqual([])
    got(await enterPlayers(w.actor, { ...(await at()), enter: enter.slice(0, 2) }))
  })
})

describe('a guest of the day', () => {
  const guest = async () => (await record()).entries.find((entry) => entry.kind === 'guest')!

  it('has another host at once, and the record says both', async () => {
    got(await enterGuest(w.actor, { ...(await at()), hostId: w.people[HALDANE]!, ...GUEST }))
    const entryId = (await guest()).id
    const changed = await changeHost(w.actor, { ...(await at()), entryId, hostId: w.people[COLDBROOK]! })
    expect(changed).toMatchObject({ ok: true, value: { guest: 'Sorley Maddock', host: 'Emrys Coldbrook' } })
    expect(await guest()).toMatchObject({ hostId: w.people[COLDBROOK], status: 'entered', indexTenths: 110 })
    const [line] = got(await readRecord(w.actor, {})).lines
    expect(JSON.stringify(line)).toMatch(/guest of Corin Haldane.*guest of Emrys Coldbrook/)
  })

  it('cannot be the guest of somebody who does not play', async () => {
    const entryId = (await guest()).id
    const answer = await changeHost(w.actor, { ...(await at()), entryId, hostId: w.people[TREVENNOR]! })
    expect(answer).toMatchObject({ ok: false, code: 'no-host', faults: [{ place: 'hostId' }] })
  })

  it('is known as one of this day when added again', async () => {
    const typed = { ...GUEST, hostId: w.people[HALDANE]! }
    const asked = await enterGuest(w.actor, { ...(await at()), ...typed })
    expect(asked).toMatchObject({
      ok: false,
      code: 'same-name',
      faults: [{ sentence: 'Sorley Maddock, guest, entered on this day already.' }],
    })
    const already = {
      ok: false,
      code: 'entered-already',
      sentence: 'Sorley Maddock is entered on this day already, as the guest of Coldbrook.',
    }
    expect(await enterGuest(w.actor, { ...(await at()), ...typed, namesake: 'same' })).toMatchObject(already)
    const { personId } = await guest()
    // Also where the host that was chosen does not play: the entry is what there is to know.
    const hostId = w.people[TREVENNOR]!
    const known = await enterKnownGuest(w.actor, { ...(await at()), personId, hostId, claimedTenths: null })
    expect(known).toMatchObject(already)
  })
})

describe('freezing a small field', () => {
  // Rules of Handicapping 2024, Appendix C, Clarification C/1: 100 % for fewer than 30 individuals.
  it('asks once, with what it is about, and freezes when told so', async () => {
    const asked = await freezeHandicaps(w.actor, { ...(await at()), fieldSizeSeen: 0 })
    expect(asked).toMatchObject({ ok: false, code: 'field-size' })
    expect(asked.ok ? '' : asked.faults[0]?.sentence).toMatch(/was called with 95 %\. With 3 entered it is 100 %/)
    expect((await record()).status).toBe('called')
    got(await freezeHandicaps(w.actor, { ...(await at()), fieldSizeSeen: 3 }))
    expect((await record()).status).toBe('frozen')
  })
})
