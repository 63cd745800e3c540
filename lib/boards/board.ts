// The whole board of a day, from the record: finished and serialisable.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import { playNow } from '@/lib/facts/play-stop'
import { inWords as allowanceInWords, formatOf } from '@/lib/rules/formats/catalogue'
import { teamTotal } from '@/lib/rules/matches/team-match'
import { tiesIn } from '@/lib/rules/score/terms-in-force'
import { scoreDay } from '@/lib/rules/score-day'
import type { CompetitionResult, HoleLine, MatchResult, Standing } from '@/lib/rules/standings'
import { calledOffSentence } from './called-off'
import { cardsOnTheirWay, progressOfRow } from './cards-on-their-way'
import { boardChances } from './chances'
import { countedOtherwiseSaid } from './counted-terms'
import type { CurrentCard } from './current-card'
import { cardsAsTheyStand, dayOfRecord } from './day-of-record'
import { dayRulingsSaid } from './day-rulings'
import { divisionBoards } from './divisions'
import { type Names, namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { groupsOnCourse } from './groups-on-course'
import { houseRulesSaid } from './house-rules'
import { playerIds } from './ids-from-engine'
import { withoutStop } from './in-words'
import { leadSentence, teamSentence } from './lead-sentence'
import { withoutMatchSaid } from './left-out'
import { resultShown } from './match-sentences'
import { drivesOfRow, holesOfDay, noteOfRow, roundsOfRow, sharedGroupsOf } from './row-extras'
import { withoutPartnerSaid } from './short-of-partner'
import { countRuleInWords, rarerTermsInWords } from './terms-in-words'
import { tieRuleInWords, tieSentence } from './tie-sentences'
import type { BoardRow, CompetitionBoard, DayBoard, DayHead } from './views'

export function dayHead(record: DayRecord): DayHead {
  return {
    societySlug: record.society.slug,
    societyName: record.society.name,
    daySlug: record.slug,
    dayName: record.name,
    dayNumber: record.number,
    dayCount: record.season.dayCount,
    seasonName: record.season.name,
    date: record.date,
    courseName: record.round.courseName,
    status: record.status,
    published: record.publications.at(-1)?.number ?? null,
  }
}

export function boardOf(record: DayRecord, countedAt: Date): DayBoard {
  const cards = cardsAsTheyStand(record)
  const day = dayOfRecord(record)
  const results = scoreDay(day)
  const names = namesOf(record)
  const way = cardsOnTheirWay(record, cards)
  const competitions = record.competitions.flatMap((one) => {
    const result = results.find(({ competition }) => competition === one.id)
    if (!result) return []
    const board = competitionBoard(record, one, result, cards, names)
    const ofTeams = board.teams ? teamSentence(record, [board], board.teams) : null
    return [{ ...board, sentence: ofTeams ?? leadSentence(record, board, way, names) }]
  })
  const teams = teamTotal(results, day)
  const course = record.tees.find((tee) => tee.isDefault && tee.gender === 'men') ?? record.tees[0]
  return {
    ...dayHead(record),
    players: record.entries.filter((entry) => entry.status === 'entered').length,
    start: { kind: record.round.startKind, firstTee: record.round.firstTee },
    cards: way.cards,
    cardsIn: way.in,
    cardsToSign: way.toSign,
    ...(way.notReturned > 0 ? { cardsNotReturned: way.notReturned } : {}),
    course: (course?.holes ?? []).map(({ hole, par, yards }) => ({ hole, par, yards: yards ?? null })),
    groups: groupsOnCourse(record, cards),
    ...(record.teams.length > 0
      ? { teamLists: record.teams.map(({ id, name, entryIds }) => ({ id, name, entryIds })) }
      : {}),
    competitions,
    ...(teams.length > 1 ? { teams: [...teams].sort((a, b) => b.halfPoints - a.halfPoints) } : {}),
    sentence: record.calledOff
      ? calledOffSentence(record.calledOff.reason)
      : (teamSentence(record, competitions, teams) ??
        competitions[0]?.sentence ??
        leadSentence(record, undefined, way, names)),
    ...(record.calledOff ? { calledOff: record.calledOff.reason } : {}),
    version: `${record.version}.${record.boardVersion}`,
    countedAt: countedAt.toISOString(),
    play: playNow(record.playStops),
  }
}

export function competitionBoard(
  record: DayRecord,
  competition: CompetitionRecord,
  result: CompetitionResult,
  cards: ReadonlyMap<string, CurrentCard>,
  names: Names,
): CompetitionBoard {
  const { allowanceFrom, allowanceReason, dividedBy, ties } = competition.terms
  const format = formatIn(competition)
  const inForce = format ? tiesIn(format, ties) : ties
  const published = result.allowanceFrom.replace(/^published, /, '')
  const chances = boardChances(record, competition, result.unit, names)
  return {
    id: competition.id,
    name: competition.name,
    format: competition.format,
    formatName: formatOf(competition.format)?.name ?? competition.format,
    allowance:
      dividedBy === undefined ? allowanceInWords(result.allowance) : `course handicaps added up ÷ ${dividedBy}`,
    allowanceFrom:
      allowanceFrom === 'published' && dividedBy === undefined && result.allowanceFrom.startsWith('published')
        ? `Allowance from the ${published}`
        : `House choice${allowanceReason ? `: ${withoutStop(allowanceReason)}` : ''}`,
    moreTerms: [
      ...withoutPartnerSaid(record, competition, names),
      ...withoutMatchSaid(record, competition, names),
      ...countRuleInWords(competition),
      ...rarerTermsInWords(competition),
      ...houseRulesSaid(record, competition, result, format),
      ...countedOtherwiseSaid(record, competition),
      ...dayRulingsSaid(record, competition.id, names),
    ],
    tieRule: tieRuleInWords(inForce, 1 + competition.countedDayIds.length),
    unit: result.unit,
    better: result.better,
    ...(result.divisions?.length ? { divisions: divisionBoards(competition.terms, result, names, format) } : {}),
    rows: result.standings.map((standing) => boardRow(record, competition, standing, result.unit, cards, names)),
    matches: (result.matches ?? []).map((match) => namedResult(match, names)),
    names: Object.fromEntries(
      (result.matches ?? []).flatMap(({ a, b }) => [a, b]).map((id) => [id, names.entrant(id)]),
    ),
    ...(result.teams && result.teams.length > 1 ? { teams: result.teams } : {}),
    ...sharedGroupsOf(record, competition, result),
    ...(chances ? { chances } : {}),
  }
}

/** "A 2 up after 11" with the name of A; without one where the winner's name stands before it, "2 up after 11, abandoned". */
function namedResult(match: MatchResult, names: Names): MatchResult {
  const short = { a: names.entrantShort(match.a), b: names.entrantShort(match.b) }
  const parts = match.parts?.map((part) => ({ ...part, result: resultShown(part, short) }))
  return { ...match, result: resultShown(match, short), ...(parts ? { parts } : {}) }
}

function boardRow(
  record: DayRecord,
  competition: CompetitionRecord,
  standing: Standing,
  unit: CompetitionBoard['unit'],
  cards: ReadonlyMap<string, CurrentCard>,
  names: Names,
): BoardRow {
  const { entrant, players, tieBroken, score } = standing
  const [first] = players
  const group = record.groups.find((one) => first !== undefined && one.entryIds.some((id) => id === first))
  const notAgreed = new Set(players.flatMap((id) => cards.get(id)?.notAgreed ?? []))
  const states = players.flatMap((id) => record.cards.find((card) => card.entryId === id)?.state ?? [])
  const holes = holesOfDay(record, standing)
  const progress = progressOfRow(record, cards, playerIds(players), formatIn(competition)?.ball === 'one')
  return {
    place: standing.place,
    tied: standing.tied,
    entrant,
    entryIds: playerIds(players),
    name: names.entrant(entrant),
    ...(players.length > 1 ? { players: playerIds(players).map(names.short) } : {}),
    note: noteOfRow(record, competition, standing, names),
    playingHandicap: standing.playingHandicap,
    score,
    againstLevel: standing.againstLevel,
    out: standing.out,
    in: standing.in,
    ...(standing.countback ? { countback: standing.countback } : {}),
    gross: standing.gross,
    holesPlayed: standing.holesPlayed,
    last: lastHole(holes, group?.startHole ?? 1),
    holes,
    noPlace: standing.noPlace ?? null,
    tieBroken: tieBroken ?? null,
    tieSentence: tieBroken ? tieSentence(tieBroken, entrant, score ?? 0, unit, names) : null,
    notAgreed: [...notAgreed].sort((a, b) => a - b),
    handedIn: states.length > 0 && states.every((state) => state !== 'out'),
    ...(progress ? { progress } : {}),
    groupNumber: group?.number ?? null,
    ...roundsOfRow(record, standing),
    ...drivesOfRow(record, competition, standing, names),
  }
}

/** In the order the group plays: a shotgun group that began on 14 finishes on 13. */
export function inPlayOrder<T extends { readonly hole: number }>(holes: readonly T[], startHole: number): T[] {
  const at = holes.findIndex((one) => one.hole === startHole)
  return at <= 0 ? [...holes] : [...holes.slice(at), ...holes.slice(0, at)]
}

function lastHole(holes: readonly HoleLine[], startHole: number): BoardRow['last'] {
  const last = inPlayOrder(holes, startHole).findLast((line) => line.gross !== null && line.value !== null)
  if (!last || last.gross === null || last.value === null) return null
  return { hole: last.hole, gross: last.gross, value: last.value }
}
