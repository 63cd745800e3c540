// The season before: a few small days that show what else a society plays. A match between two teams, a scramble with its
// drives, a yellow ball that was lost, and two rounds on one day. Eight play; the cards were keyed at the desk.

import { addDays, momentIn } from '@/lib/facts/calendar'
import type { CompetitionInput } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import { makeTeams } from '@/lib/society/arrange-teams'
import { callAgain } from '@/lib/society/call-again'
import { callDay, proposeCompetition } from '@/lib/society/call-day'
import { closeDay } from '@/lib/society/close-day'
import { endMatch } from '@/lib/society/end-match'
import { enterPlayers } from '@/lib/society/enter-players'
import { keyCard } from '@/lib/society/enter-score'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { courseList } from '@/lib/society/keep-course'
import { keyBall } from '@/lib/society/key-ball'
import { arrangeGroups, makeDraw } from '@/lib/society/make-draw'
import { openSeason } from '@/lib/society/open-season'
import { publishResult } from '@/lib/society/publish-result'
import { publishStart } from '@/lib/society/publish-start'
import { takeCardIn } from '@/lib/society/take-card-in'
import { dayWithKeys } from './day-with-keys'
import { must } from './must'
import { cardsOf } from './play'
import { type Founded, seasonName } from './society'

const EIGHT = ['Ballyfane', 'Wrackham', 'Penhallt', 'Oxenhay', 'Wetherlow', 'Fairclose', 'Delahinch', 'Ashworthy']

interface SmallDay {
  readonly key: string
  readonly name: string
  /** Days from today. */
  readonly offset: number
  readonly course: string
  readonly competitions: readonly { readonly name: string; readonly format: string; readonly drives?: number }[]
  readonly teams?: readonly string[]
}

const DAYS: readonly SmallDay[] = [
  {
    key: 'society-match',
    name: 'Society Match',
    offset: -170,
    course: 'Withenbrook Heath',
    competitions: [
      { name: 'Four-balls', format: 'four-ball-match' },
      { name: 'Singles', format: 'match' },
    ],
    teams: ['The Heath', 'The Brake'],
  },
  {
    key: 'four-ball-scramble',
    name: 'Four-ball Scramble',
    offset: -156,
    course: 'Pellmarsh Court',
    competitions: [{ name: 'Scramble', format: 'scramble-4', drives: 4 }],
  },
  {
    key: 'yellow-ball',
    name: 'Yellow Ball Day',
    offset: -142,
    course: 'Aldermoss Park',
    competitions: [{ name: 'Yellow ball', format: 'yellow-ball' }],
  },
  {
    key: 'two-rounds',
    name: 'Two Rounds, morning',
    offset: -121,
    course: 'Skerrowby Links',
    competitions: [{ name: 'Thirty-six holes', format: 'stableford' }],
  },
]

export async function lastSeason(society: Founded, today: string): Promise<void> {
  const { secretary, people } = society
  const { seasonId } = must(
    await openSeason(secretary, {
      name: seasonName(addDays(today, -360), addDays(today, -90)),
      startsOn: addDays(today, -360),
      endsOn: addDays(today, -90),
    }),
    'the season before',
  )
  const courses = must(await courseList(secretary), 'the courses')
  for (const day of DAYS) {
    const date = addDays(today, day.offset)
    const course = courses.find((one) => one.name === day.course)!
    const tee = (name: string, gender: 'men' | 'women') =>
      course.tees.find((one) => one.name === name && one.gender === gender)?.teeId ?? null
    const { slug, dayId } = must(
      await callDay(
        secretary,
        {
          seasonId,
          name: day.name,
          date,
          courseId: course.courseId,
          firstTee: '09:00',
          intervalMinutes: 10,
          teeMen: tee('Yellow', 'men'),
          teeWomen: tee('Red', 'women'),
          competitions: day.competitions.map((one) => competition(one, date)),
        },
        at(society, date, '00:00'),
      ),
      day.name,
    )
    const asked = { dayId, enter: EIGHT.map((name) => ({ personId: people.get(name)! })) }
    let { version } = must(
      await enterPlayers(secretary, { ...asked, version: 1 }, at(society, date, '00:10')),
      `entries of ${day.name}`,
    )
    if (day.teams) {
      version = must(
        await makeTeams(secretary, { dayId, version, names: [...day.teams], seed: 1987 }),
        `teams of ${day.name}`,
      ).version
      // Two of each team in every group, so that pairs and singles meet there.
      const [heath, brake] = (await record(society, slug)).teams.map((team) => team.entryIds)
      const groups = [0, 2].map((from) => ({
        entryIds: [...heath!.slice(from, from + 2), ...brake!.slice(from, from + 2)],
      }))
      must(
        await arrangeGroups(secretary, { dayId, version, groups }, at(society, date, '00:20')),
        `the draw of ${day.name}`,
      )
    } else
      must(
        await makeDraw(
          secretary,
          { dayId, version, way: 'by-handicap-mixed', groupSize: 4, seed: 1987 },
          at(society, date, '00:20'),
        ),
        `the draw of ${day.name}`,
      )
    await played(society, slug, day.key)
    if (day.key === 'two-rounds') await afternoon(society, slug)
    await closed(society, slug)
  }
}

const at = ({ zone }: Founded, date: string, clock: string) => momentIn(date, clock, zone)

const record = async ({ secretary }: Founded, slug: string): Promise<DayRecord> => dayWithKeys(secretary, slug)

function competition({ name, format, drives }: SmallDay['competitions'][number], date: string): CompetitionInput {
  const proposed = proposeCompetition(format, date, 8)
  return {
    ...proposed,
    name,
    terms: { ...proposed.terms, ...(drives === undefined ? {} : { minimumDrives: drives }) },
  }
}

/** Frozen, published, every card keyed with both signatures and taken in; the story of the day written down. */
async function played(society: Founded, slug: string, key: string): Promise<void> {
  const { secretary } = society
  let day = await record(society, slug)
  const when = at(society, day.date, '16:00')
  const dayId = day.id
  const frozen = must(
    await freezeHandicaps(secretary, { dayId, version: day.version }, at(society, day.date, '00:40')),
    `the freeze of ${slug}`,
  )
  must(await publishStart(secretary, { dayId, version: frozen.version }, at(society, day.date, '01:00')), slug)
  day = await record(society, slug)
  const rounds = cardsOf(day, `last season ${key}`)
  for (const card of day.cards) {
    const scores = [...(rounds.get(card.entryId) ?? [])]
    must(
      await keyCard(secretary, { dayId, cardId: card.id, scores, signed: { player: true, marker: true } }, when),
      `a card of ${slug}`,
    )
    must(await takeCardIn(secretary, { dayId, cardId: card.id }, when), `taking in a card of ${slug}`)
  }
  for (const [at, side] of (day.competitions[0]?.sides ?? []).entries()) {
    const of = { dayId, sideId: side.id }
    // The second side forgot the count: its minimum is not reached.
    if (key === 'four-ball-scramble')
      must(
        await keyBall(
          secretary,
          {
            ...of,
            drives: Array.from({ length: 18 }, (_, hole) => side.entryIds[at === 0 ? hole % 4 : hole % 3] ?? null),
          },
          when,
        ),
        'the drives',
      )
    if (key === 'yellow-ball' && at === 0) must(await keyBall(secretary, { ...of, ballLostOn: 14 }, when), 'the ball')
  }
  const [last] = day.competitions[1]?.pairings.slice(-1) ?? []
  if (key === 'society-match' && last)
    must(
      await endMatch(
        secretary,
        {
          dayId,
          version: day.version,
          competitionId: day.competitions[1]!.id,
          matchId: last.id,
          ending: { concededBy: 'b' },
        },
        when,
      ),
      'a match conceded',
    )
}

async function afternoon(society: Founded, slug: string): Promise<void> {
  const { secretary } = society
  const morning = await record(society, slug)
  const again = must(
    await callAgain(
      secretary,
      {
        dayId: morning.id,
        version: morning.version,
        name: 'Two Rounds, afternoon',
        date: morning.date,
        firstTee: '14:00',
        courseId: morning.round.courseId,
        holes: 18,
      },
      at(society, morning.date, '00:30'),
    ),
    'the second round',
  )
  await played(society, again.slug, 'two-rounds afternoon')
  await closed(society, again.slug)
}

async function closed(society: Founded, slug: string): Promise<void> {
  const { secretary } = society
  const day = await record(society, slug)
  const when = at(society, day.date, '18:00')
  const { version } = must(await closeDay(secretary, { dayId: day.id, version: day.version }, when), `closing ${slug}`)
  must(await publishResult(secretary, { dayId: day.id, version, reason: null }, when), `the result of ${slug}`)
}
