// A published day of six groups of four in a book of its own: every run takes one group, so that a book serves six
// runs and none of them meets what another one wrote.

import { randomUUID } from 'node:crypto'
import { copyFileSync } from 'node:fs'
import { join } from 'node:path'
import type { CardPack } from '@/lib/facts/card-pack'
import type { CardId, EntryId, GroupId, PersonId } from '@/lib/facts/ids'
import { callDay, proposeDay } from '@/lib/society/call-day'
import { cardPack } from '@/lib/society/card-pack'
import { enterPlayers } from '@/lib/society/enter-players'
import { foundSociety } from '@/lib/society/found-society'
import { freezeHandicaps } from '@/lib/society/freeze-handicaps'
import { keepCourse } from '@/lib/society/keep-course'
import { keepPerson } from '@/lib/society/keep-person'
import { makeDraw } from '@/lib/society/make-draw'
import { openSeason } from '@/lib/society/open-season'
import { publishStart } from '@/lib/society/publish-start'
import { readDayRecord } from '@/lib/store/day-record'
import { FOLDER } from '../setup/book'
import { ownBook } from '../setup/copy'
import { course, DAY, got } from '../society/setup/world'
import { nextFile } from './next-file'

export const GROUPS = 6

export interface PreparedGroup {
  readonly groupId: GroupId
  readonly link: string
  /** In the order of the group. */
  readonly entryIds: readonly EntryId[]
  readonly cardIds: readonly CardId[]
  readonly markerIds: readonly EntryId[]
  /** What a phone that opens the link before the first tee has on it. */
  readonly pack: CardPack
}

export interface PreparedBook {
  readonly file: string
  readonly society: string
  readonly day: string
  readonly holes: number
  readonly groups: readonly PreparedGroup[]
}

export async function preparedBook(groups = GROUPS): Promise<PreparedBook> {
  const own = await ownBook()
  const society = 'fernbrake'
  const officer = { name: 'Petra Ashgill', email: 'secretary@example.org', password: 'a long enough password' }
  const { societyId, userId } = got(await foundSociety({ name: 'Fernbrake', slug: society, officer }))
  const actor = { kind: 'officer', societyId, userId, name: officer.name, duties: ['secretary'] } as const
  got(await keepCourse(actor, course()))
  const { seasonId } = got(await openSeason(actor, { name: '2031', startsOn: '2031-01-01', endsOn: '2031-12-31' }))
  const enter: { personId: PersonId }[] = []
  for (let at = 0; at < groups * 4; at++) {
    const person = { firstName: `Robin${at}`, familyName: 'Marlpit', gender: at % 3 ? 'men' : 'women' } as const
    const kept = await keepPerson(actor, {
      ...person,
      kind: 'member',
      handicapSource: 'home-club',
      indexTenths: (at * 37) % 360,
    })
    enter.push({ personId: got(kept).personId })
  }
  const proposal = got(await proposeDay(actor, seasonId))
  const singles = proposal.competitions.slice(0, 1)
  const called = got(await callDay(actor, { ...proposal, name: 'Spring Cup', date: DAY, competitions: singles }))
  const { dayId } = called
  const record = async () => (await readDayRecord({ societyId, dayId }))!
  const version = async () => (await record()).version
  got(await enterPlayers(actor, { dayId, version: await version(), enter }))
  got(await freezeHandicaps(actor, { dayId, version: await version() }))
  got(await makeDraw(actor, { dayId, version: await version(), way: 'entry-order', groupSize: 4, seed: 1 }))
  got(await publishStart(actor, { dayId, version: await version() }))
  const ready = await record()
  const packs = new Map<string, CardPack>()
  for (const { id } of ready.groups)
    packs.set(id, got(await cardPack({ kind: 'scorer', societyId, dayId, groupId: id })))
  const file = join(process.env[FOLDER]!, `prepared-${randomUUID()}.db`)
  await own.book.$executeRawUnsafe(`VACUUM INTO '${file}'`)
  const links = await own.book.group.findMany({ select: { id: true, linkKey: true } })
  await own.close()
  const cardOf = (entryId: EntryId) => ready.cards.find((card) => card.entryId === entryId)!
  return {
    file,
    society,
    day: called.slug,
    holes: ready.round.holes,
    groups: ready.groups.map((group) => ({
      groupId: group.id,
      link: links.find((one) => one.id === group.id)!.linkKey,
      entryIds: group.entryIds,
      cardIds: group.entryIds.map((entryId) => cardOf(entryId).id),
      markerIds: group.entryIds.map((entryId) => cardOf(entryId).markerId!),
      pack: packs.get(group.id)!,
    })),
  }
}

/** A fresh copy to play on. */
export function copyOf(book: PreparedBook): string {
  const file = nextFile()
  copyFileSync(book.file, file)
  return file
}
