// Everything a group's phone needs for a day without a signal.

import 'server-only'
import { groupPack } from '@/lib/boards/group-pack'
import type { Actor } from '@/lib/facts/actor'
import type { CardPack } from '@/lib/facts/card-pack'
import { ok, type Result, refused } from '@/lib/result'
import { readDayRecord } from '@/lib/store/day-record'
import { mayNot } from './acts'

export async function cardPack(actor: Actor): Promise<Result<CardPack, 'not-allowed' | 'no-such-group'>> {
  const no = mayNot(actor, 'read-group')
  if (no) return no
  if (actor.kind !== 'scorer') return refused('not-allowed', 'The card is opened with the link of a group.')
  const record = await readDayRecord({ societyId: actor.societyId, dayId: actor.dayId })
  const group = record?.groups.find((one) => one.id === actor.groupId)
  if (!record || !group)
    return refused('no-such-group', 'That group is not in this day any more. Ask the desk for the new start sheet.')
  const app = process.env.DAYBOOK_APP_BUILD
  return ok({ ...groupPack(record, group), ...(app ? { app } : {}) })
}
