import type { DayId } from '@/lib/facts/ids'
import 'server-only'
import { ok, type Result, refused } from '@/lib/result'
import { dayAt, dayVersionOf } from '@/lib/store/day-versions'

/** Tells watchers of a day that it has moved on. What they read is the board of that version. */
export interface Live {
  announce(dayId: DayId, version: string): void
  /**
   * Calls `told` with each new version; the answer ends the watching. `from` is the version the watcher has: what was told
   * to others between reading it and watching is told now, since nobody else would.
   */
  watch(dayId: DayId, told: (version: string) => void | Promise<void>, from?: string): () => void
}

type Told = (version: string) => void | Promise<void>

interface Watched {
  readonly watchers: Set<Told>
  last: string | null
  timer: NodeJS.Timeout
  /** Newest version announced, told or not. */
  next: string | null
  resting: NodeJS.Timeout | null
}

// A burst of deliveries is one message, and one count of the board: nobody reads five boards a second.
const BURST = 200
const POLL = 1000

/**
 * Watchers of this process. What another process changes is found by asking the book for the day's version once a
 * second, and only for days that somebody here is watching.
 */
export function liveHere(versionOf: (dayId: DayId) => Promise<string | null> = dayVersionOf): Live {
  const days = new Map<string, Watched>()

  function tell(dayId: DayId, version: string): void {
    const day = days.get(dayId)
    if (!day || day.last === version) return
    day.last = version
    for (const told of [...day.watchers]) void told(version)
  }

  // After a message the day rests for a moment; what came meanwhile is told once, as the newest version.
  function rest(dayId: DayId, day: Watched): void {
    day.resting = setTimeout(() => {
      day.resting = null
      if (day.next === null || day.next === day.last) return
      tell(dayId, day.next)
      rest(dayId, day)
    }, BURST)
    day.resting.unref()
  }

  async function ask(dayId: DayId): Promise<void> {
    // A book that cannot answer now is asked again in a second; the watchers keep what they have.
    const version = await versionOf(dayId).catch(() => null)
    if (version) tell(dayId, version)
  }

  return {
    announce(dayId, version) {
      const day = days.get(dayId)
      if (!day) return
      day.next = version
      if (day.resting) return
      tell(dayId, version)
      rest(dayId, day)
    },
    watch(dayId, told, from) {
      let day = days.get(dayId)
      if (!day) {
        const timer = setInterval(() => void ask(dayId), POLL)
        timer.unref()
        day = { watchers: new Set(), last: null, next: null, timer, resting: null }
        days.set(dayId, day)
      }
      day.watchers.add(told)
      const mine = day
      if (from !== undefined && day.last !== null && isNewer(day.last, from)) void told(day.last)
      return () => {
        mine.watchers.delete(told)
        if (mine.watchers.size || days.get(dayId) !== mine) return
        clearInterval(mine.timer)
        if (mine.resting) clearTimeout(mine.resting)
        days.delete(dayId)
      }
    },
  }
}

/** Versions are "desk.scores", and both only grow. */
function isNewer(version: string, than: string): boolean {
  const [desk = 0, scores = 0] = version.split('.').map(Number)
  const [deskBefore = 0, scoresBefore = 0] = than.split('.').map(Number)
  return desk > deskBefore || (desk === deskBefore && scores > scoresBefore)
}

// One for the process, kept on the global object: the development server reloads modules, the watchers stay.
const kept = globalThis as { daybookLive?: Live }

export function live(): Live {
  kept.daybookLive ??= liveHere()
  return kept.daybookLive
}

/** The day behind an address, and the version a watcher begins with. */
export async function dayToWatch(
  slug: string,
  daySlug: string,
): Promise<Result<{ readonly dayId: DayId; readonly version: string }, 'no-such-day'>> {
  const day = await dayAt(slug, daySlug)
  return day ? ok(day) : refused('no-such-day', 'There is no such day in this society.')
}
