// Promise: the terms a house rule answers for (the tees of a side's card, places in a game of groups, points for the parts of a
// match, how an earlier day counts) are chosen on the desk's form, kept with the day, change the result, and go out in its file.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readDayForm } from '@/app/desk/[society]/_day-form/read-day-form'
import { boardOf } from '@/lib/boards/board'
import { dayOfRecord } from '@/lib/boards/day-of-record'
import { type CompetitionInput, callDay } from '@/lib/facts/commands'
import { parseDayFile } from '@/lib/facts/day-file'
import type { DayId } from '@/lib/facts/ids'
import { arrangeSides } from '@/lib/society/arrange-sides'
import { arrangeTeams } from '@/lib/society/arrange-teams'
import { callDay as call, proposeDay } from '@/lib/society/call-day'
import { countDays } from '@/lib/society/count-days'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { readDayRecord } from '@/lib/store/day-record'
import { ownBook } from '../../setup/copy'
import { aDay, type World, world } from '../setup/world'
import { got, over, published } from './day-in-play'

const NOW = new Date('2031-06-14T18:00:00Z')
const AT = 'competitions[0]'

/** What the desk's form sends for one competition, read and checked as the desk does it. */
function fromForm(fields: Record<string, string>): readonly CompetitionInput[] {
  const form = new FormData()
  const day = {
    seasonId: 's',
    name: 'Day',
    date: '2031-06-14',
    courseId: 'c',
    firstTee: '10:00',
    intervalMinutes: '10',
    teeMen: 't',
  }
  for (const [name, value] of Object.entries(day)) form.set(name, value)
  const cup = {
    name: 'Cup',
    'terms.allowance': '100',
    'terms.allowanceReason': 'As always',
    ties: 'countback',
    ...fields,
  }
  for (const [name, value] of Object.entries(cup)) form.set(`${AT}.${name}`, value)
  return callDay.parse(readDayForm(form)).competitions
}

let own: Awaited<ReturnType<typeof ownBook>>
let w: World
beforeAll(async () => {
  own = await ownBook()
  w = await world()
})
afterAll(() => own.close())

const record = async (dayId: DayId) => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const shown = async (dayId: DayId) => boardOf(await record(dayId), NOW).competitions[0]!

async function played(fields: Record<string, string>, scoresOf: (at: number) => readonly number[]) {
  const day = await published(w, 'fernbrake', { entriesCloseOn: null, competitions: fromForm(fields) })
  const { cards } = await record(day.dayId)
  for (const [at, card] of cards.entries())
    got(await keyCard(w.actor, { dayId: day.dayId, cardId: card.id, scores: [...scoresOf(at)] }, NOW))
  return day
}

async function fileAgrees(dayId: DayId) {
  const { dayFile } = got(await dayFileOf(w.actor, dayId))
  expect(got(parseDayFile(JSON.parse(JSON.stringify(dayFile))))).toEqual(dayOfRecord(await record(dayId)))
}

describe('places in skins', () => {
  it('are inside each group until the terms put everybody into one list', async () => {
    const usual = await played({ format: 'skins' }, (at) => over(at))
    const one = await played({ format: 'skins', 'terms.ranking': 'everybody' }, (at) => over(at))
    const firsts = async (dayId: DayId) => (await shown(dayId)).rows.filter(({ place }) => place === 1).length
    expect(await firsts(usual.dayId)).toBeGreaterThan(1)
    const places = (await shown(one.dayId)).rows.map(({ place, score }) => [place, score] as const)
    const scores = places.map(([, score]) => score ?? 0)
    expect(scores).toEqual([...scores].sort((a, b) => b - a))
    expect(places.map(([place]) => place)).toEqual(
      scores.map((score) => 1 + scores.filter((more) => more > score).length),
    )
    expect((await shown(one.dayId)).moreTerms).toContain(
      'Every hole is shared in its group; the places are over everybody.',
    )
    await fileAgrees(one.dayId)
  }, 60_000)
})

describe('a match in parts between teams', () => {
  it('is worth a point a part until the terms count it as one', async () => {
    const points = async (fields: Record<string, string>) => {
      const day = await played({ format: 'three-part-match', ...fields }, (at) => over(at % 2 === 0 ? 2 : 30))
      const { version, groups } = await record(day.dayId)
      const side = (odd: number) => groups.flatMap(({ entryIds }) => entryIds.filter((_, at) => at % 2 === odd))
      const teams = [
        { name: 'Heath', entryIds: [...side(0)] },
        { name: 'Brake', entryIds: [...side(1)] },
      ]
      got(await arrangeTeams(w.actor, { dayId: day.dayId, version, teams }))
      await fileAgrees(day.dayId)
      const board = await shown(day.dayId)
      const halves = board.teams!.reduce((sum, team) => sum + team.halfPoints, 0)
      return { all: halves / 2, matches: board.matches.length, terms: board.moreTerms }
    }
    const parts = await points({})
    const whole = await points({ 'terms.partPoints': 'whole' })
    expect(parts.all).toBe(3 * parts.matches)
    expect(whole.all).toBe(whole.matches)
    expect(whole.terms).toContain('Between teams a match is worth one point, for the whole of it.')
  }, 60_000)
})

describe('the card of a side on different tees', () => {
  // The women's par is one higher on the thirteenth: a five there is one over on the yellow card and level on the red.
  it('is the one with the lowest par until the terms name the tees', async () => {
    const score = async (fields: Record<string, string>) => {
      const day = await published(w, 'fernbrake', {
        entriesCloseOn: null,
        competitions: fromForm({ format: 'foursomes-stableford', 'terms.allowance': '50, 50', ...fields }),
      })
      const before = await record(day.dayId)
      const named = (familyName: string) => before.entries.find((entry) => entry.familyName === familyName)!.id
      const [woman, man] = [named('Tarrablane'), named('Haldane')]
      const left = before.entries.map(({ id }) => id).filter((id) => id !== woman && id !== man)
      const others = [left.slice(0, 2), left.slice(2, 4), left.slice(4)]
      const { version, competitions } = before
      const sides = [[man, woman], ...others].map((side) => [...side])
      got(await arrangeSides(w.actor, { dayId: day.dayId, version, competitionId: competitions[0]!.id, sides }))
      const now = await record(day.dayId)
      const card = now.cards.find(({ entryId }) => entryId === man || entryId === woman)!
      got(await keyCard(w.actor, { dayId: day.dayId, cardId: card.id, scores: over(18) }, NOW))
      await fileAgrees(day.dayId)
      const board = await shown(day.dayId)
      const row = board.rows.find(({ entryIds }) => entryIds.includes(woman))!
      return { level: row.holes[12]!, terms: board.moreTerms, row }
    }
    const usual = await score({})
    const red = await score({ 'terms.sideTee': 'Red, women' })
    expect(usual.terms).toContain(
      'A side on different tees plays to the card with the lowest par of its players’ tees.',
    )
    expect(red.terms).toContain('A side plays to the card of the red tees for women.')
    expect(red.level.value).toBe((usual.level.value ?? 0) + 1)
  }, 60_000)

  it('is refused where the day has no such tees', async () => {
    const proposal = got(await proposeDay(w.actor, w.seasonId))
    const competitions = fromForm({
      format: 'foursomes-stableford',
      'terms.allowance': '50, 50',
      'terms.sideTee': 'Blue, men',
    })
    expect(await call(w.actor, { ...proposal, entriesCloseOn: null, competitions: [...competitions] })).toMatchObject({
      ok: false,
      faults: [{ place: `${AT}.terms.sideTee`, sentence: 'The day has no blue tees for men: choose others.' }],
    })
  })
})

describe('an earlier day of a sum', () => {
  it('counts as it was published until it is counted anew under the terms of this day', async () => {
    const first = await played({ format: 'stableford', 'terms.allowance': '50' }, () => over(18))
    const { dayId } = await aDay(w, { entriesCloseOn: null, competitions: fromForm({ format: 'stableford' }) })
    const enter = (await record(first.dayId)).entries.filter(({ kind }) => kind === 'member')
    const entered = enter.map(({ personId }) => ({ personId }))
    got(await enterPlayers(w.actor, { dayId, version: (await record(dayId)).version, enter: entered }))
    const [cup] = (await record(dayId)).competitions
    const counted = async (recount: DayId[]) => {
      const { version } = await record(dayId)
      got(await countDays(w.actor, { dayId, version, competitionId: cup!.id, dayIds: [first.dayId], recount }))
      await fileAgrees(dayId)
      const board = await shown(dayId)
      const scores = new Map(board.rows.map((row) => [row.name, row.rounds?.[0]?.score ?? null]))
      return { scores, terms: board.moreTerms?.join(' ') ?? '' }
    }
    const published = await counted([])
    const own = new Map((await shown(first.dayId)).rows.map((row) => [row.name, row.score]))
    for (const [name, score] of published.scores) expect([name, score]).toEqual([name, own.get(name)])
    expect(published.terms).toContain('counts as it was published, off 50 % and not 100 %.')
    const anew = await counted([first.dayId])
    expect(anew.scores).not.toEqual(published.scores)
    expect(anew.terms).toContain('is counted anew under the terms of this day, off 100 % and not 50 %.')
    expect((await record(dayId)).competitions[0]!.recountedDayIds).toEqual([first.dayId])
    // And back again.
    expect((await counted([])).scores).toEqual(published.scores)
  }, 60_000)

  it('is refused where its cards are of another ball', async () => {
    const texas = await aDay(w, {
      entriesCloseOn: null,
      competitions: fromForm({ format: 'scramble-4', 'terms.allowance': '25, 20, 15, 10' }),
    })
    const { dayId } = await aDay(w, { entriesCloseOn: null, competitions: fromForm({ format: 'stableford' }) })
    const { version, competitions } = await record(dayId)
    const asked = { dayId, version, competitionId: competitions[0]!.id, dayIds: [texas.dayId], underTheseTerms: true }
    expect(await countDays(w.actor, asked)).toMatchObject({ ok: false, faults: [{ place: 'dayIds[0]' }] })
  })
})
