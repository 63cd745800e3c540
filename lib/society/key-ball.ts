// What a card on paper says of a side's ball, keyed at the desk: whose drives, where the named ball was lost. The desk is
// one more writer; only what differs is written.

import { hasHole, rangeInWords, shownHole } from '@/lib/rules/hole-numbers'
import 'server-only'
import { sideBall, startHoleOf } from '@/lib/boards/ball-facts'
import type { Actor } from '@/lib/facts/actor'
import { type KeyBall, keyBall as schema } from '@/lib/facts/match-commands'
import { ok, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { addBallFacts, type NewBallFact, sideOfDay } from '@/lib/store/ball-facts'
import { dayRecordIn } from '@/lib/store/day-record'
import { versionText } from '@/lib/store/day-versions'
import { deskDevice, moveDevice, moveScores, takeDevice } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { whyAhead, whyCalledOff } from './day-on'
import { deskOnly, notFound } from './desk-only'
import { live } from './live'
import { notUnderstood, parseInput } from './parse-input'

type Refusals = 'not-allowed' | 'not-understood' | 'not-found' | 'day-called-off' | 'day-ahead' | 'day-closed'

export async function keyBall(
  actor: Actor,
  input: KeyBall,
  now: Date = new Date(),
): Promise<Result<{ written: number }, Refusals>> {
  const officer = deskOnly(actor, 'enter-score')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { dayId, sideId, drives, ballLostOn } = read.value
  const { societyId, userId } = officer.value
  const device = { id: deskDevice(societyId, userId), societyId, groupId: null }

  const done = await write<Result<{ written: number; version: string | null }, Refusals>>(async (tx) => {
    const lastSeq = await takeDevice(tx, device, now)
    const day = await dayRecordIn(tx, { societyId, dayId })
    const side = await sideOfDay(tx, { societyId, dayId, sideId })
    if (!day || !side || lastSeq === null) return notFound('side')
    const notNow = whyCalledOff(day) ?? whyAhead(day, now)
    if (notNow) return notNow
    if (day.status === 'closed') return refused('day-closed', 'The day is closed. Open it again to change what counts.')
    const faults = (drives ?? []).flatMap((entryId, at) =>
      entryId === null || side.entryIds.includes(entryId)
        ? []
        : [
            {
              place: `drives[${at}]`,
              sentence: `Whose drive that was on hole ${shownHole(day.round, at)} does not play in this side.`,
            },
          ],
    )
    const { round } = day
    const lostHere = ballLostOn === undefined || ballLostOn === null || hasHole(round, ballLostOn)
    if ((drives?.length ?? 0) > round.holes || !lostHere)
      faults.push({ place: 'drives', sentence: `This round has ${rangeInWords(round)}.` })
    if (faults.length > 0) return notUnderstood(faults)

    const stands = sideBall(sideId, day.ballFacts, round, startHoleOf(day, side.entryIds))
    const added: NewBallFact[] = []
    const add = (fact: Pick<NewBallFact, 'kind' | 'hole' | 'entryId' | 'lost'>) =>
      added.push({
        ...fact,
        societyId,
        sideId,
        writerId: null,
        userId,
        deviceId: device.id,
        seq: lastSeq + added.length + 1,
        writtenAt: now,
        receivedAt: now,
        late: false,
      })
    drives?.forEach((entryId, at) => {
      if (entryId !== (stands.drives[at] ?? null))
        add({ kind: 'drive', hole: shownHole(round, at), entryId, lost: false })
    })
    if (ballLostOn !== undefined && ballLostOn !== stands.ballLostOn) {
      // Every hole somebody said it was lost on is taken back, so that only the desk's stands.
      const said = new Set(day.ballFacts.filter((fact) => fact.sideId === sideId && fact.lost).map((fact) => fact.hole))
      for (const hole of said) if (hole !== ballLostOn) add({ kind: 'ball-lost', hole, entryId: null, lost: false })
      if (ballLostOn !== null) add({ kind: 'ball-lost', hole: ballLostOn, entryId: null, lost: true })
    }
    if (added.length === 0) return ok({ written: 0, version: null })
    await addBallFacts(tx, dayId, added)
    if (!(await moveDevice(tx, device.id, lastSeq, lastSeq + added.length)))
      throw new Error(`The number of ${device.id} moved inside the transaction.`)
    const moved = await moveScores(tx, dayId, false)
    await recordAct(
      tx,
      officer.value,
      {
        act: 'enter-score',
        area: 'results',
        subject: `The ball of side ${day.competitions.flatMap((one) => one.sides).find((one) => one.id === sideId)?.number ?? ''}, ${day.name}`,
        subjectId: sideId,
        before: wordsOf(stands, day.entries),
        after: wordsOf({ drives: drives ?? stands.drives, ballLostOn: ballLostOn ?? null }, day.entries),
      },
      now,
    )
    return ok({ written: added.length, version: versionText(moved) })
  })
  if (!done.ok) return done
  if (done.value.version) live().announce(dayId, done.value.version)
  return ok({ written: done.value.written })
}

function wordsOf(
  ball: { readonly drives: readonly (string | null)[]; readonly ballLostOn: number | null },
  entries: readonly { readonly id: string; readonly familyName: string }[],
) {
  const nameOf = new Map(entries.map((entry) => [entry.id, entry.familyName]))
  return {
    Drives: ball.drives.map((id) => (id === null ? '–' : (nameOf.get(id) ?? '–'))),
    'Ball lost on': ball.ballLostOn ?? 'no hole',
  }
}
