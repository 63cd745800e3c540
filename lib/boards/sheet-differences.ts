// What the next sheet would say otherwise than the last one, in lines of words. Nothing to say means that the two are the
// same but for their number, their moment and their reason: such a sheet is not published.

import { capital, listed, ordinal, scoreLong } from './in-words'
import { sameValue as same } from './merge-fields'
import type { BoardRow, CompetitionBoard, ResultSheet } from './views'

/** Every part that differs is told, those without words of their own too: the same sheet is the one with no line here. */
export function sheetDifferences(last: ResultSheet, next: ResultSheet): readonly string[] {
  if (same(contentOf(last), contentOf(next))) return []
  const several = next.board.competitions.length > 1
  const said = [
    ...headDifferences(last, next),
    ...next.board.competitions.flatMap((now) => {
      const was = last.board.competitions.find((one) => one.id === now.id)
      const lead = several ? `${now.name}: ` : ''
      return was ? competitionDifferences(was, now).map((line) => lead + line) : [`${now.name} is new on the sheet.`]
    }),
    ...last.board.competitions
      .filter((one) => !next.board.competitions.some((now) => now.id === one.id))
      .map((one) => `${one.name} is no longer on the sheet.`),
    ...prizeDifferences(last, next),
    ...rulingDifferences(last, next),
  ]
  if (said.length > 0) return said
  if (!same(last.course, next.course)) return ['The averages of the holes.']
  if (!same(last.ties, next.ties)) return ['The sentences that say how ties were broken.']
  return ['The working or the wording behind the figures; no place, score or prize.']
}

/**
 * The sheet without its moments and numbers, without what only says how far play had come, and without the day's number
 * among the days of the season: a day called later changes nothing that was played here.
 */
function contentOf(sheet: ResultSheet): unknown {
  const { number: _n, reason: _r, without: _w, publishedAt: _p, by: _b, frozenAt: _f, board, ...rest } = sheet
  const {
    version: _v,
    countedAt: _c,
    published: _o,
    status: _s,
    groups: _g,
    play: _y,
    dayNumber: _d,
    dayCount: _k,
    ...shown
  } = board
  const competitions = shown.competitions.map((one) => ({
    ...one,
    rows: one.rows.map(({ progress: _progress, handedIn: _handed, ...row }) => row),
  }))
  return { ...rest, board: { ...shown, competitions } }
}

function headDifferences({ board: was }: ResultSheet, { board: now }: ResultSheet): string[] {
  return [
    ...(was.dayName === now.dayName ? [] : [`The day is called ${now.dayName}, was ${was.dayName}.`]),
    ...(was.date === now.date ? [] : [`The date is ${now.date}, was ${was.date}.`]),
    ...(was.courseName === now.courseName ? [] : [`The course is ${now.courseName}, was ${was.courseName}.`]),
  ]
}

function competitionDifferences(was: CompetitionBoard, now: CompetitionBoard): string[] {
  const before = new Map(was.rows.map((row) => [row.entrant, row]))
  const moved: string[] = []
  const lines: string[] = []
  for (const row of now.rows) {
    const old = before.get(row.entrant)
    before.delete(row.entrant)
    if (!old) lines.push(`${row.name} is new: ${standing(row, now)}.`)
    else if (old.name !== row.name) lines.push(`${row.name}, was written ${old.name}.`)
    if (!old) continue
    if (old.score !== row.score || old.noPlace !== row.noPlace)
      lines.push(`${row.name} ${standing(row, now)}, was ${standing(old, was)}.`)
    else if (old.playingHandicap !== row.playingHandicap)
      lines.push(`${row.name}: playing handicap ${figure(row)}, was ${figure(old)}.`)
    else if (!same(old.holes, row.holes)) lines.push(`${row.name}: ${holesDiffering(old, row)}.`)
    if (old.score === row.score && (old.place !== row.place || old.tied !== row.tied))
      moved.push(`${row.name} ${placeOf(row)} (was ${placeOf(old)})`)
  }
  for (const row of before.values()) lines.push(`${row.name} is no longer on it, was ${standing(row, was)}.`)
  if (moved.length > 0) lines.push(`Places that move: ${shortList(moved)}.`)
  return [
    ...termDifferences(was, now),
    ...lines,
    ...matchDifferences(was, now),
    ...divisionDifferences(was, now),
    ...(same(was.teams, now.teams) ? [] : ['The points of the teams.']),
  ]
}

function termDifferences(was: CompetitionBoard, now: CompetitionBoard): string[] {
  const terms = ({ name, formatName, allowance, allowanceFrom, moreTerms, tieRule }: CompetitionBoard) => [
    name,
    formatName,
    allowance,
    allowanceFrom,
    moreTerms,
    tieRule,
  ]
  return same(terms(was), terms(now)) ? [] : ['The terms, as the sheet says them.']
}

function matchDifferences(was: CompetitionBoard, now: CompetitionBoard): string[] {
  const called = (id: string) => now.names[id] ?? was.names[id] ?? 'unknown'
  return now.matches.flatMap((match) => {
    const old = was.matches.find((one) => one.id === match.id)
    if (old && old.result === match.result && old.winner === match.winner) return []
    const pair = `${called(match.a)} v ${called(match.b)}`
    return [old ? `${pair}: ${match.result}, was ${old.result}.` : `${pair} is new: ${match.result}.`]
  })
}

function divisionDifferences(was: CompetitionBoard, now: CompetitionBoard): string[] {
  const nameOf = new Map(now.rows.map((row) => [row.entrant, row.name]))
  return (now.divisions ?? []).flatMap((division) => {
    const old = was.divisions?.find((one) => one.id === division.id)
    if (!old) return [`${division.name} is new on the sheet.`]
    const places = new Map(old.rows.map((row) => [row.entrant, row]))
    const moved = division.rows.flatMap((row) => {
      const then = places.get(row.entrant)
      if (then && then.place === row.place && then.tied === row.tied) return []
      return [`${nameOf.get(row.entrant) ?? 'unknown'} ${placeOf(row)}${then ? ` (was ${placeOf(then)})` : ''}`]
    })
    return moved.length > 0 ? [`${division.name}: ${shortList(moved)}.`] : []
  })
}

function prizeDifferences(last: ResultSheet, next: ResultSheet): string[] {
  const key = ({ competition, name, division }: ResultSheet['prizes'][number]) =>
    [competition, division ?? '', name].join('\n')
  const before = new Map(last.prizes.map((prize) => [key(prize), prize]))
  const winner = (name: string) => (name === '–' ? 'nobody' : name)
  const lines = next.prizes.flatMap((prize) => {
    const old = before.get(key(prize))
    before.delete(key(prize))
    if (!old) return [`${capital(prize.name)} is a new prize: ${winner(prize.winner)}.`]
    if (old.winner !== prize.winner)
      return [`${capital(prize.name)}: ${winner(prize.winner)}, was ${winner(old.winner)}.`]
    if (old.valuePence !== prize.valuePence) return [`${capital(prize.name)} has another value.`]
    return []
  })
  const gone = [...before.values()].map((prize) => `${capital(prize.name)} is no longer a prize.`)
  const rule = last.prizeRule === next.prizeRule ? [] : ['How many prizes a player may take, or in which order.']
  return [...lines, ...gone, ...rule]
}

function rulingDifferences(last: ResultSheet, next: ResultSheet): string[] {
  const is = (one: ResultSheet['rulings'][number], among: ResultSheet['rulings']) =>
    among.some((other) => other.number === one.number && other.name === one.name)
  const told = ({ number, name, sentence }: ResultSheet['rulings'][number]) => `Ruling ${number}, ${name}: ${sentence}`
  return [
    ...next.rulings.filter((one) => !is(one, last.rulings)).map((one) => `New. ${told(one)}`),
    ...last.rulings.filter((one) => !is(one, next.rulings)).map((one) => `No longer in force. ${told(one)}`),
  ]
}

const placeOf = ({ place, tied }: Pick<BoardRow, 'place' | 'tied'>) =>
  place === null ? 'no place' : `${ordinal(place)}${tied ? ' equal' : ''}`

const NO_PLACE = {
  'no-return': 'no return',
  disqualified: 'disqualified',
  withdrawn: 'withdrawn',
  'not-started': 'not started',
  'one-round-only': 'one round only',
  'rounds-missing': 'not every round',
} as const

function standing(row: BoardRow, board: CompetitionBoard): string {
  if (row.noPlace) return NO_PLACE[row.noPlace]
  if (row.score === null) return 'without a score'
  return `${placeOf(row)} with ${scoreLong(row.score, board.unit, board.format !== 'gross')}`
}

const figure = ({ playingHandicap: of }: BoardRow) => (of === null ? 'none' : of < 0 ? `+${-of}` : String(of))

function holesDiffering(was: BoardRow, now: BoardRow): string {
  const holes = now.holes.flatMap((line, at) => (same(line, was.holes[at]) ? [] : [String(line.hole)]))
  if (holes.length === 0) return 'other holes'
  return holes.length === 1 ? `hole ${holes[0]}` : `holes ${listed(holes)}`
}

const MANY = 6

const shortList = (parts: readonly string[]) =>
  parts.length <= MANY ? parts.join(', ') : `${parts.slice(0, MANY).join(', ')} and ${parts.length - MANY} more`
