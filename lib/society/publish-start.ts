// The start sheet goes out: every group gets its cards, its link and its code.

import type { z } from 'zod'
import { startSheetOf } from '@/lib/boards/start-sheet'
import type { StartSheet } from '@/lib/boards/views'
import type { Actor } from '@/lib/facts/actor'
import { renewGroupLink as renewSchema, publishStart as schema } from '@/lib/facts/commands'
import type { DayRecord } from '@/lib/facts/day-record'
import type { DayId } from '@/lib/facts/ids'
import { fullName } from '@/lib/facts/person-name'
import { shownDraw } from '@/lib/facts/shown-draw'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { readDayRecord } from '@/lib/store/day-record'
import { renewLink, setCodesUntil } from '@/lib/store/groups'
import { today } from '@/lib/store/settings'
import { groupInWords } from '@/lib/store/subjects'
import { write } from '@/lib/store/write'
import { changeOfDay, type DayRefusals } from './day-change'
import { codesUntil } from './day-clock'
import { deskOnly, notFound } from './desk-only'
import { cardsAfterChange } from './entry-list'
import { maySeeGroupKeys } from './keys-for-duty'
import { parseInput } from './parse-input'
import { recordForEverybody } from './shown-to-everybody'

type Refusals =
  | 'draw-not-as-shown'
  | 'not-frozen'
  | 'no-groups'
  | 'without-group'
  | 'alone-in-group'
  | 'published-already'

export async function publishStart(
  actor: Actor,
  input: z.input<typeof schema>,
  now: Date = new Date(),
): Promise<Result<{ version: number; cards: number }, DayRefusals | Refusals>> {
  const read = parseInput(schema, input)
  if (!read.ok) return read
  return changeOfDay<{ cards: number }, Refusals>(
    actor,
    'publish-start',
    read.value,
    async (day) => {
      if (day.startPublishedAt !== null) return refused('published-already', 'The start sheet is out already.')
      if (day.status === 'called')
        return refused('not-frozen', 'Freeze the handicaps first: the cards carry the strokes each player receives.')
      if (day.groups.length === 0) return refused('no-groups', 'Make the draw first.')
      const { draw } = read.value
      if (draw !== undefined && draw !== shownDraw(day.groups))
        return refused(
          'draw-not-as-shown',
          'The groups on the screen are not the ones that are saved. Save them first, or go back to what was saved; nothing has gone out.',
        )
      const seated = new Set(day.groups.flatMap((group) => group.entryIds))
      const left = day.entries.filter((entry) => entry.status === 'entered' && !seated.has(entry.id))
      if (left.length > 0)
        return refused(
          'without-group',
          `${left.length === 1 ? `${fullName(left[0]!)} is` : `${left.length} players are`} in no group yet.`,
          left.map((entry) => ({
            place: `entry ${entry.id}`,
            sentence: `${fullName(entry)} is in no group.`,
          })),
        )
      const alone = day.groups.filter((group) => group.entryIds.length === 1)
      if (alone.length > 0)
        return refused(
          'alone-in-group',
          `Group ${alone[0]!.number} has one player: nobody could mark the card.`,
          alone.map((group) => ({ place: `group ${group.number}`, sentence: 'One player alone.' })),
        )
      return {
        also: { startPublishedAt: now },
        record: (saved) => ({ after: { 'Start sheet': 'published', Cards: saved.cards } }),
        save: async (tx) => {
          await setCodesUntil(tx, day.round.id, codesUntil(day.date))
          await cardsAfterChange(tx, { ...day, startPublishedAt: now })
          return { cards: seated.size }
        },
      }
    },
    now,
  )
}

/** For a sheet that went astray: the group's old link and code end at once. */
export async function renewGroupLink(
  actor: Actor,
  input: z.input<typeof renewSchema>,
  now: Date = new Date(),
): Promise<Result<{ code: string; linkKey: string }, 'not-allowed' | 'not-understood' | 'not-found'>> {
  const officer = deskOnly(actor, 'renew-group-link')
  if (!officer.ok) return officer
  const read = parseInput(renewSchema, input)
  if (!read.ok) return read
  const { dayId, groupId } = read.value
  const { societyId } = officer.value
  const fresh = await write(async (tx) => {
    const renewed = await renewLink(tx, societyId, dayId, groupId)
    if (!renewed) return null
    const subject = await groupInWords(tx, societyId, groupId)
    const after = { 'Link and code': 'renewed, the old ones ended' }
    await recordAct(tx, actor, { act: 'renew-group-link', area: 'access', subject, subjectId: groupId, after }, now)
    return renewed
  })
  return fresh ? ok(fresh) : notFound('group')
}

/** For the desk: with the link and the code of every group, for whoever may enter scores. */
export async function startSheet(actor: Actor, dayId: DayId): Promise<Result<StartSheet, 'not-allowed' | 'not-found'>> {
  const officer = deskOnly(actor, 'read-desk')
  if (!officer.ok) return officer
  const day = await readDayRecord({ societyId: officer.value.societyId, dayId })
  return day ? ok(startSheetOf(day, { withCodes: maySeeGroupKeys(actor) })) : notFound('day')
}

/** For everybody: names, times and figures once the sheet is out, never a code. */
export async function publicStartSheet(
  societySlug: string,
  daySlug: string,
  now: Date = new Date(),
): Promise<Result<StartSheet, 'no-such-day' | 'not-published'>> {
  const day = await readDayRecord({ societySlug, daySlug })
  if (!day) return refused('no-such-day', 'There is no such day on this fixture card.')
  if (day.startPublishedAt === null) return refused('not-published', 'The start sheet is not out yet.')
  const sheet = startSheetOf(await recordForEverybody(day), { withCodes: false })
  return ok(today(now) > day.date ? withoutClaims(day, sheet) : sheet)
}

/** What a host said of a guest's handicap served for the day: afterwards it is nobody's business. */
function withoutClaims(day: DayRecord, sheet: StartSheet): StartSheet {
  const guests = new Set(day.entries.filter((entry) => entry.handicapSource === 'claimed').map((entry) => entry.id))
  const groups = sheet.groups.map((group) => ({
    ...group,
    players: group.players.map((player) => (guests.has(player.entryId) ? { ...player, figure: '–' } : player)),
  }))
  return { ...sheet, groups }
}
