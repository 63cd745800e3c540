// Promise: what a side on one ball plays off is said with whose handicaps and how they come together, before the freeze and
// after it, on the start sheet too; drives that are short are named at the close; team-mates who meet are named until they are
// paired anew; two groups on one hole of a shotgun start are told apart. The figures by hand: Rules of Handicapping 2024,
// Appendix C (foursomes 50 % of the combined course handicap), 6.1a for a course handicap.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { drivesLacking } from '@/app/card/_phone/side-ball'
import { boardOf } from '@/lib/boards/board'
import { drivesShort } from '@/lib/boards/drives-short'
import { groupPack } from '@/lib/boards/group-pack'
import { returnsOf } from '@/lib/boards/returns'
import { sideHandicapsOf } from '@/lib/boards/side-handicaps'
import { startSheetOf } from '@/lib/boards/start-sheet'
import { teamMatesPaired } from '@/lib/boards/team-mates'
import type { CompetitionInput } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId } from '@/lib/facts/ids'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { arrangePairings } from '@/lib/society/arrange-pairings'
import { arrangeTeams } from '@/lib/society/arrange-teams'
import { changeHandicap } from '@/lib/society/change-handicap'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { keyBall } from '@/lib/society/key-ball'
import { arrangeGroups } from '@/lib/society/make-draw'
import { publishStart } from '@/lib/society/publish-start'
import { readDayRecord } from '@/lib/store/day-record'
import { today } from '@/lib/store/settings'
import { ownBook } from '../../setup/copy'
import { aDay, got, type World, world } from './world'

type Terms = CompetitionInput['terms']
const one = (name: string, format: string, allowance: Terms['allowance'], more: Partial<Terms> = {}) => ({
  name,
  format,
  terms: {
    allowance,
    allowanceFrom: 'house-choice' as const,
    allowanceReason: 'As always',
    ties: PUBLISHED_COUNTBACK,
    guests: 'guest-prize-only' as const,
    ...more,
  },
  prizes: [],
})

let own: Awaited<ReturnType<typeof ownBook>>
let w: World
beforeAll(async () => {
  own = await ownBook()
  w = await world()
})
afterAll(() => own.close())

const record = async (dayId: DayId) => (await readDayRecord({ societyId: w.actor.societyId, dayId }))!
const at = async (dayId: DayId) => ({ dayId, version: (await record(dayId)).version })

/** Entered and put into groups by family name. */
async function day(over: object, ...groups: readonly (readonly string[])[]) {
  const { dayId } = await aDay(w, { entriesCloseOn: null, ...over })
  got(await enterPlayers(w.actor, { ...(await at(dayId)), enter: w.people.map((personId) => ({ personId })) }))
  const { entries } = await record(dayId)
  const idOf = (name: string) => entries.find((entry) => entry.familyName === name)!.id
  const names = groups.map((group) => ({ entryIds: group.map(idOf) }))
  got(await arrangeGroups(w.actor, { ...(await at(dayId)), groups: names }))
  return { dayId, idOf }
}
const FIRST = ['Haldane', 'Thackerstone', 'Coldbrook', 'Trevennor']
const SECOND = ['Tarrablane', 'Holmgarth', 'Storrey', 'Ashgill']

describe('the handicap of a side', () => {
  it('is shown with its making, before the freeze, after it, and on the start sheet', async () => {
    const { dayId } = await day({ competitions: [one('Quaich', 'foursomes-stableford', 50)] }, FIRST, SECOND)
    const first = async () => sideHandicapsOf(await record(dayId))[0]!.sides[0]!
    // (3.1 × 125 ÷ 113 − 2.8 + 17.3 × 125 ÷ 113 − 2.8) ÷ 2 = 8.48
    expect(await first()).toMatchObject({
      name: 'Haldane and Thackerstone',
      playingHandicap: 8,
      sentence: 'Haldane 1 and Thackerstone 16; 50 %: 8.48.',
    })
    got(await freezeHandicaps(w.actor, await at(dayId)))
    const change = { source: 'society' as const, from: today(new Date()), reason: 'Two good cards' }
    got(await changeHandicap(w.actor, { personId: w.people[0]!, indexTenths: 120, ...change }))
    expect((await first()).playingHandicap).toBe(8)
    const [sheet] = startSheetOf(await record(dayId), { withCodes: false }).groups
    expect(sheet!.players.slice(0, 2).map(({ playing }) => playing)).toEqual([
      [{ competition: 'Quaich', playingHandicap: 8 }],
      [{ competition: 'Quaich', playingHandicap: 8 }],
    ])
    got(await changeHandicap(w.actor, { personId: w.people[0]!, indexTenths: 31, ...change }))
  })

  it('is divided where the terms divide it', async () => {
    const texas = one('Texas', 'scramble-4', [25, 20, 15, 10], { dividedBy: 10 })
    const { dayId } = await day({ competitions: [texas] }, FIRST, SECOND)
    expect(sideHandicapsOf(await record(dayId))[0]!.sides[0]!.sentence).toMatch(/; added up and divided by 10: /)
  })
})

describe('drives', () => {
  it('that are short are named by side and player, with the holes that are open', async () => {
    const texas = one('Texas', 'scramble-4', [25, 20, 15, 10], { minimumDrives: 4 })
    const { dayId, idOf } = await day({ competitions: [texas] }, FIRST, SECOND)
    got(await freezeHandicaps(w.actor, await at(dayId)))
    got(await publishStart(w.actor, await at(dayId)))
    const [side] = (await record(dayId)).competitions[0]!.sides
    const drives = Array.from({ length: 18 }, (_, hole) => idOf(FIRST[hole % 3]!))
    got(await keyBall(w.actor, { dayId, sideId: side!.id, drives }))
    expect(drivesShort(await record(dayId))[0]).toBe(
      'Texas, Haldane, Thackerstone, Coldbrook and Trevennor: Trevennor 4 needed, 0 taken.',
    )
    expect(drivesShort(await record(dayId))[1]).toContain('On 18 of the holes no drive is written.')

    // Said on the side's card at the desk before it is accepted, which is not done with the others in one press.
    const card = (await record(dayId)).cards.find((one) => side!.entryIds.includes(one.entryId))!
    const scores = Array<number>(18).fill(4)
    got(await keyCard(w.actor, { dayId, cardId: card.id, scores, signed: { player: true, marker: true } }))
    const handedIn = async () =>
      returnsOf(await record(dayId), 'UTC')
        .groups.flatMap((group) => group.cards)
        .find((one) => one.cardId === card.id)!
    expect(await handedIn()).toMatchObject({
      line: 'handed in, too few drives',
      isReady: false,
      drivesShort: ['Texas: Trevennor 4 needed, 0 taken.'],
    })
    // And on the phone before anybody signs.
    const day0 = await record(dayId)
    const group = day0.groups.find((one) => one.entryIds.includes(card.entryId))!
    expect(drivesLacking(groupPack(day0, group).balls![0]!)).toMatch(
      /^Too few drives are written: .*Trevennor 0 of 4\.$/,
    )

    // While the day is open the board says what is wanted, the sheet of the closed day what was too few.
    const drivesOf = (status: DayRecord['status']) =>
      boardOf({ ...day0, status }, new Date()).competitions[0]!.rows.find((row) => row.entrant === side!.id)!.drives!
        .sentence
    expect(drivesOf('in-play')).not.toContain('Too few')
    expect(drivesOf('closed')).toMatch(/ Too few: Trevennor 0 of 4\.$/)

    got(
      await keyBall(w.actor, {
        dayId,
        sideId: side!.id,
        drives: Array.from({ length: 18 }, (_, hole) => (hole === 17 ? null : idOf(FIRST[hole % 4]!))),
      }),
    )
    expect(await handedIn()).toMatchObject({ line: 'handed in', isReady: true, drivesShort: [] })
  })
})

describe('teams made after the draw', () => {
  it('leave team-mates paired, said until they are paired anew; every match is on the start sheet', async () => {
    const { dayId, idOf } = await day({ competitions: [one('Singles', 'match', 100)] }, FIRST, SECOND)
    expect(teamMatesPaired(await record(dayId))).toEqual([])
    const teams = [
      { name: 'Heath', entryIds: ['Haldane', 'Thackerstone', 'Tarrablane', 'Storrey'].map(idOf) },
      { name: 'Links', entryIds: ['Coldbrook', 'Trevennor', 'Holmgarth', 'Ashgill'].map(idOf) },
    ]
    got(await arrangeTeams(w.actor, { ...(await at(dayId)), teams }))
    const [paired] = teamMatesPaired(await record(dayId))
    expect(paired!.sentences).toEqual([
      'Haldane and Thackerstone are all of Heath: their match in Singles counts for no team.',
      'Coldbrook and Trevennor are all of Links: their match in Singles counts for no team.',
    ])
    const { competitionId } = paired!
    got(await arrangePairings(w.actor, { ...(await at(dayId)), competitionId, pairings: null }))
    expect(teamMatesPaired(await record(dayId))).toEqual([])
    const [sheet] = startSheetOf(await record(dayId), { withCodes: false }).groups
    expect(sheet!.players[0]!.side).toBe('against Coldbrook')
  })
})

describe('a shotgun start', () => {
  it('tells two groups on one hole apart on sheet, board and phone', async () => {
    const shotgun = { startKind: 'shotgun' as const, competitions: [one('Medal', 'medal', 100)] }
    const { dayId, idOf } = await day(shotgun, FIRST, SECOND)
    const groups = [FIRST, SECOND.slice(0, 2), SECOND.slice(2)].map((group, place) => ({
      entryIds: group.map(idOf),
      startHole: place < 2 ? 1 : 7,
    }))
    got(await arrangeGroups(w.actor, { ...(await at(dayId)), groups }))
    got(await freezeHandicaps(w.actor, await at(dayId)))
    got(await publishStart(w.actor, await at(dayId)))
    const now = await record(dayId)
    expect(startSheetOf(now, { withCodes: false }).groups.map(({ startsAt }) => startsAt)).toEqual(['1A', '1B', '7'])
    expect(now.groups.map((group) => groupPack(now, group).group.startsAt)).toEqual(['1A', '1B', undefined])
  })
})
