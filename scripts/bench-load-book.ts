// A book with several full days in play at once, entered through the use cases: what the load bench runs on.

import type { CardId, EntryId, PersonId } from '@/lib/facts/ids'
import type { Result } from '../lib/result'
import { callDay, proposeDay } from '../lib/society/call-day'
import { enterPlayers } from '../lib/society/enter-players'
import { foundSociety } from '../lib/society/found-society'
import { freezeHandicaps } from '../lib/society/freeze-handicaps'
import { keepCourse } from '../lib/society/keep-course'
import { keepPerson } from '../lib/society/keep-person'
import { makeDraw } from '../lib/society/make-draw'
import { openSeason } from '../lib/society/open-season'
import { publishStart } from '../lib/society/publish-start'
import { readDayRecord } from '../lib/store/day-record'

export const SOCIETY = 'load'
const PLAYERS = 100

export interface LoadGroup {
  readonly link: string
  readonly entryIds: readonly EntryId[]
  readonly cardIds: readonly CardId[]
}
export interface LoadDay {
  readonly slug: string
  readonly groups: readonly LoadGroup[]
}

function got<T>(result: Result<T>): T {
  if (result.ok) return result.value
  throw new Error(`${result.code}: ${result.sentence} ${JSON.stringify(result.faults)}`)
}

const PARS = [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5]
const INDEXES = [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6]
const holes = PARS.map((par, at) => ({ hole: at + 1, par, strokeIndex: INDEXES[at]!, yards: 300 + at }))

/** Days of a hundred players in 25 groups, unless told otherwise. They lie in the future: the links must not have ended. */
export async function loadBook(days: number, players = PLAYERS): Promise<readonly LoadDay[]> {
  const officer = { name: 'The secretary', email: 'secretary@example.org', password: 'a long enough password' }
  const { societyId, userId } = got(await foundSociety({ name: 'A busy society', slug: SOCIETY, officer }))
  const actor = { kind: 'officer', societyId, userId, name: officer.name, duties: ['secretary'] } as const
  const tee = { name: 'Yellow', gender: 'men' as const, courseRatingTenths: 692, slopeRating: 125, holes }
  got(await keepCourse(actor, { name: 'Aldermoss Park', place: null, tees: [tee] }))
  const { seasonId } = got(await openSeason(actor, { name: '2041', startsOn: '2041-01-01', endsOn: '2041-12-31' }))
  const enter: { personId: PersonId }[] = []
  for (let at = 0; at < players; at++) {
    const kept = await keepPerson(actor, {
      firstName: `Robin${at}`,
      familyName: 'Marlpit',
      gender: 'men',
      kind: 'member',
      handicapSource: 'home-club',
      indexTenths: (at * 37) % 360,
    })
    enter.push({ personId: got(kept).personId })
  }
  const made: LoadDay[] = []
  for (let at = 0; at < days; at++) {
    const proposal = got(await proposeDay(actor, seasonId))
    const date = `2041-06-${String(at + 10)}`
    const competitions = proposal.competitions.slice(0, 1)
    const { dayId, slug } = got(
      await callDay(actor, { ...proposal, name: `Busy Day ${at + 1}`, date, entriesCloseOn: null, competitions }),
    )
    const record = async () => (await readDayRecord({ societyId, dayId }))!
    const version = async () => (await record()).version
    got(await enterPlayers(actor, { dayId, version: await version(), enter }))
    got(await freezeHandicaps(actor, { dayId, version: await version() }))
    got(await makeDraw(actor, { dayId, version: await version(), way: 'entry-order', groupSize: 4, seed: 1 }))
    got(await publishStart(actor, { dayId, version: await version() }))
    const { groups, cards } = await record()
    made.push({
      slug,
      groups: groups.map(({ entryIds, linkKey }) => ({
        link: linkKey,
        entryIds,
        cardIds: entryIds.map((id) => cards.find((card) => card.entryId === id)!.id),
      })),
    })
  }
  return made
}
