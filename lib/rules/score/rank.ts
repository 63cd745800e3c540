// Places: a total order with equals, the same whatever order the cards came in. Committee Procedures 5A(6) for ties,
// broken only once every card concerned is complete; until then those level share the place.

import type { CountbackFigure, HoleLine, Standing } from '../standings'
import { type Contender, signed as figureOf, firstWindow, howBroken, inOrder, type TieTerms } from '../ties/break-ties'
import { handicapOf, strokesOf } from './balls'
import type { Entry } from './entry-lines'
import { isMissed } from './rounds'
import type { TermsInForce } from './terms-in-force'

const LAST = ['not-started', 'rounds-missing', 'one-round-only', 'withdrawn', 'no-return', 'disqualified'] as const

function byId(a: Entry, b: Entry): number {
  return a.entrant.id < b.entrant.id ? -1 : a.entrant.id > b.entrant.id ? 1 : 0
}

/** More is ahead. On strokes, cards on different holes are compared against level par. */
export function rankKey(entry: Entry, { format }: Pick<TermsInForce, 'format'>): number {
  return format.better === 'high' ? entry.score : -entry.againstLevel
}

/** Of two finished cards: above zero when `a` is ahead, zero when the tie rule leaves them level. */
export function aheadBy(a: Entry, b: Entry, terms: TermsInForce): number {
  if (a.noPlace !== undefined || b.noPlace !== undefined)
    return (a.noPlace === undefined ? 1 : 0) - (b.noPlace === undefined ? 1 : 0)
  const ahead = rankKey(a, terms) - rankKey(b, terms)
  if (ahead !== 0 || terms.ties.steps.length === 0) return ahead
  const { format, ties } = terms
  const clusters = inOrder([contenderOf(a, terms), contenderOf(b, terms)], {
    rule: ties,
    better: format.better,
    unit: format.unit,
  })
  if (clusters.length === 1) return 0
  return clusters[0]![0]!.entrant === a.entrant.id ? 1 : -1
}

/** `whole`: the whole field, where these are only a part of it, so that both show the same figures. */
export function ranked(entries: readonly Entry[], terms: TermsInForce, whole: readonly Entry[] = entries): Standing[] {
  const figures = countbackOf(whole, terms)
  return inGroups(entries, terms).map((standing) => {
    const countback = standing.place === null ? undefined : figures.get(standing.entrant)
    return countback === undefined ? standing : { ...standing, countback }
  })
}

/**
 * What the tie rule first looks at, of every finished card. Empty where that is the second nine as it stands on the card
 * for everybody: the figure is there already.
 */
function countbackOf(entries: readonly Entry[], terms: TermsInForce): ReadonlyMap<string, CountbackFigure> {
  const { ties, format } = terms
  const tieTerms = { rule: ties, better: format.better, unit: format.unit }
  const figures = new Map<string, CountbackFigure>()
  let differs = false
  for (const entry of entries) {
    if (!entry.complete || entry.noPlace !== undefined || entry.rounds !== undefined || entry.in === null) continue
    const found = firstWindow(contenderOf(entry, terms), tieTerms)
    if (found === null) continue
    figures.set(entry.entrant.id, found)
    if (found.figure !== figureOf(entry.in, format.unit)) differs = true
  }
  return differs ? figures : new Map()
}

/** Each group of a game by itself, one after the other, unless the terms rank everybody together. */
function inGroups(entries: readonly Entry[], terms: TermsInForce): Standing[] {
  const groups = [...new Set(entries.flatMap(({ game }) => game?.group ?? []))].sort((a, b) => a - b)
  if (groups.length < 2 || terms.competition.ranking === 'everybody') return inPlaces(entries, terms)
  return groups.flatMap((group) =>
    inPlaces(
      entries.filter(({ game }) => game?.group === group),
      terms,
    ).map((standing) => ({ ...standing, group })),
  )
}

function inPlaces(entries: readonly Entry[], terms: TermsInForce): Standing[] {
  const key = (one: Entry) => rankKey(one, terms)
  const placed = entries.filter((one) => one.noPlace === undefined).sort((a, b) => key(b) - key(a) || byId(a, b))
  const standings: Standing[] = []
  for (let from = 0; from < placed.length; ) {
    let to = from + 1
    while (to < placed.length && key(placed[to]!) === key(placed[from]!)) to++
    if (to - from === 1) standings.push(standingOf(placed[from]!, from + 1, false, terms))
    else placeLevel(placed.slice(from, to), from + 1, terms, standings)
    from = to
  }
  const others = entries
    .filter((one) => one.noPlace !== undefined)
    .sort((a, b) => LAST.indexOf(a.noPlace!) - LAST.indexOf(b.noPlace!) || byId(a, b))
  for (const one of others) standings.push(standingOf(one, null, false, terms))
  return standings
}

function placeLevel(level: readonly Entry[], place: number, terms: TermsInForce, into: Standing[]): void {
  const { ties, format } = terms
  if (ties.steps.length === 0 || level.some((one) => !one.complete)) {
    for (const one of level) into.push(standingOf(one, place, true, terms))
    return
  }
  const tieTerms: TieTerms = { rule: ties, better: format.better, unit: format.unit }
  const entryOf = new Map(level.map((one) => [contenderOf(one, terms), one]))
  const clusters = inOrder([...entryOf.keys()], tieTerms)
  const order = clusters.flat().map((one) => one.entrant)
  let at = place
  clusters.forEach((cluster, c) => {
    const below = clusters[c + 1]?.[0]
    for (const one of cluster) {
      const broken = below === undefined ? undefined : howBroken(one, below, order, tieTerms)
      into.push(standingOf(entryOf.get(one)!, at, cluster.length > 1, terms, broken))
    }
    at += cluster.length
  })
}

export function contenderOf(entry: Entry, { format }: TermsInForce): Contender {
  const last = entry.rounds?.[entry.rounds.length - 1]?.entry ?? entry
  const lines = last.holes.filter((_, i) => last.counted[i])
  const shares = format.value.kind === 'strokes' && (format.side.to === 1 || format.ball === 'one')
  return {
    entrant: entry.entrant.id,
    values: lines.map((line) => line.value ?? 0),
    gross: shares ? lines.map((line) => (line.value ?? 0) + line.strokes) : null,
    handicap: strokesOf(last.balls),
    has: handicapOf(last.balls),
    handicapHoles: last.holes.length,
    numbers: lines.map((line) => line.hole),
    startsAt: startsAt(last, lines),
    lastRound: entry.rounds === undefined ? null : last.score,
  }
}

/** Which of the counted holes came first in the order of play. */
function startsAt({ balls }: Entry, lines: readonly HoleLine[]): number {
  const start = balls[0]?.card?.startHole
  const at = start === undefined ? 0 : lines.findIndex((line) => line.hole >= start)
  return Math.max(at, 0)
}

function standingOf(
  entry: Entry,
  place: number | null,
  tied: boolean,
  terms: TermsInForce,
  tieBroken?: Standing['tieBroken'],
): Standing {
  const { entrant, balls } = entry
  const one = balls.length === 1 ? balls[0]! : null
  const ownBalls = terms.format.ball === 'own'
  const handicaps: Record<string, number> = {}
  if (ownBalls) for (const ball of balls) if (!ball.filled) handicaps[ball.id] = ball.handicap
  const started = entry.holesPlayed > 0
  return {
    place,
    tied,
    entrant: entrant.id,
    players: entrant.players,
    courseHandicap: one?.course ?? null,
    playingHandicap: one !== null && (terms.format.side.to === 1 || !ownBalls) ? one.handicap : null,
    handicaps,
    score: place === null ? null : entry.score,
    againstLevel: place === null || !started ? null : entry.againstLevel,
    out: entry.out,
    in: entry.in,
    holesPlayed: entry.holesPlayed,
    holes: entry.holes,
    gross: entry.gross,
    ...(entry.noPlace === undefined ? {} : { noPlace: entry.noPlace }),
    ...(tieBroken === undefined ? {} : { tieBroken }),
    ...(entry.rounds === undefined ? {} : { rounds: roundScores(entry) }),
    ...drivesOf(entry, terms),
  }
}

function roundScores({ rounds }: Entry): Standing['rounds'] {
  return rounds?.map(({ round, entry }) => ({
    round,
    score: entry.noPlace === undefined ? entry.score : null,
    ...(isMissed(entry) ? { missed: true as const } : {}),
  }))
}

/** Drives taken of each player, where the card says whose, and who has too few for the terms. Society custom. */
function drivesOf(entry: Entry, { format, competition }: TermsInForce): Pick<Standing, 'drives' | 'drivesShort'> {
  const taken = format.ball === 'one' ? entry.balls[0]?.card?.drives : undefined
  if (taken === undefined) return {}
  const drives: Record<string, number> = {}
  for (const player of entry.entrant.players) drives[player] = taken.filter((one) => one === player).length
  const minimum = competition.minimumDrives
  if (minimum === undefined) return { drives }
  return { drives, drivesShort: entry.entrant.players.filter((player) => drives[player]! < minimum) }
}
