// The desk tells everybody on the course: stop at once, stop when the hole is finished, play on. Carries no version of
// the day: a warning must not wait until somebody has looked at what else changed.

import 'server-only'
import { PLAY_WORDS } from '@/lib/boards/play-in-words'
import type { Actor } from '@/lib/facts/actor'
import { type StopPlay, stopPlay as schema } from '@/lib/facts/commands'
import { isStopped, type PlayNow, playNow } from '@/lib/facts/play-stop'
import { ok, type Refused, type Result, refused } from '@/lib/result'
import { recordAct } from '@/lib/store/acts'
import { versionText } from '@/lib/store/day-versions'
import { addPlayStop, playStopsOf } from '@/lib/store/play-stops'
import { moveScores } from '@/lib/store/score-facts'
import { write } from '@/lib/store/write'
import { takeDayOn } from './day-on'
import { deskOnly } from './desk-only'
import { live } from './live'
import { parseInput } from './parse-input'

type Refusals =
  | 'not-allowed'
  | 'not-understood'
  | 'not-found'
  | 'day-called-off'
  | 'day-not-in-play'
  | 'stopped-at-once'
  | 'not-stopped'

/** The same word twice is said once. */
export async function stopPlay(
  actor: Actor,
  input: StopPlay,
  now: Date = new Date(),
): Promise<Result<PlayNow, Refusals>> {
  const officer = deskOnly(actor, 'stop-play')
  if (!officer.ok) return officer
  const read = parseInput(schema, input)
  if (!read.ok) return read
  const { societyId, userId, name } = officer.value
  const { dayId, kind, reason } = read.value

  const done = await write(async (tx) => {
    const on = await takeDayOn(tx, societyId, dayId)
    if (!on.ok) return on
    const day = on.value
    const stops = await playStopsOf(tx, dayId)
    const before = playNow(stops)
    if (before?.kind === kind && before.reason === reason) return ok({ play: before, version: null })
    const no = mayNotTell(day.status, before, kind)
    if (no) return no
    const play = { number: stops.length + 1, kind, reason, toldAt: now.toISOString() }
    await addPlayStop(tx, { societyId, dayId, kind, reason, byUserId: userId, byName: name, toldAt: now })
    await recordAct(
      tx,
      officer.value,
      {
        act: kind === 'resume' ? 'resume-play' : 'stop-play',
        area: 'day',
        subject: `${PLAY_WORDS[kind].title}: ${reason}`,
        subjectId: dayId,
        ...(before ? { before: { play: PLAY_WORDS[before.kind].title, reason: before.reason } } : {}),
        after: { play: PLAY_WORDS[kind].title, reason },
      },
      now,
    )
    return ok({ play, version: versionText(await moveScores(tx, dayId, false)) })
  })
  if (!done.ok) return done
  const { play, version } = done.value
  if (version) live().announce(dayId, version)
  return ok(play)
}

function mayNotTell(
  status: string,
  before: PlayNow | null,
  kind: StopPlay['kind'],
): Refused<'day-not-in-play' | 'stopped-at-once' | 'not-stopped'> | null {
  if (status === 'called' || status === 'closed')
    return refused(
      'day-not-in-play',
      status === 'closed'
        ? 'The day is closed: nobody is out any more.'
        : 'Nobody is out yet: play begins after the handicaps are frozen.',
    )
  if (kind === 'resume' && !isStopped(before)) return refused('not-stopped', 'Play is not stopped.')
  if (kind === 'stop-after-hole' && before?.kind === 'stop-at-once')
    return refused(
      'stopped-at-once',
      'Play is stopped at once. Nobody goes on to finish a hole before play is resumed.',
    )
  return null
}
