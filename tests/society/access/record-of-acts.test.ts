// Promise: what changes the book leaves a line in the record, written with the change itself; the line tells who, from
// which network, before and after, and no secret; nobody alters it; every officer reads it, filtered, and no other society.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { actInWords } from '@/lib/boards/record-of-acts'
import { changedInWords, shortened, withoutSecrets } from '@/lib/facts/act-record'
import type { DayId } from '@/lib/facts/ids'
import { ACTS, ACTS_WITHOUT_DUTY, type Act } from '@/lib/society/acts'
import { changeDay } from '@/lib/society/change-day'
import { changeHandicap } from '@/lib/society/change-handicap'
import { enterPlayers } from '@/lib/society/enter-players'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { publishStart, renewGroupLink } from '@/lib/society/publish-start'
import { exportRecord, readRecord } from '@/lib/society/read-record'
import { toldMeanwhile } from '@/lib/society/told-meanwhile'
import type { Book } from '@/lib/store/client'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from '../setup/world'

let close: () => Promise<void>
let book: Book
let w: World
let dayId: DayId
beforeAll(async () => {
  const own = await ownBook()
  close = own.close
  book = own.book
  w = await world()
  dayId = (await aDay(w)).dayId
})
afterAll(() => close())

const acting = () => ({ ...w.actor, from: '203.0.113.77' })
const day = async () => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const last = () => book.actRecord.findFirstOrThrow({ orderBy: { id: 'desc' } })

/** Acts that change nothing, or whose every change is a fact of its own already. */
const WITHOUT_RECORD: readonly Act[] = [
  'read-desk',
  'read-record',
  'read-group',
  'read-own-page',
  'read-board',
  'sign-card',
]

describe('every act', () => {
  const folder = join(process.cwd(), 'lib/society')
  const sources = readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && file !== 'acts.ts')
    .map((file) => readFileSync(join(folder, file), 'utf8'))
  const writes = /\b(recordAct|changeOfDay|recordOfAccount\w*|recordOf\w+)\s*[(<]/

  it.each(Object.keys(ACTS) as Act[])('%s that changes something is recorded where it is done', (act) => {
    if (WITHOUT_RECORD.includes(act)) return
    const done = sources.filter((source) => source.includes(`'${act}'`))
    // An officer's own account is recorded by the store, in each society of that officer.
    if (act === 'keep-account') return expect(sources.some((source) => source.includes('recordOfAccount'))).toBe(true)
    expect(done.length, `no use case asks for ${act}`).toBeGreaterThan(0)
    expect(
      done.some((source) => writes.test(source)),
      `${act} writes no record`,
    ).toBe(true)
  })

  it('is one act under one name', () => {
    for (const act of Object.keys(ACTS)) expect(actInWords(act)).not.toContain(' or ')
  })

  it('has its words', () => {
    for (const act of [...Object.keys(ACTS), ...ACTS_WITHOUT_DUTY]) expect(actInWords(act)).toMatch(/^[a-z][a-z ]+$/)
  })
})

describe('a line of the record', () => {
  it('tells what it was and what it is, with the network and the new version', async () => {
    const count = await book.actRecord.count()
    got(await enterPlayers(acting(), { dayId, version: 1, enter: w.people.map((personId) => ({ personId })) }))
    expect(await book.actRecord.count()).toBe(count + 1)
    const line = await last()
    expect(line).toMatchObject({ act: 'enter-player', area: 'entries', subject: 'Spring Cup', from: '203.0.113.0/24' })
    expect(JSON.parse(line.after!)).toMatchObject({ 'Jago Trevennor': 'entered, Yellow', version: 2 })
    const figure = { personId: w.people[2]!, indexTenths: 199, source: 'home-club' as const, from: '2026-01-01' }
    await changeHandicap(acting(), { ...figure, reason: 'Mail of jago@example.org' })
    const { from: _, ...today } = figure
    got(
      await changeHandicap(acting(), {
        ...today,
        from: new Date().toISOString().slice(0, 10),
        reason: 'Told by jago@example.org',
      }),
    )
    const changed = await last()
    expect(changed).toMatchObject({ act: 'change-handicap', area: 'handicaps', subject: 'Jago Trevennor' })
    expect(JSON.parse(changed.before!)).toMatchObject({ Handicap: '20.7' })
    expect(JSON.parse(changed.after!)).toMatchObject({ Handicap: '19.9', Reason: 'Told by (e-mail address)' })
  })

  it('is not written by a refusal, nor twice by a repeat', async () => {
    const count = await book.actRecord.count()
    expect((await freezeHandicaps(acting(), { dayId, version: 1 })).ok).toBe(false)
    expect(await book.actRecord.count()).toBe(count)
    const both = await Promise.all([1, 2].map(() => freezeHandicaps(acting(), { dayId, version: 2 })))
    expect(both.filter((one) => one.ok)).toHaveLength(1)
    expect(await book.actRecord.count()).toBe(count + 1)
  })

  it('cannot be altered or taken away', async () => {
    await expect(book.actRecord.updateMany({ data: { actorName: 'Nobody' } })).rejects.toThrow()
    await expect(book.actRecord.deleteMany()).rejects.toThrow()
  })

  it('tells of a renewed link that it was renewed, and not the link', async () => {
    got(await makeDraw(acting(), { dayId, version: 3, way: 'random', groupSize: 4, seed: 1 }))
    got(await publishStart(acting(), { dayId, version: 4 }))
    const group = (await day()).groups[0]!
    const fresh = got(await renewGroupLink(acting(), { dayId, groupId: group.id }))
    const whole = JSON.stringify(await book.actRecord.findMany())
    for (const secret of [fresh.linkKey, fresh.code, group.linkKey, group.code]) expect(whole).not.toContain(secret)
  })
})

describe('the later of two desks', () => {
  it('is told who moved whom', async () => {
    const before = await day()
    const [one, two] = before.groups.map((group) => [...group.entryIds])
    const [moved] = one!.splice(0, 1)
    const nora = { ...acting(), name: 'Nora Quarrington' }
    got(
      await arrangeGroups(nora, {
        dayId,
        version: before.version,
        groups: [{ entryIds: one! }, { entryIds: [...two!.slice(0, 3), moved!] }],
      }),
    )
    const told = got(await toldMeanwhile(w.actor, { subjectId: dayId, version: before.version }))
    expect(told).toHaveLength(1)
    const name = before.entries.find((entry) => entry.id === moved)!
    expect(told[0]).toMatch(/^Nora Quarrington changed the draw just now\. /)
    expect(told[0]).toContain(`${name.firstName} ${name.familyName}: group 2`)
    expect(got(await toldMeanwhile(w.actor, { subjectId: dayId, version: before.version + 1 }))).toEqual([])
  })
})

describe('the record', () => {
  it('is read by every officer, by area, person, act and day, and taken as a table', async () => {
    const committee = { ...w.actor, duties: ['committee'] as const }
    const all = got(await readRecord(committee, {}))
    expect(all.lines[0]!.id).toBeGreaterThan(all.lines.at(-1)!.id)
    const entries = got(await readRecord(committee, { area: 'entries' })).lines
    expect(new Set(entries.map((line) => line.area))).toEqual(new Set(['entries']))
    expect(got(await readRecord(committee, { who: 'Nora Quarrington' })).lines.map((line) => line.act)).toEqual([
      'make-draw',
    ])
    expect(got(await readRecord(committee, { until: '2020-01-01' })).lines).toEqual([])
    expect(got(await readRecord(committee, { area: 'nonsense', olderThan: 'x' })).lines.length).toBe(all.lines.length)
    const { csv } = got(await exportRecord(committee, { act: 'change-handicap' }))
    expect(csv.split('\r\n')[1]).toContain('Handicap: 19.9 (was 20.7)')
    expect(await readRecord({ kind: 'anybody' }, {})).toMatchObject({ code: 'not-allowed' })
  })

  it('shows nothing of another society', async () => {
    const far = await world('copsewood')
    expect(JSON.stringify(got(await readRecord(far.actor, {})))).not.toContain('Nora')
    expect(got(await toldMeanwhile(far.actor, { subjectId: dayId, version: 0 }))).toEqual([])
    expect(await changeDay(far.actor, { dayId, version: 6, day: (await aForm()) as never })).toMatchObject({
      ok: false,
    })
  })
  const aForm = async () => {
    const { proposeDay } = await import('@/lib/society/call-day')
    return got(await proposeDay(w.actor, w.seasonId))
  }
})

describe('words without secrets', () => {
  it.each([
    ['write to a.b@example.org, please', 'write to (e-mail address), please'],
    ['key Zk3vQ0m1nB7xYt5LrP9sWd2c ends', 'key (key) ends'],
    ['ring 01632 960 123 tonight', 'ring (telephone number) tonight'],
    ['0b7c1f2e-1111-4222-8333-123456789abc', '0b7c1f2e-1111-4222-8333-123456789abc'],
    ['Group 3, 10:16 from hole 1', 'Group 3, 10:16 from hole 1'],
  ])('%s', (written, kept) => expect(withoutSecrets(written)).toBe(kept))

  it.each([
    ['203.0.113.77', '203.0.113.0/24'],
    ['::ffff:203.0.113.77', '203.0.113.0/24'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1::/48'],
    ['2001:db8::1', '2001:db8:0::/48'],
    ['::1', '0:0:0::/48'],
    ['not an address', null],
    ['', null],
  ])('%s is kept as %s', (address, kept) => expect(shortened(address)).toBe(kept))

  it('only what differs is told', () =>
    expect(changedInWords({ a: 1, b: 2 }, { a: 1, b: 3, c: 4 })).toEqual({ before: { b: 2 }, after: { b: 3, c: 4 } }))
})
