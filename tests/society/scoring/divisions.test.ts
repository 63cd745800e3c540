// Promise: a division called at the desk rests on what was frozen, has places of its own on the board and on the sheet, and
// goes out in the day file; its prize is won inside it, and an answer chosen for a card is carried out whole or not at all.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { rulingsInForce } from '@/lib/boards/current-card'
import { cardsAsTheyStand } from '@/lib/boards/day-of-record'
import { rowsOfDivision } from '@/lib/boards/divisions'
import { resultSheetOf } from '@/lib/boards/result-sheet'
import type { CompetitionInput } from '@/lib/facts/commands'
import { parseDayFile } from '@/lib/facts/day-file'
import type { EntryId } from '@/lib/facts/ids'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { changeDay } from '@/lib/society/change-day'
import { keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { keepPerson, memberList } from '@/lib/society/keep-person'
import { ruleByChoice } from '@/lib/society/rule-by-choice'
import { ownBook } from '../../setup/copy'
import { asId } from '../../setup/ids'
import { world } from '../setup/world'
import { type DayInPlay, got, Phone, published } from './day-in-play'

const cup: CompetitionInput = {
  name: 'Heron Cup',
  format: 'stableford',
  terms: {
    allowance: 95,
    allowanceFrom: 'published',
    ties: { ...PUBLISHED_COUNTBACK, steps: [...PUBLISHED_COUNTBACK.steps, { kind: 'lot', seed: 7 }] },
    guests: 'guest-prize-only',
    onePrize: 'by-value',
    divisions: [
      { id: 'seniors', name: 'Seniors', group: 'senior' },
      { id: 'women', name: 'Women', gender: 'women', handicapTo: 20 },
      { id: 'guests', name: 'Guests', guests: 'only' },
    ],
  },
  prizes: [
    { name: 'The cup', place: 1, eligible: 'members', valuePence: 1000 },
    { name: 'Best senior', place: 1, eligible: 'members', valuePence: 4000, division: 'seniors' },
  ],
}

let day: Omit<DayInPlay, 'close'>
let close: () => Promise<void>

beforeAll(async () => {
  close = (await ownBook()).close
  const w = await world()
  const members = got(await memberList(w.actor))
  for (const name of ['Coldbrook', 'Trevennor']) {
    const { personId, firstName, familyName, gender, kind, handicapSource } = members.find(
      (one) => one.familyName === name,
    )!
    const person = { personId, firstName, familyName, gender, kind, handicapSource, indexTenths: null }
    got(await keepPerson(w.actor, { ...person, labels: ['Senior'] }))
  }
  day = await published(w, 'fernbrake', { competitions: [cup] })
  for (const group of [1, 2])
    for (const [at, entryId] of day.players(group).entries()) {
      const scores = Array.from({ length: 18 }, (_, hole) => (hole < at + group ? 5 : 4))
      got(await keyCard(day.w.actor, { dayId: day.dayId, cardId: asId(day.cardOf(asId(entryId))), scores }))
    }
})
afterAll(() => close())

const at = new Date('2031-06-14T15:00:00Z')
const board = async () => boardOf(await day.record(), at).competitions[0]!
const familyOf = (name: string) => name.split(' ').at(-1)

describe('a division', () => {
  it('holds whom its conditions name, in the order of the board, with places from one', async () => {
    const shown = await board()
    const all = shown.rows.map((row) => row.entrant)
    const places = (id: string) =>
      rowsOfDivision(shown, id).map((row) => [familyOf(row.name), row.place, row.score] as const)
    expect(shown.divisions?.map((one) => [one.name, one.sentence])).toEqual([
      ['Seniors', 'Everybody marked “senior”.'],
      ['Women', 'Women with a playing handicap of 20 or less.'],
      ['Guests', 'Guests.'],
    ])
    expect(places('seniors').map(([name]) => name)).toEqual(
      shown.rows.map((row) => familyOf(row.name)).filter((name) => name === 'Coldbrook' || name === 'Trevennor'),
    )
    expect(places('seniors').map(([, place]) => place)).toEqual([1, 2])
    expect(places('guests').map(([name, place]) => [name, place])).toEqual([['Rushgate', 1]])
    expect(rowsOfDivision(shown, 'women').every((row) => (row.playingHandicap ?? 99) <= 20)).toBe(true)
    expect(rowsOfDivision(shown, 'none such').map((row) => row.entrant)).toEqual(all)
  })

  it('rests on the words frozen into the day', async () => {
    const { w } = day
    const before = (await board()).divisions
    const coldbrook = got(await memberList(w.actor)).find((one) => one.familyName === 'Coldbrook')!
    expect(coldbrook.labels).toEqual(['senior'])
    const { personId, firstName, familyName, gender, kind, handicapSource } = coldbrook
    const person = { personId, firstName, familyName, gender, kind, handicapSource, indexTenths: null }
    got(await keepPerson(w.actor, { ...person, labels: [] }))
    expect((await board()).divisions).toEqual(before)
    // Kept by somebody who says nothing of words, they stay as they are.
    got(await keepPerson(w.actor, person))
    expect(got(await memberList(w.actor)).find((one) => one.familyName === 'Coldbrook')?.labels).toEqual([])
  })

  it('gives its prize inside itself, most valuable first, and the sheet keeps all of it', async () => {
    const sheet = resultSheetOf(await day.record(), { number: 1, reason: null, by: 'Petra Ashgill', at })
    const shown = await board()
    const senior = rowsOfDivision(shown, 'seniors')[0]!
    const cupGoesTo = shown.rows.find((row) => row.note === null && row.entrant !== senior.entrant)!
    expect(sheet.prizes.map((prize) => [prize.name, prize.winner, prize.division])).toEqual([
      ['The cup', cupGoesTo.name, undefined],
      ['Best senior', senior.name, 'Seniors'],
    ])
    expect(sheet.prizes[1]?.working?.at(-1)?.sentence).toBe('Wins it.')
    expect(sheet.prizeRule).toContain('most valuable')
    expect(JSON.parse(JSON.stringify(sheet)).board.competitions[0].divisions).toEqual(shown.divisions)
  })

  it('goes out in the day file, which reads back to the same divisions', async () => {
    const { dayFile } = got(await dayFileOf(day.w.actor, day.dayId))
    const read = parseDayFile(dayFile)
    if (!read.ok) throw new Error(JSON.stringify(read))
    expect(read.value.competitions[0]?.divisions).toEqual(cup.terms.divisions)
    expect(read.value.players.filter((one) => one.groups?.includes('senior'))).toHaveLength(2)
  })

  it('without a name of its own, or with a prize for no division, is refused in its place', async () => {
    const proposal = got(await proposeDay(day.w.actor, day.w.seasonId))
    const one = { ...cup, name: 'Other' }
    const twice = [...cup.terms.divisions!, { id: 'seniors-2', name: 'seniors', handicapFrom: 9, handicapTo: 3 }]
    const bad = await callDay(day.w.actor, {
      ...proposal,
      competitions: [
        { ...one, terms: { ...one.terms, divisions: twice } },
        { ...one, name: 'Third', terms: { ...one.terms, divisions: [] } },
      ],
    })
    expect(bad).toMatchObject({ ok: false, code: 'not-understood' })
    if (!bad.ok)
      expect(bad.faults.map((fault) => fault.place)).toEqual([
        'competitions[0].terms.divisions[3].handicapTo',
        'competitions[0].terms.divisions[3].name',
        'competitions[1].prizes[1].division',
      ])
  })

  it('is frozen with the terms; its prizes are not', async () => {
    const record = await day.record()
    const proposal = got(await proposeDay(day.w.actor, day.w.seasonId))
    const asked = (competition: CompetitionInput) =>
      changeDay(day.w.actor, {
        dayId: day.dayId,
        version: record.version,
        day: {
          ...proposal,
          name: record.name,
          date: record.date,
          entriesCloseOn: null,
          competitions: [competition],
        },
      })
    const { divisions: _, ...without } = cup.terms
    expect(await asked({ ...cup, terms: without, prizes: [] })).toMatchObject({ ok: false, code: 'frozen' })
    expect(await asked({ ...cup, prizes: cup.prizes.slice(0, 1) })).toMatchObject({ ok: true })
  })
})

describe('an answer chosen for a card', () => {
  const base = { hole: null, value: null, writer: null, reason: 'Seen by the marker' }
  const rule = async (entryId: EntryId, over: object) =>
    ruleByChoice(day.w.actor, {
      dayId: day.dayId,
      cardId: asId(day.cardOf(entryId)),
      fault: '',
      choice: '',
      ...base,
      ...over,
    })
  const inForce = async (entryId: EntryId) =>
    rulingsInForce((await day.record()).rulings.filter((one) => one.cardId === day.cardOf(entryId))).map((one) => [
      one.kind,
      one.hole,
      one.value,
    ])

  it('not signed, under the local rule: two strokes on the last hole, and the card stands; sent twice it is one', async () => {
    const [entryId] = day.players(1)
    const answer = { fault: 'not-signed', choice: 'two-strokes' }
    const ruled = got(await rule(asId(entryId!), answer))
    expect(ruled.rulings).toBe(2)
    expect(got(await rule(asId(entryId!), answer))).toMatchObject({ number: ruled.number, rulings: 0 })
    expect(await inForce(asId(entryId!))).toEqual([
      ['penalty-strokes', 18, 2],
      ['card-stands', null, null],
    ])
    const stored = (await day.record()).rulings.at(-1)
    expect(stored).toMatchObject({ clause: 'Model Local Rule L-1', reason: 'Not signed. Seen by the marker' })
  })

  it('started late with hole three: no score on the two before it', async () => {
    const entryId = day.players(1)[1]!
    got(await rule(asId(entryId), { fault: 'started-late', choice: 'no-score-before', hole: 3 }))
    expect(
      cardsAsTheyStand(await day.record())
        .get(entryId)
        ?.scores.slice(0, 4),
    ).toEqual(['x', 'x', 4, 4])
    const first = await rule(asId(entryId), { fault: 'started-late', choice: 'no-score-before', hole: 1 })
    expect(first).toMatchObject({ ok: false, code: 'not-understood' })
  })

  it('a lower score than it was: disqualified, by the Rules', async () => {
    const entryId = day.players(2)[1]!
    got(await rule(asId(entryId), { fault: 'score-lower', choice: 'disqualify' }))
    expect(cardsAsTheyStand(await day.record()).get(entryId)?.outcome).toBe('disqualified')
    expect((await day.record()).rulings.at(-1)?.clause).toBe('Rules of Golf 3.3b(3)')
  })

  it('two cards for one player: the version of one writer counts on every hole on which they differ', async () => {
    const [entryId, , marker] = day.players(2)
    const phone = new Phone(day, 2, marker!).score(asId(entryId!), 4, 7).score(asId(entryId!), 9, 3)
    await phone.send()
    const before = cardsAsTheyStand(await day.record()).get(entryId!)!
    expect(before.notAgreed).toEqual([4, 9])
    const nobody = await rule(asId(entryId!), { fault: 'two-cards', choice: 'certified', writer: 'nobody' })
    expect(nobody).toMatchObject({ ok: false, code: 'not-understood' })
    got(await rule(asId(entryId!), { fault: 'two-cards', choice: 'certified', writer: marker }))
    const after = cardsAsTheyStand(await day.record()).get(entryId!)!
    expect([after.notAgreed, after.scores[3], after.scores[8]]).toEqual([[], 7, 3])
  })

  it.each([
    [{ fault: 'wrong-total', choice: 'correct' }],
    [{ fault: 'hole-missing', choice: 'no-return' }],
    [{ fault: 'score-higher', choice: 'stands' }],
    [{ fault: 'handicap-wrong', choice: 'right-handicap' }],
    [{ fault: 'croquet', choice: 'stands' }],
  ])('%j without what it needs changes nothing', async (answer) => {
    const before = (await day.record()).rulings.length
    expect(await rule(asId(day.players(1)[3]!), answer)).toMatchObject({ ok: false, code: 'not-understood' })
    expect((await day.record()).rulings).toHaveLength(before)
  })
})
