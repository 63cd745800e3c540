// Suspension of play for phones that are open: one question to the book for each version of the day, whoever is watching.

import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import type { Actor } from '@/lib/facts/actor'
import { type PlayNow, playNow } from '@/lib/facts/play-stop'
import { ok, type Result } from '@/lib/result'
import { dayVersionOf } from '@/lib/store/day-versions'
import { playStopsNow } from '@/lib/store/play-stops'
import { mayNot } from './acts'
import { live } from './live'

interface Asked {
  readonly version: string
  readonly play: Promise<PlayNow | null>
}

const kept = globalThis as { daybookPlay?: Map<string, Asked> }
const DAYS_KEPT = 50

function playAt(dayId: DayId, version: string): Promise<PlayNow | null> {
  kept.daybookPlay ??= new Map()
  const known = kept.daybookPlay.get(dayId)
  if (known?.version === version) return known.play
  const play = playStopsNow(dayId).then(playNow)
  if (kept.daybookPlay.size >= DAYS_KEPT) kept.daybookPlay.clear()
  kept.daybookPlay.set(dayId, { version, play })
  // A question that failed is asked again with the next version, and not answered from here.
  play.catch(() => kept.daybookPlay?.delete(dayId))
  return play
}

/** Tells the present word at once and every later one; the answer's value ends the watching. */
export async function watchPlay(
  actor: Actor,
  told: (play: PlayNow) => void,
): Promise<Result<() => void, 'not-allowed'>> {
  const no = mayNot(actor, 'read-group')
  if (no) return no
  if (actor.kind !== 'scorer') throw new Error('Only a group’s phone watches the play of its day.')
  const { dayId } = actor
  let last = 0
  async function look(version: string): Promise<void> {
    // A book that cannot answer now is asked again with the next version; the phone also looks by itself.
    const play = await playAt(dayId, version).catch(() => null)
    if (!play || play.number <= last) return
    last = play.number
    told(play)
  }
  const end = live().watch(dayId, (version) => void look(version))
  const version = await dayVersionOf(dayId)
  if (version) await look(version)
  return ok(end)
}
