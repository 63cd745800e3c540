// The slow way to what is still possible: write every score that can still come, close the day, and look who is first.
import type { Card, Day, HoleScore } from '@/lib/rules/day'
import type { Countback } from '@/lib/rules/insight/countback-outcomes'
import type { First } from '@/lib/rules/insight/first-place'
import { scoreDay } from '@/lib/rules/score-day'
import type { MatchResult, Standing } from '@/lib/rules/standings'

export interface OpenPlace {
  readonly card: number
  readonly hole: number
}

/** Places on the cards that may still be written and count for something. */
export function openPlaces(day: Day, of?: ReadonlySet<string>): OpenPlace[] {
  const counted = day.competitions[0]!.countedHoles
  return day.cards.flatMap(({ player, outcome, scores }, card) =>
    outcome === undefined && (of?.has(player) ?? true)
      ? scores.flatMap((score, hole) =>
          score === null && (counted?.includes(hole + 1) ?? true) ? [{ card, hole }] : [],
        )
      : [],
  )
}

/** Every day that can come of this one, the open places filled with any of these, and closed. */
export function* endings(day: Day, open: readonly OpenPlace[], scores: readonly HoleScore[]): Generator<Day> {
  const chosen = open.map(() => 0)
  for (;;) {
    const cards = day.cards.map((card): Card => ({ ...card, scores: [...card.scores] }))
    open.forEach(({ card, hole }, at) => {
      ;(cards[card]!.scores as HoleScore[])[hole] = scores[chosen[at]!]!
    })
    yield { ...day, cards, closed: true }
    let at = 0
    while (at < open.length && ++chosen[at]! === scores.length) chosen[at++] = 0
    if (at === open.length) return
  }
}

const standingsOf = (day: Day) => scoreDay(day)[0]!.standings

export interface Seen {
  readonly possible: First
  readonly certain: First
  readonly best: number | null
  readonly worst: number | null
}

const ORDER: readonly First[] = ['no', 'level', 'alone']

/** By entrant, over every ending. */
export function firstByEverything(day: Day, scores: readonly HoleScore[]): ReadonlyMap<string, Seen> {
  const seen = new Map<string, Seen>()
  const high = scoreDay(day)[0]!.better === 'high'
  for (const ending of endings(day, openPlaces(day), scores)) {
    const standings = standingsOf(ending)
    for (const one of standings) {
      const first: First = one.place !== 1 ? 'no' : one.tied ? 'level' : 'alone'
      const now = { possible: first, certain: first, best: one.score, worst: one.score }
      const before = seen.get(one.entrant) ?? now
      const better = (a: number, b: number) => (high ? a > b : a < b)
      seen.set(one.entrant, {
        possible: ORDER.indexOf(first) > ORDER.indexOf(before.possible) ? first : before.possible,
        certain: ORDER.indexOf(first) < ORDER.indexOf(before.certain) ? first : before.certain,
        best: before.best === null || (one.score !== null && better(one.score, before.best)) ? one.score : before.best,
        worst:
          before.worst === null || one.score === null || better(before.worst, one.score) ? one.score : before.worst,
      })
    }
  }
  return seen
}

export interface NeededSeen {
  readonly ties: number | null
  readonly wins: number | null
  readonly already: boolean
  readonly countback: Countback | null
}

/** What my open holes must come to, found by writing everything on them while theirs stays as it is. */
export function neededByEverything(
  day: Day,
  mine: { readonly entrant: string; readonly players: ReadonlySet<string> },
  theirs: { readonly entrant: string; readonly full: boolean },
  scores: readonly HoleScore[],
): NeededSeen {
  const high = scoreDay(day)[0]!.better === 'high'
  const open = openPlaces(day, mine.players)
  const holes = new Set(open.map(({ hole }) => hole))
  const target = standingsOf(day).find((one) => one.entrant === theirs.entrant)!
  const ways = new Set<Countback>()
  let ties: number | null = null
  let wins: number | null = null
  let already = true
  for (const ending of endings(day, open, scores)) {
    const standings = standingsOf(ending)
    const me = standings.find((one) => one.entrant === mine.entrant)!
    if (me.place === null) {
      already = false
      continue
    }
    const them = theirs.full ? standings.find((one) => one.entrant === theirs.entrant)! : target
    const total = me.holes.reduce((sum, line, i) => sum + (holes.has(i) ? (line.value ?? 0) : 0), 0)
    const figure = (one: Standing) => (high ? one.score! : -one.againstLevel!)
    if (figure(me) <= figure(them)) already = false
    if (figure(me) > figure(them)) {
      if (wins === null || (high ? total < wins : total > wins)) wins = total
    } else if (figure(me) === figure(them)) {
      ties = total
      if (theirs.full) ways.add(me.place < them.place! ? 'mine' : me.place > them.place! ? 'theirs' : 'level')
    }
  }
  return { ties, wins, already, countback: ways.size === 0 ? null : ways.size === 1 ? [...ways][0]! : 'depends' }
}

/** The ends a match can come to. */
export function matchByEverything(day: Day, scores: readonly HoleScore[]): ReadonlySet<string> {
  const ends = new Set<string>()
  for (const ending of endings(day, openPlaces(day), scores)) {
    const match: MatchResult = scoreDay(ending)[0]!.matches![0]!
    ends.add(match.winner === null ? 'halved' : match.winner === match.a ? 'won' : 'lost')
  }
  return ends
}
