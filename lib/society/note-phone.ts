// What a phone says of itself while it looks at its card: kept for the desk's view of the course, seldom enough that a
// hundred phones looking three times a minute do not write three hundred times.

import 'server-only'
import { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { deviceId, entryId } from '@/lib/facts/ids'
import { deviceIn } from '@/lib/facts/writer'
import { notePhone as keepNote, noteHolder } from '@/lib/store/phones'
import { write } from '@/lib/store/write'

const said = z.strictObject({
  deviceId,
  unsent: z.coerce.number().int().min(0).max(100_000),
  app: z.string().max(40).optional(),
  holder: entryId.optional(),
  holds: z.coerce.number().int().min(0).max(100_000).default(0),
})

interface Noted {
  readonly unsent: number
  readonly holds: string
  readonly at: number
}

const kept = globalThis as { daybookPhones?: Map<string, Noted> }
const EVERY_MS = 3 * 60_000
const PHONES_KEPT = 5_000
// Nobody is signed in here: a stranger with the link could say anything, but not fill the book with it.
const MOST_PHONES = 40

export async function notePhone(actor: Actor, headers: Headers, now: Date = new Date()): Promise<void> {
  if (actor.kind !== 'scorer' || !headers.has('x-daybook-device')) return
  const read = said.safeParse({
    deviceId: headers.get('x-daybook-device'),
    unsent: headers.get('x-daybook-unsent') ?? 0,
    app: headers.get('x-daybook-app') ?? undefined,
    holder: headers.get('x-daybook-holder') ?? undefined,
    holds: headers.get('x-daybook-holds') ?? undefined,
  })
  if (!read.success) return
  const id = deviceIn(actor.groupId, read.data.deviceId)
  kept.daybookPhones ??= new Map()
  const before = kept.daybookPhones.get(id)
  const { holder } = read.data
  const holds = holder === undefined ? '' : `${read.data.holds} ${holder}`
  const same = before && before.unsent === read.data.unsent && before.holds === holds
  if (same && now.getTime() - before.at < EVERY_MS) return
  if (kept.daybookPhones.size > PHONES_KEPT) kept.daybookPhones.clear()
  kept.daybookPhones.set(id, { unsent: read.data.unsent, holds, at: now.getTime() })
  const { unsent, app } = read.data
  const { societyId, groupId } = actor
  await write(async (tx) => {
    await keepNote(tx, id, { unsent, ...(app === undefined ? {} : { appVersion: app }) }, now)
    if (holder === undefined) return
    const said = { entryId: holder, number: read.data.holds }
    await noteHolder(tx, { id, societyId, groupId }, said, MOST_PHONES, now)
  })
}
