// Promise: a format of the society's own, a maximum and a handicap limit are called at the desk, counted from the cards,
// and stand in words on the board, the sheet and in the day file; nonsense is refused in its place.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { startSheetOf } from '@/lib/boards/start-sheet'
import type { CompetitionInput } from '@/lib/facts/commands'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got } from './day-in-play'

type Terms = CompetitionInput['terms']
type Custom = NonNullable<Terms['custom']>

const terms = (more: Partial<Terms>): Terms => ({
  allowance: 100,
  allowanceFrom: 'house-choice',
  allowanceReason: 'Voted at the annual meeting',
  ties: PUBLISHED_COUNTBACK,
  guests: 'guest-prize-only',
  ...more,
})

/** Of two partners the better gross twice and the other once. */
const better: Custom = {
  side: { from: 2, to: 2 },
  ball: 'own',
  strokes: { kind: 'none' },
  value: { kind: 'strokes' },
  count: { kind: 'best', take: [2, 1] },
}

const competitions: CompetitionInput[] = [
  { name: 'Gannet Jug', format: 'Two and one', terms: terms({ custom: better, allowance: 0 }), prizes: [] },
  {
    name: 'Tern Cup',
    format: 'maximum-score',
    terms: terms({ maximum: { kind: 'fixed', strokes: 7 }, handicapLimit: { men: 12, women: 20 } }),
    prizes: [],
  },
]

let day: DayInPlay

beforeAll(async () => {
  day = await dayInPlay({ competitions })
  for (const group of [1, 2])
    for (const [at, entryId] of day.players(group).entries()) {
      const scores = Array.from({ length: 18 }, (_, hole) => (at === 0 && hole === 0 ? 11 : at % 2 === 0 ? 4 : 5))
      got(await keyCard(day.w.actor, { dayId: day.dayId, cardId: asId(day.cardOf(asId(entryId))), scores }))
    }
})
afterAll(() => day.close())

const board = async () => boardOf(await day.record(), new Date('2031-06-14T15:00:00Z'))

describe('a format of the society’s own', () => {
  it('is drawn in its sides and counted by its five choices', async () => {
    const own = (await board()).competitions[0]!
    const scores = own.rows.map((row) => row.score)
    // Fours against fives: 2 × 4 + 5 a hole. Where the four became an eleven, the five counts twice there.
    const usual = 18 * (2 * 4 + 5)
    const spoilt = 17 * (2 * 4 + 5) + (2 * 5 + 11)
    expect(own.rows.map((row) => row.entryIds.length)).toEqual([2, 2, 2, 2])
    expect(scores).toEqual([usual, usual, spoilt, spoilt])
  })

  it('stands by its name, read back, on the board and on the start sheet', async () => {
    const own = (await board()).competitions[0]!
    expect(own.formatName).toBe('Two and one')
    expect(own.moreTerms).toEqual([
      'Sides of two, each player with an own ball; no handicap counts; every stroke counts; of the side the best score twice and the second once count.',
    ])
    const sheet = startSheetOf(await day.record(), { withCodes: false })
    expect(sheet.competitions[0]).toMatchObject({ formatName: 'Two and one', moreTerms: own.moreTerms })
  })

  it('goes out in the day file with its choices', async () => {
    const { dayFile } = got(await dayFileOf(day.w.actor, day.dayId))
    const [own] = (dayFile as { competitions: { format: unknown }[] }).competitions
    expect(own?.format).toMatchObject({ name: 'Two and one', count: { take: [2, 1] } })
  })

  it('is proposed again for the next day, as it was', async () => {
    const next = got(await proposeDay(day.w.actor, day.w.seasonId))
    expect(next.competitions[0]).toMatchObject({ format: 'Two and one', terms: { custom: better } })
  })
})

describe('a maximum and a limit', () => {
  it('count on the board and stand there in words', async () => {
    const cup = (await board()).competitions[1]!
    expect(cup.moreTerms).toEqual([
      'No hole counts more than seven strokes.',
      'No playing handicap counts above 12 for men and 20 for women.',
    ])
    const gender = new Map((await day.record()).entries.map((entry) => [entry.id, entry.gender]))
    const handicaps = cup.rows.map((row) => [gender.get(row.entryIds[0]!), row.playingHandicap ?? 0] as const)
    expect(Math.max(...handicaps.flatMap(([who, figure]) => (who === 'men' ? [figure] : [])))).toBe(12)
    // The par of the women's tee is one higher, and in stroke play that stroke comes on top: RoH 6.2b.
    expect(Math.max(...handicaps.flatMap(([who, figure]) => (who === 'women' ? [figure] : [])))).toBe(20 + 1)
    const first = cup.rows.find((row) => row.entryIds[0] === day.players(1)[0])!
    expect(first.score).toBe(7 + 17 * 4 - (first.playingHandicap ?? 0))
  })
})

describe('calling a day is refused', () => {
  const asked = async (one: CompetitionInput) => {
    const proposal = got(await proposeDay(day.w.actor, day.w.seasonId))
    const answer = await callDay(day.w.actor, { ...proposal, entriesCloseOn: null, competitions: [one] })
    return answer.ok ? [] : answer.faults
  }
  const own = (custom: Custom, format = 'Ours'): CompetitionInput => ({
    name: 'Cup',
    format,
    terms: terms({ custom }),
    prizes: [],
  })
  const listed = (format: string, more: Partial<Terms> = {}): CompetitionInput => ({
    name: 'Cup',
    format,
    terms: terms(more),
    prizes: [],
  })

  it.each([
    [
      'one ball with handicaps each',
      own({ ...better, ball: 'one', strokes: { kind: 'each-player', off: 'own' }, count: { kind: 'best', take: [1] } }),
      'terms.custom.strokes',
      'One ball has one handicap, for the side.',
    ],
    [
      'three scores of two',
      own({ ...better, count: { kind: 'best', take: [1, 1, 1] } }),
      'terms.custom.count',
      'No more than 2 can count on a hole.',
    ],
    [
      'a name that means something else',
      own(better, 'medal'),
      'format',
      'Medal is on the list already: give your own format another name.',
    ],
    [
      'double points without holes',
      listed('double-point-stableford'),
      'terms.namedHoles',
      'Name the holes that count double.',
    ],
  ] as const)('%s', async (_, one, place, sentence) => {
    expect(await asked(one)).toEqual([{ place: `competitions[0].${place}`, sentence }])
  })
})
