// Founds a second society in the book of the running server, with an officer of every duty and a day that is being
// played; says as JSON who and what there is, here and in the first society. Run by the walk as a process of its own.

import { randomUUID } from 'node:crypto'
import type { Actor } from '@/lib/facts/actor'
import type { PersonId, SocietyId } from '@/lib/facts/ids'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { enterPlayers } from '@/lib/society/enter-players'
import { foundSociety } from '@/lib/society/found-society'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { keepCourse } from '@/lib/society/keep-course'
import { keepPerson } from '@/lib/society/keep-person'
import { makeDraw } from '@/lib/society/make-draw'
import { openSeason } from '@/lib/society/open-season'
import { publishStart } from '@/lib/society/publish-start'
import { book } from '@/lib/store/client'
import { hashOfPassword } from '@/lib/store/password'
import { asId } from '../../setup/ids'
import { course, got } from '../../society/setup/world'
import { OFFICERS, PASSWORD, type Prepared, type Targets } from './prepared'

const SLUG = 'wetherlam'

async function found(): Promise<Actor> {
  const officer = { name: 'Ottoline Brackenrigg', email: OFFICERS.secretary, password: PASSWORD }
  const { societyId, userId } = got(await foundSociety({ name: 'Wetherlam Wanderers', slug: SLUG, officer }))
  const now = new Date()
  const password = await hashOfPassword(PASSWORD)
  for (const [duty, email] of Object.entries(OFFICERS)) {
    if (duty === 'secretary') continue
    const id = randomUUID()
    await book().user.create({ data: { id: asId(id), name: `Officer ${duty}`, email, createdAt: now, updatedAt: now } })
    await book().account.create({
      data: {
        id: randomUUID(),
        accountId: id,
        providerId: 'credential',
        userId: asId(id),
        password,
        createdAt: now,
        updatedAt: now,
      },
    })
    await book().dutyHeld.create({ data: { id: randomUUID(), societyId, userId: asId(id), duty, from: now } })
  }
  return { kind: 'officer', societyId, userId, name: officer.name, duties: ['secretary'] }
}

async function playedDay(actor: Actor): Promise<void> {
  got(await keepCourse(actor, course('Swirl How')))
  const { seasonId } = got(await openSeason(actor, { name: '2031', startsOn: '2031-01-01', endsOn: '2031-12-31' }))
  const people: PersonId[] = []
  for (const familyName of ['Applethwaite', 'Beckermonds', 'Cragdale', 'Dunnerdale'])
    people.push(
      got(
        await keepPerson(actor, {
          firstName: 'Zeb',
          familyName,
          gender: 'men',
          kind: 'member',
          handicapSource: 'society',
          indexTenths: 180,
        }),
      ).personId,
    )
  const proposed = got(await proposeDay(actor, seasonId))
  const { dayId } = got(await callDay(actor, { ...proposed, name: 'Fell Day', date: '2031-06-14' }))
  const version = async () => (await book().day.findUniqueOrThrow({ where: { id: dayId } })).version
  got(await enterPlayers(actor, { dayId, version: await version(), enter: people.map((personId) => ({ personId })) }))
  got(await freezeHandicaps(actor, { dayId, version: await version() }))
  got(await makeDraw(actor, { dayId, version: await version(), way: 'random', groupSize: 4, seed: 1, threes: 'last' }))
  got(await publishStart(actor, { dayId, version: await version() }))
}

/** Something of every kind in a society, on a day that has cards. */
async function targets(slug: string): Promise<Targets> {
  const society = await book().society.findUniqueOrThrow({ where: { slug } })
  const of = { societyId: society.id }
  const card = await book().card.findFirstOrThrow({
    where: {
      ...of,
      state: { not: 'taken-in' },
      round: { day: { status: { not: 'closed' }, startPublishedAt: { not: null } } },
    },
    include: { round: { include: { day: true, groups: { include: { places: true } } } } },
    orderBy: { id: 'asc' },
  })
  const { day } = card.round
  const group = card.round.groups.find((one) => one.places.some((place) => place.entryId === card.entryId))!
  const competition = await book().competition.findFirstOrThrow({ where: { dayId: day.id } })
  const person = await book().person.findFirstOrThrow({ where: { ...of, kind: 'member' }, orderBy: { id: 'asc' } })
  const lastDuty = await book().dutyHeld.findFirstOrThrow({ where: of, orderBy: { id: 'asc' } })
  return {
    slug,
    societyId: society.id,
    seasonId: day.seasonId,
    dayId: day.id,
    daySlug: day.slug,
    version: day.version,
    roundId: card.roundId,
    competitionId: competition.id,
    cardId: card.id,
    entryId: card.entryId,
    groupId: group.id,
    link: group.linkKey,
    courseId: card.round.courseId,
    personId: person.id,
    pageKey: person.pageKey,
    dutyId: lastDuty.id,
    userId: lastDuty.userId,
  }
}

async function secretsOf(societyId: SocietyId): Promise<readonly string[]> {
  const people = await book().person.findMany({ where: { societyId } })
  const groups = await book().group.findMany({ where: { societyId } })
  return [
    ...people.flatMap((one) => [`${one.firstName} ${one.familyName}`, one.pageKey]),
    ...groups.flatMap((one) => [one.linkKey, one.code]),
  ]
}

const [first] = process.argv.slice(2)
if (!(await book().society.findUnique({ where: { slug: SLUG } }))) await playedDay(await found())
const here = await targets(SLUG)
const there = await targets(first!)
const prepared: Prepared = {
  here,
  there,
  secretsHere: await secretsOf(here.societyId),
  secretsThere: await secretsOf(there.societyId),
}
process.stdout.write(JSON.stringify(prepared))
process.exit(0)
