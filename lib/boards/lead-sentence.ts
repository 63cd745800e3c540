// The one sentence over the board: how it stands, and how much is still to come.

import type { DayRecord } from '@/lib/facts/day-record'
import { isRound } from './card-progress'
import type { CardsOnTheirWay } from './cards-on-their-way'
import { clockInWords } from './dates-in-words'
import type { Names } from './entrant-names'
import type { TeamLine } from './extra-views'
import {
  againstLevelInWords,
  capital,
  counted,
  inWords,
  isSeveral,
  listed,
  listedSides,
  scoreLong,
  scoreShort,
} from './in-words'
import { firstInGroups } from './shared-games'
import { tieFigures } from './tie-sentences'
import type { BoardRow, CompetitionBoard } from './views'

/** One full stop, also after a name that is shown by initials. */
export const leadSentence = (...of: Parameters<typeof sentenceOf>): string => sentenceOf(...of).replace(/\.\.$/, '.')

function sentenceOf(
  record: Pick<DayRecord, 'status' | 'round' | 'entries'>,
  main: CompetitionBoard | undefined,
  way: CardsOnTheirWay,
  names: Names,
): string {
  const { status, round, entries } = record
  const entered = entries.filter((entry) => entry.status === 'entered').length
  if (entered === 0) return 'Nobody is entered yet.'
  if (status === 'called') return `${capital(counted(entered, 'player'))} entered so far.`
  if (!main) return `${capital(counted(entered, 'player'))} on the start sheet.`
  if (main.matches.length && !main.rows.length) return matchesSentence(main)
  const placed = main.rows.filter((row) => row.place !== null)
  if (!placed.some((row) => row.holesPlayed > 0)) {
    const start = round.startKind === 'shotgun' ? 'Everybody starts' : 'The first group starts'
    return status === 'closed' ? `Nobody has a result in ${main.name}.` : `${start} at ${clockInWords(round.firstTee)}.`
  }
  const games = gamesSentence(main, names)
  if (games !== null) return games
  return status === 'closed' ? wonSentence(main, placed, names) : leadingSentence(main, placed, way, names)
}

/** "Group 1: Ashgill with 9 skins. Group 2: …" Null where one list of places holds everybody. */
function gamesSentence(main: CompetitionBoard, names: Names): string | null {
  const groups = firstInGroups(main)
  if (groups.length < 2) return null
  return groups
    .map(({ groupNumber, best }) => {
      const who = listedSides(best.map((row) => names.entrantShort(row.entrant)))
      return `Group ${groupNumber}: ${who} with ${scoreLong(best[0]!.score ?? 0, main.unit, true)}.`
    })
    .join(' ')
}

function leadingSentence(
  main: CompetitionBoard,
  placed: readonly BoardRow[],
  way: CardsOnTheirWay,
  names: Names,
): string {
  const first = placed.filter((row) => row.place === 1)
  const at = standingOf(main, first[0]!)
  const rest = toComeInWords(main, way)
  if (first.length > 4) return `${capital(inWords(first.length))} are level ${at}, ${rest}.`
  if (first.length > 1)
    return `${listedSides(first.map((row) => names.entrantShort(row.entrant)))} are level ${at} ${rest}.`
  const name = names.entrantShort(first[0]!.entrant)
  return `${name} ${isSeveral(name) ? 'lead' : 'leads'} ${at}${afterInWords(first[0]!)} ${rest}.`
}

/** A leader who is still on the course leads after so many holes. */
function afterInWords({ progress, holesPlayed, rounds }: BoardRow): string {
  return progress?.state !== 'on-hole' || rounds ? '' : ` after ${counted(holesPlayed, 'hole')}`
}

/** Who has not played the last hole yet, and the cards that only want a signature: nobody is counted twice or left out. */
function toComeInWords(main: CompetitionBoard, way: CardsOnTheirWay): string {
  const open = main.rows.filter(({ progress }) => progress && !isRound(progress))
  const [one = 'player', many = 'players'] =
    WORD_FOR[Math.max(1, ...open.map(({ entryIds }) => entryIds.length))] ?? SIDE
  const parts = [
    open.length > 0 ? `${counted(open.length, one, many)} still to finish` : '',
    way.toSign > 0 ? `${counted(way.toSign, 'card')} to be signed` : '',
  ].filter((part) => part !== '')
  return parts.length === 0 ? 'with every card in' : `with ${parts.join(' and ')}`
}

const SIDE = ['side', 'sides'] as const
const WORD_FOR: Readonly<Record<number, readonly [string, string]>> = { 1: ['player', 'players'], 2: ['pair', 'pairs'] }

/** "on 38", "at two under"; strokes of unfinished cards are told against level par. */
function standingOf(main: CompetitionBoard, row: BoardRow): string {
  if (main.unit === 'strokes') return `at ${againstLevelInWords(row.againstLevel ?? 0)}`
  if (main.unit === 'skins') return `with ${scoreLong(row.score ?? 0, main.unit, true)}`
  return `${main.unit === 'points' ? 'on ' : ''}${scoreShort(row.score ?? 0, main.unit)}`
}

function wonSentence(main: CompetitionBoard, placed: readonly BoardRow[], names: Names): string {
  const first = placed.filter((row) => row.place === 1)
  const winner = first[0]!
  const score = scoreLong(winner.score ?? 0, main.unit, main.format !== 'gross')
  if (first.length > 1)
    return `${listedSides(first.map((row) => names.entrantShort(row.entrant)))} share first place with ${score}.`
  const name = names.entrantShort(winner.entrant)
  if (winner.tieBroken)
    return `${name} won with ${score}, on countback from ${names.entrantShort(winner.tieBroken.against)}: ${tieFigures(winner.tieBroken)}.`
  const next = placed.find((row) => row.place !== 1)
  const ahead = next ? Math.abs((winner.score ?? 0) - (next.score ?? 0)) : 0
  return ahead > 0
    ? `${name} won with ${score}, ${inWords(ahead)} ahead of ${names.entrantShort(next!.entrant)}.`
    : `${name} won with ${score}.`
}

function matchesSentence({ matches }: CompetitionBoard): string {
  const finished = matches.filter((match) => match.finished).length
  const { length } = matches
  if (finished < length)
    return length === 1
      ? 'The match is not finished.'
      : `${capital(inWords(finished))} of ${inWords(length)} matches finished.`
  if (length === 1) return 'The match is finished.'
  return `${length === 2 ? 'Both' : `All ${inWords(length)}`} matches are finished.`
}

/** How the teams stand over all their matches; null on a day without teams or without a match. */
export function teamSentence(
  { status }: Pick<DayRecord, 'status'>,
  competitions: readonly CompetitionBoard[],
  teams: readonly TeamLine[],
): string | null {
  const matches = competitions.filter((one) => one.teams).flatMap((one) => one.matches)
  const [first, second, ...others] = [...teams].sort((a, b) => b.halfPoints - a.halfPoints)
  if (status === 'called' || !first || !second || matches.length === 0) return null
  const out = matches.filter((match) => !match.finished).length
  const score = `${first.points} to ${listed([second, ...others].map((one) => one.points))}`
  const still = out === 0 ? '' : ` with ${counted(out, 'match', 'matches')} still to finish`
  if (first.halfPoints === second.halfPoints)
    return out === 0 ? `The teams halve the match, ${score}.` : `The teams are level, ${score}${still}.`
  return out === 0 ? `${first.name} won the match ${score}.` : `${first.name} leads ${score}${still}.`
}
