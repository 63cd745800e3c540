// A phone whose link has ended or was renewed knocks with what it still keeps. It is refused as before; what it brought
// is held for the desk to look at. Once the desk took it in, the same delivery is answered as any repeat.

import type { GroupId } from '@/lib/facts/ids'
import 'server-only'
import { type DeliveryAnswer, delivery as schema } from '@/lib/facts/score-fact'
import { deviceIn } from '@/lib/facts/writer'
import { mayTry } from '@/lib/store/attempts'
import { takeDay, versionText } from '@/lib/store/day-versions'
import { type GroupBehind, groupOfId, groupOfLink } from '@/lib/store/keys'
import { hasRoomFor, heldSeqs } from '@/lib/store/phones'
import { AFTER_END, addRefused, earlierAnswers, moveScores, takeDevice } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { live } from './live'

const KNOCKS = 60
const KNOCK_WINDOW = 10 * 60_000
// Nobody is signed in here: what a stranger with an old link could leave behind is small.
const MOST_PHONES = 40
const MOST_HELD = 400

const SENTENCE = 'The link had ended when this came. It is held for the desk and does not count by itself.'

/** Null: the refusal stands. */
export async function holdLateScores(
  linkKey: string,
  body: unknown,
  now: Date = new Date(),
): Promise<DeliveryAnswer | null> {
  const read = schema.safeParse(body)
  if (!read.success) return null
  const { deviceId, facts, unsent, app, group: named } = read.data
  const group = await groupKnockedAt(linkKey, named)
  if (!group || !(await mayTry(`knock ${group.groupId}`, KNOCKS, KNOCK_WINDOW, now))) return null
  const { societyId, groupId, dayId } = group
  const id = deviceIn(groupId, deviceId)
  const inOrder = [...facts].sort((a, b) => a.seq - b.seq)
  const says = { unsent: Math.max(unsent ?? 0, facts.length), ...(app === undefined ? {} : { appVersion: app }) }

  const done = await write(async (tx) => {
    // The day's row first: it takes the lock, so that the phones are counted before one more is added.
    const before = await takeDay(tx, societyId, dayId)
    if (!before || !(await hasRoomFor(tx, groupId, id, MOST_PHONES))) return null
    const lastSeq = await takeDevice(tx, { id, societyId, groupId }, now, says)
    if (lastSeq === null) return null
    const repeats = inOrder.filter((fact) => fact.seq <= lastSeq).map((fact) => fact.seq)
    const answers = await earlierAnswers(tx, id, repeats)
    const known = await heldSeqs(tx, id)
    const fresh = inOrder.filter((fact) => fact.seq > lastSeq && !known.has(fact.seq))
    const held = fresh.slice(0, Math.max(0, MOST_HELD - known.size))
    await addRefused(
      tx,
      held.map((fact) => ({ societyId, deviceId: id, fact, code: AFTER_END, sentence: SENTENCE, refusedAt: now })),
    )
    const day = held.length > 0 ? await moveScores(tx, dayId, false) : null
    const { scoreVersion } = day ?? before
    return { answers: [...answers.values()], told: repeats.at(-1) ?? null, day, scoreVersion }
  })
  if (!done) return null
  if (done.day) live().announce(dayId, versionText(done.day))
  const { told, answers, scoreVersion } = done
  return told === null ? null : { lastSeq: told, answers, scoreVersion }
}

/** An ended link still names its group; after a renewal only the phone itself knows which it was. */
async function groupKnockedAt(linkKey: string, named: GroupId | undefined): Promise<GroupBehind | null> {
  const group = (await groupOfLink(linkKey)) ?? (named === undefined ? null : await groupOfId(named))
  return group?.published ? group : null
}
