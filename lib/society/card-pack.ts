// Everything a group's phone needs for a day without a signal. A day is read once for each of its versions, and a
// group's cards are made once, however many phones look however often.

import type { DayId, GroupId } from '@/lib/facts/ids'
import 'server-only'
import { createHash } from 'node:crypto'
import { packsOf } from '@/lib/boards/group-pack'
import { publicRecord } from '@/lib/boards/shown-names'
import type { Actor } from '@/lib/facts/actor'
import type { CardPack, PackHolder } from '@/lib/facts/card-pack'
import { phoneMark } from '@/lib/facts/writer'
import { ok, type Result, refused } from '@/lib/result'
import { readDayRecord } from '@/lib/store/day-record'
import { packSources } from '@/lib/store/pack-sources'
import { holdersOfDay } from '@/lib/store/phones'
import { mayNot } from './acts'

type Scorer = Extract<Actor, { kind: 'scorer' }>
type Refusals = 'not-allowed' | 'no-such-group'

export interface ServedPack {
  readonly pack: CardPack
  readonly text: string
  /** Names what a phone that has this pack knows: the versions apart, it is the same as long as the cards read the same. */
  readonly tag: string
  /** The same without what moves every group at once: the places, and a stop of play, which has a word of its own. */
  readonly cardsTag: string
}

interface DayMade {
  readonly key: string
  readonly packOf: Promise<((groupId: GroupId) => CardPack | null) | null>
  readonly served: Map<string, ServedPack>
  /** Whose phones there are, by group: said by the phones themselves, and no part of the day's versions. */
  holders: ReadonlyMap<string, readonly PackHolder[]>
}

interface Watched {
  readonly version: string
  readonly day: Promise<DayMade | null>
}

const kept = globalThis as { daybookPacks?: Map<string, DayMade>; daybookPacksWatched?: Map<string, Watched> }
const DAYS_KEPT = 8

/** The newest stays; of the days, the one that was made longest ago goes first. */
function keep<T>(map: Map<string, T>, dayId: DayId, made: T): T {
  map.delete(dayId)
  const oldest = map.keys().next()
  if (map.size >= DAYS_KEPT && !oldest.done) map.delete(oldest.value)
  map.set(dayId, made)
  return made
}

async function dayNow({ societyId, dayId }: Scorer): Promise<DayMade | null> {
  const sources = await packSources(dayId)
  if (!sources) return null
  const holders = await holdersNow(dayId)
  kept.daybookPacks ??= new Map()
  const days = kept.daybookPacks
  const known = days.get(dayId)
  if (known?.key === sources.key) {
    known.holders = holders
    return known
  }
  // Read after its key: what comes between is in the record already, and the next key has it made again.
  const packOf = readDayRecord({ societyId, dayId }).then((record) => {
    if (!record) return null
    const packs = packsOf(publicRecord(record, sources.erased))
    return (groupId: GroupId) => {
      const group = record.groups.find((one) => one.id === groupId)
      return group ? packs(group) : null
    }
  })
  const made = keep(days, dayId, { key: sources.key, packOf, served: new Map(), holders })
  // A book that could not answer is asked again by the next phone.
  packOf.catch(() => days.get(dayId) === made && days.delete(dayId))
  return made
}

async function holdersNow(dayId: DayId): Promise<ReadonlyMap<string, readonly PackHolder[]>> {
  const byGroup = new Map<string, PackHolder[]>()
  for (const { groupId, deviceId, entryId, since, lastSeq } of await holdersOfDay(dayId)) {
    const one = { entryId, phone: phoneMark(deviceId), since: since.toISOString(), lastSeq }
    byGroup.set(groupId, [...(byGroup.get(groupId) ?? []), one])
  }
  return byGroup
}

/** One question to the book for each version of the day, whoever is watching. */
function dayAt(actor: Scorer, version: string): Promise<DayMade | null> {
  kept.daybookPacksWatched ??= new Map()
  const days = kept.daybookPacksWatched
  const known = days.get(actor.dayId)
  if (known?.version === version) return known.day
  const watched = keep(days, actor.dayId, { version, day: dayNow(actor) })
  watched.day.catch(() => days.get(actor.dayId) === watched && days.delete(actor.dayId))
  return watched.day
}

const digest = (value: unknown) => createHash('sha256').update(JSON.stringify(value)).digest('base64url').slice(0, 22)

function served(pack: CardPack): ServedPack {
  const { scoreVersion, dayVersion, ...cards } = pack
  const { position, play, ...ownCards } = cards
  return { pack, text: JSON.stringify(pack), tag: `"${digest(cards)}"`, cardsTag: digest(ownCards) }
}

async function groupIn(day: DayMade | null, groupId: GroupId): Promise<ServedPack | null> {
  if (!day) return null
  const holders = day.holders.get(groupId) ?? []
  const asked = `${groupId} ${JSON.stringify(holders)}`
  const known = day.served.get(asked)
  if (known) return known
  const pack = (await day.packOf)?.(groupId)
  if (!pack) return null
  const app = process.env.DAYBOOK_APP_BUILD
  const made = served({ ...pack, holders, ...(app ? { app } : {}) })
  day.served.set(asked, made)
  return made
}

/** `version`: of the day, where it was just told; it saves asking for it. */
export async function servedPack(actor: Actor, version?: string): Promise<Result<ServedPack, Refusals>> {
  const no = mayNot(actor, 'read-group')
  if (no) return no
  if (actor.kind !== 'scorer') return refused('not-allowed', 'The card is opened with the link of a group.')
  const day = await (version === undefined ? dayNow(actor) : dayAt(actor, version))
  const made = await groupIn(day, actor.groupId)
  return made
    ? ok(made)
    : refused('no-such-group', 'That group is not in this day any more. Ask the desk for the new start sheet.')
}

export async function cardPack(actor: Actor): Promise<Result<CardPack, Refusals>> {
  const made = await servedPack(actor)
  return made.ok ? ok(made.value.pack) : made
}
