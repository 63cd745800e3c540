// What a phone says of itself while it looks at its card: kept for the desk's view of the course, seldom enough that a
// hundred phones looking three times a minute do not write three hundred times.

import 'server-only'
import { z } from 'zod'
import type { Actor } from '@/lib/facts/actor'
import { notePhone as keepNote } from '@/lib/store/phones'
import { deviceIn } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'

const said = z.strictObject({
  deviceId: z.string().min(16).max(64),
  unsent: z.coerce.number().int().min(0).max(100_000),
  app: z.string().max(40).optional(),
})

interface Noted {
  readonly unsent: number
  readonly at: number
}

const kept = globalThis as { daybookPhones?: Map<string, Noted> }
const EVERY_MS = 3 * 60_000
const PHONES_KEPT = 5_000

export async function notePhone(actor: Actor, headers: Headers, now: Date = new Date()): Promise<void> {
  if (actor.kind !== 'scorer' || !headers.has('x-daybook-device')) return
  const read = said.safeParse({
    deviceId: headers.get('x-daybook-device'),
    unsent: headers.get('x-daybook-unsent') ?? 0,
    app: headers.get('x-daybook-app') ?? undefined,
  })
  if (!read.success) return
  const id = deviceIn(actor.groupId, read.data.deviceId)
  kept.daybookPhones ??= new Map()
  const before = kept.daybookPhones.get(id)
  if (before && before.unsent === read.data.unsent && now.getTime() - before.at < EVERY_MS) return
  if (kept.daybookPhones.size > PHONES_KEPT) kept.daybookPhones.clear()
  kept.daybookPhones.set(id, { unsent: read.data.unsent, at: now.getTime() })
  const { unsent, app } = read.data
  await write((tx) => keepNote(tx, id, { unsent, ...(app === undefined ? {} : { appVersion: app }) }, now))
}
