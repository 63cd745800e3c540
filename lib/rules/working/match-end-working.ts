// How a match came out: holes won and lost (Rules of Golf 3.2a), each of several matches inside it by itself, and an end
// off the course (3.2b, 1.3c; a walkover and an abandoned match are the committee's).

import { settingsOf } from '../matches/match'
import { endingOf, extraHolesPlayed } from '../matches/match-endings'
import { type PartPlayed, partsPlayed } from '../matches/match-parts'
import { type MatchPlayed, type MatchSettings, playMatch } from '../matches/play-match'
import type { MatchState, WorkingStep } from '../standings'
import { type MatchSeen, nameIn } from './match-seen'
import { capital, inWords, says, withUnit } from './words'

const CLAUSE = 'Rules of Golf 3.2a'
const COMMITTEE = 'Ruling of the committee'

/** The whole match, or its parts where it has some, then what ended it otherwise than on the last green. */
export function endSteps(seen: MatchSeen): WorkingStep[] {
  const settings = settingsOf(seen.match, seen.balls, seen.terms, seen.day.closed)
  const whole = playMatch(seen.balls.a, seen.balls.b, settings)
  const parts = partsIn(seen, settings, whole)
  const ended = endingSteps(seen, settings.startHole)
  const steps =
    parts !== null
      ? parts.map((part) => partStep(seen, part))
      : ended.length === 0
        ? [stretchStep(seen, 'The match', whole)]
        : [stretchStep(seen, 'On the course', { ...whole, finished: false })]
  return whole.holesPlayed === 0 && ended.length > 0 ? ended : [...steps, ...ended]
}

/** After a hole: how each part stands that is shorter than the round and has this hole in it. */
export function partSteps(seen: MatchSeen, hole: number): WorkingStep[] {
  const settings = settingsOf(seen.match, seen.balls, seen.terms, seen.day.closed)
  const parts = partsIn(seen, settings, playMatch(seen.balls.a, seen.balls.b, settings)) ?? []
  return parts.flatMap(({ name, course: part }) => {
    const at = part.states.findIndex((state) => state.hole === hole)
    if (at < 0 || part.states.length === seen.result.holes.length) return []
    const states = part.states.slice(0, at + 1)
    const label = `${capital(name)} after hole ${hole}`
    if (part.states[at]!.up === null) {
      const sentence = 'This hole does not count here: not played, or this part was over.'
      return [{ figure: '–', label, sentence, clause: CLAUSE }]
    }
    const { a, b } = wonIn(states)
    const counted = states.filter(({ up }) => up !== null).length
    const left = part.states.length - counted
    const up = a - b
    return [stretchStep(seen, label, { ...part, up, states, holesPlayed: counted, finished: overWith(up, left) }, left)]
  })
}

function partsIn({ match, balls, terms }: MatchSeen, settings: MatchSettings, whole: MatchPlayed) {
  return partsPlayed(match, balls, settings, terms, endingOf(match, balls, whole, settings, terms))
}

function partStep(seen: MatchSeen, { name, course, withWhole }: PartPlayed): WorkingStep {
  const step = stretchStep(seen, capital(name), course)
  return withWhole ? { ...step, sentence: `${step.sentence} It went with the match.` } : step
}

const sizeOf = (n: number) => (n < 0 ? -n : n)
const holes = (n: number) => (n === 0 ? 'no hole' : withUnit(n, 'hole'))
const overWith = (up: number, left: number) => left === 0 || sizeOf(up) > left

function wonIn(states: readonly MatchState[]): { readonly a: number; readonly b: number; readonly halved: number } {
  let before = 0
  let a = 0
  let b = 0
  let halved = 0
  for (const { up } of states) {
    if (up === null) continue
    if (up > before) a++
    else if (up < before) b++
    else halved++
    before = up
  }
  return { a, b, halved }
}

/** A stretch of holes as a match: "Holes 1 to 9: Ashgill won 4, Verrow 1, 2 halved. Ashgill wins it with 2 to play." */
function stretchStep(
  seen: MatchSeen,
  label: string,
  played: MatchPlayed,
  left = played.states.length - played.holesPlayed,
): WorkingStep {
  const { day, match } = seen
  if (played.holesPlayed === 0) return { figure: '–', label, sentence: 'Not started.', clause: CLAUSE }
  const { up, finished, states } = played
  const [a, b] = [nameIn(day, match.a), nameIn(day, match.b)]
  const won = wonIn(states)
  const lead = sizeOf(up)
  const ahead = up > 0 ? a : b
  const togo = left === 0 ? '' : ` with ${left} to play`
  const state = up === 0 ? 'Level' : `${ahead} ${lead} up`
  const end = finished
    ? up === 0
      ? 'Halved.'
      : `${ahead} ${says(ahead, 'wins', 'win')} it, ${lead} up${togo}.`
    : `${state}${togo}.`
  return {
    figure: finished ? played.result : up === 0 ? 'level' : `${lead} up`,
    label,
    ...(up === 0 ? {} : { sum: up > 0 ? `${won.a} − ${won.b}` : `${won.b} − ${won.a}` }),
    sentence: `${a} won ${holes(won.a)}, ${b} ${holes(won.b)}, ${won.halved === 0 ? 'none' : inWords(won.halved)} halved${concededIn(seen, states)}. ${end}`,
    clause: CLAUSE,
  }
}

/** ", hole 4 conceded to Verrow" */
function concededIn({ day, match }: MatchSeen, states: readonly MatchState[]): string {
  const here = new Set(states.map(({ hole }) => hole))
  return (match.concededHoles ?? [])
    .filter(({ hole }) => here.has(hole))
    .map(({ hole, to }) => `, hole ${hole} conceded to ${nameIn(day, match[to])}`)
    .join('')
}

function endingSteps(seen: MatchSeen, startHole: number): WorkingStep[] {
  const { day, match, result, balls, terms } = seen
  const nameOf = (end: 'a' | 'b') => nameIn(day, match[end])
  // In the margin stands "won": how, the sentence says.
  const wonBy = (end: 'a' | 'b', how: string, clause: string): WorkingStep[] => {
    const winner = nameOf(end)
    const sentence = `${how}: ${winner} ${says(winner, 'wins', 'win')} the match.`
    return [{ figure: 'won', label: 'How it ended', sentence, clause }]
  }
  const other = (end: 'a' | 'b') => (end === 'a' ? 'b' : 'a')
  if (match.walkover !== undefined) return wonBy(match.walkover, 'A walkover, nobody came to play against', COMMITTEE)
  if (match.concededBy !== undefined)
    return wonBy(other(match.concededBy), `${nameOf(match.concededBy)} conceded`, 'Rules of Golf 3.2b')
  if (match.result !== undefined) {
    if (match.result.winner !== null)
      return wonBy(match.result.winner, `The result given at the desk, ${result.result}`, COMMITTEE)
    const sentence = 'The result given at the desk: the match was halved.'
    return [{ figure: 'halved', label: 'How it ended', sentence, clause: COMMITTEE }]
  }
  const winner = result.winner === match.b ? 'b' : 'a'
  const loser = nameOf(other(winner))
  switch (result.result) {
    case 'no result': {
      const sentence = 'Neither side is in the match any more: it counts for nobody.'
      return [{ figure: '–', label: 'How it ended', sentence, clause: 'Rules of Golf 1.3c and 3.2b' }]
    }
    case 'disqualified':
      return wonBy(winner, `${loser} ${says(loser, 'is', 'are')} disqualified`, 'Rules of Golf 1.3c')
    case 'conceded':
      return wonBy(winner, `${loser} withdrew, and whoever withdraws concedes`, 'Rules of Golf 3.2b')
  }
  if (match.abandoned === true && result.result.endsWith('abandoned')) {
    const figure = result.result.replace(/^[AB] /, '').replace(/ after.*|, abandoned/, '')
    const sentence = 'Stopped and not to be finished: it stands as it was.'
    return [{ figure: figure === 'not started' ? '–' : figure, label: 'How it ended', sentence, clause: COMMITTEE }]
  }
  if (match.extraHoles === undefined || !result.result.startsWith('at the ')) return []
  return extraHolesPlayed(match.extraHoles, balls, { startHole }, terms).map(({ hole, a, b, won }, at, all) => ({
    figure: at === all.length - 1 ? result.result.slice('at the '.length) : 'level',
    label: `Extra hole ${at + 1}: hole ${hole}`,
    sum: `${a === 'x' ? 'no score' : a} to ${b === 'x' ? 'no score' : b}`,
    sentence:
      won === 0 ? 'Halved: one more is played.' : `Won by ${nameOf(won > 0 ? 'a' : 'b')}, and the match with it.`,
    clause: CLAUSE,
  }))
}
