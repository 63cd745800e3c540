// What happens to the rest of the day when somebody withdraws, in sentences, before the button is pressed.

import type { DayStatus } from '@/lib/facts/day-record'
import type { EntryId, PersonId } from '@/lib/facts/ids'
import { clockInWords } from './dates-in-words'
import { playerIds } from './ids-from-engine'
import { movedUp } from './waiting-list'

interface DrawnEntry {
  readonly id: EntryId
  readonly personId: PersonId
  readonly hostId: PersonId | null
  readonly name: string
  readonly kind: 'member' | 'guest'
  readonly status: 'entered' | 'waiting' | 'withdrawn'
  readonly indexTenths: number | null
  readonly hasScores: boolean
}

export interface DrawnDay {
  readonly status: DayStatus
  readonly isPublished: boolean
  readonly places: number | null
  readonly entries: readonly DrawnEntry[]
  readonly groups: readonly {
    readonly number: number
    readonly startTime: string
    readonly entryIds: readonly EntryId[]
  }[]
  readonly competitions: readonly {
    readonly name: string
    readonly arePartners: boolean
    readonly sides: readonly { readonly id: string; readonly entryIds: readonly EntryId[] }[]
    readonly matches: readonly { readonly a: string; readonly b: string; readonly isDecided: boolean }[]
  }[]
  readonly teams: readonly { readonly name: string; readonly entryIds: readonly EntryId[] }[]
}

export interface IfWithdrawn {
  /** Why it cannot be done here: one sentence a player with scores on the card. */
  readonly against: readonly string[]
  readonly sentences: readonly string[]
}

export function ifWithdrawn(day: DrawnDay, entryIds: readonly EntryId[]): IfWithdrawn {
  const out = new Set(entryIds)
  const gone = day.entries.filter((entry) => out.has(entry.id) && entry.status !== 'withdrawn')
  if (gone.length === 0) return { against: [], sentences: [] }
  const nameOf = new Map(day.entries.map((entry) => [entry.id, entry.name]))
  const names = (ids: readonly EntryId[]) => listed(ids.map((id) => nameOf.get(id) ?? ''))
  return {
    against: gone
      .filter((entry) => entry.hasScores)
      .map((entry) => `${entry.name} has scores on the card: rule the card withdrawn instead, under Returns.`),
    sentences: [
      ...groupSentences(day, out, names),
      ...day.competitions.flatMap((one) => competitionSentences(one, out, names)),
      ...teamSentences(day, out),
      ...guestSentences(day, gone, out),
      ...placeSentences(day, gone, names),
      ...(day.isPublished && gone.some((entry) => isDrawn(day, entry.id))
        ? ['The start sheet everybody sees changes at once. Sheets and cards already printed do not.']
        : []),
      day.groups.length > 0
        ? 'You can enter them again afterwards; their place in the group and their partner are not put back.'
        : 'You can enter them again afterwards.',
    ],
  }
}

type Names = (ids: readonly EntryId[]) => string

const isDrawn = (day: DrawnDay, id: EntryId) => day.groups.some((group) => group.entryIds.includes(id))

function groupSentences(day: DrawnDay, out: ReadonlySet<EntryId>, names: Names): readonly string[] {
  return day.groups.flatMap(({ number, startTime, entryIds }) => {
    const left = entryIds.filter((id) => !out.has(id))
    if (left.length === entryIds.length) return []
    const group = `Group ${number}, ${clockInWords(startTime)}`
    if (left.length === 0) return [`${group}: nobody is left in it.`]
    if (left.length === 1)
      return [`${group}: only ${names(left)} is left, and nobody could mark the card. Move a player under Draw.`]
    return [`${group}: ${names(left)} play on.`]
  })
}

function competitionSentences(
  { name, arePartners, sides, matches }: DrawnDay['competitions'][number],
  out: ReadonlySet<EntryId>,
  names: Names,
): readonly string[] {
  const playersOf = (id: string): readonly EntryId[] =>
    sides.find((side) => side.id === id)?.entryIds ?? playerIds([id])
  const touched = (id: string) => playersOf(id).some((one) => out.has(one))
  const said: string[] = []
  for (const { id, entryIds } of arePartners ? sides : []) {
    if (!touched(id)) continue
    const left = entryIds.filter((one) => !out.has(one))
    const match = matches.find((one) => one.a === id || one.b === id)
    const opponent = match && (match.a === id ? match.b : match.a)
    if (match?.isDecided) {
      said.push(`${name}: the result of their match against ${names(playersOf(opponent ?? ''))} stands.`)
      continue
    }
    if (left.length === 1) said.push(`${name}: ${names(left)} has no partner.`)
    if (left.length > 1) said.push(`${name}: ${names(left)} go on as a side of ${left.length}.`)
    if (left.length < 2 && opponent)
      said.push(`${name}: ${names(playersOf(opponent))} have no match. Pair them again under Sides and matches.`)
  }
  if (arePartners) return said
  for (const { a, b, isDecided } of matches) {
    const [gone, stays] = touched(a) ? [a, b] : [b, a]
    if (!touched(gone) || touched(stays)) continue
    said.push(
      isDecided
        ? `${name}: the result of the match against ${names(playersOf(stays))} stands.`
        : `${name}: ${names(playersOf(stays))} has no opponent. Give a walkover or pair again under Sides and matches.`,
    )
  }
  return said
}

function teamSentences({ teams }: DrawnDay, out: ReadonlySet<EntryId>): readonly string[] {
  return teams.flatMap(({ name, entryIds }) => {
    const left = entryIds.filter((id) => !out.has(id)).length
    return left === entryIds.length ? [] : [`Team ${name}: ${left} of ${entryIds.length} are left.`]
  })
}

/** A guest stays when the host withdraws: only the secretary knows whether both stay away. */
function guestSentences(
  { entries }: DrawnDay,
  gone: readonly DrawnEntry[],
  out: ReadonlySet<EntryId>,
): readonly string[] {
  return entries
    .filter(
      (one) => one.status !== 'withdrawn' && !out.has(one.id) && gone.some((host) => host.personId === one.hostId),
    )
    .map(
      (guest) =>
        `${guest.name} stays, as the guest of somebody who does not play. Withdraw the guest too if both stay away.`,
    )
}

function placeSentences(day: DrawnDay, gone: readonly DrawnEntry[], names: Names): readonly string[] {
  const places = day.places ?? Number.POSITIVE_INFINITY
  const inPlay = day.entries.filter((entry) => entry.status === 'entered' && !gone.includes(entry)).length
  const up = movedUp(day, gone, places - inPlay)
  if (up.length === 0) return []
  const who = names(up.map((entry) => entry.id))
  const one = up.length === 1
  const group = day.groups.length > 0 ? `, ${one ? 'and is' : 'and are'} in no group until put into one under Draw` : ''
  return [`${who} ${one ? 'moves' : 'move'} up from the waiting list${group}.`]
}

function listed(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? ''
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
