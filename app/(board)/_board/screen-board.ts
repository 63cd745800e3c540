// What one competition's board needs on the screen and nothing more: the whole day board weighs eight times as much,
// and a phone on a slow line pays for every byte twice (once as page, once as data).

import { rowsOfDivision } from '@/lib/boards/divisions'
import type { BoardRow, CompetitionBoard, DayBoard, DayHead } from '@/lib/boards/views'
import type { PlayNow } from '@/lib/facts/play-stop'

/** hole, strokes received, gross, value, who counted. */
export type ScreenHole = readonly [number, number, number | 'x' | null, number | null, string?]

export interface ScreenRow
  extends Pick<
    BoardRow,
    | 'place'
    | 'tied'
    | 'entrant'
    | 'entryIds'
    | 'name'
    | 'players'
    | 'note'
    | 'playingHandicap'
    | 'score'
    | 'againstLevel'
    | 'out'
    | 'in'
    | 'gross'
    | 'holesPlayed'
    | 'last'
    | 'noPlace'
    | 'tieSentence'
    | 'notAgreed'
    | 'handedIn'
    | 'progress'
    | 'groupNumber'
    | 'rounds'
    | 'away'
    | 'drives'
  > {
  readonly holes: readonly ScreenHole[]
}

export interface ScreenBoard {
  readonly head: DayHead
  readonly competition: Omit<CompetitionBoard, 'rows' | 'matches' | 'sentence'>
  readonly competitions: readonly { readonly id: string; readonly name: string }[]
  readonly rows: readonly ScreenRow[]
  readonly matches: CompetitionBoard['matches']
  readonly course: DayBoard['course']
  readonly groups: DayBoard['groups']
  /** Points of the teams over all the matches of the day. */
  readonly teams?: DayBoard['teams']
  readonly teamLists: NonNullable<DayBoard['teamLists']>
  readonly players: number
  /** Cards there are, and how many of them are handed in or accepted. */
  readonly cards: number
  readonly cardsIn: number
  /** Of those in: never returned. */
  readonly cardsNotReturned: number
  readonly cardsToSign: number
  readonly sentence: string
  readonly version: string
  readonly countedAt: string
  /** Zone of the society's clock. */
  readonly zone: string
  /** The newest word of the desk about play. */
  readonly play?: PlayNow | null
}

function screenRow(row: BoardRow): ScreenRow {
  const { holes, tieBroken: _inWords, ...kept } = row
  return {
    ...kept,
    holes: holes.map((line) =>
      line.by && line.by.length > 0
        ? [line.hole, line.strokes, line.gross, line.value, line.by.join(' ')]
        : [line.hole, line.strokes, line.gross, line.value],
    ),
  }
}

export function headOf(board: DayBoard): DayHead {
  const { societySlug, societyName, daySlug, dayName, dayNumber, dayCount, seasonName, date, courseName, status } =
    board
  return {
    societySlug,
    societyName,
    daySlug,
    dayName,
    dayNumber,
    dayCount,
    seasonName,
    date,
    courseName,
    status,
    published: board.published,
  }
}

/** Competition `c` counts from 1, as the address does; anything else is the first. Null on a day without competitions. */
export function screenBoard(board: DayBoard, c: number, zone: string): ScreenBoard | null {
  const competition = board.competitions[c - 1] ?? board.competitions[0]
  if (!competition) return null
  const { rows, matches, sentence, ...terms } = competition
  return {
    head: headOf(board),
    competition: terms,
    competitions: board.competitions.map(({ id, name }) => ({ id, name })),
    rows: rows.map(screenRow),
    matches,
    course: board.course,
    groups: board.groups,
    ...(board.teams ? { teams: board.teams } : {}),
    teamLists: board.teamLists ?? [],
    players: board.players,
    cards: board.cards ?? board.players,
    cardsIn: board.cardsIn,
    cardsToSign: board.cardsToSign ?? 0,
    cardsNotReturned: board.cardsNotReturned ?? 0,
    sentence: sentence ?? board.sentence,
    version: board.version,
    countedAt: board.countedAt,
    zone,
    ...(board.play ? { play: board.play } : {}),
  }
}

/** The division asked for, if the competition has it. */
export function divisionOf(board: Pick<ScreenBoard, 'competition'>, asked: string | undefined): string | null {
  return board.competition.divisions?.find(({ id }) => id === asked)?.id ?? null
}

/** The board of one division: its rows in their order, with their places; all rows for null. */
export function inDivision(board: ScreenBoard, division: string | null): ScreenBoard {
  if (division === null) return board
  return { ...board, rows: rowsOfDivision({ rows: board.rows, divisions: board.competition.divisions }, division) }
}

export const VIEWS = ['leaders', 'teams', 'groups', 'needs', 'mine'] as const
export type View = (typeof VIEWS)[number]

export function viewOf(asked: string | undefined): View {
  return VIEWS.find((view) => view === asked) ?? 'leaders'
}

/** The views this board has something for: teams and what it needs to win are not there every day. */
export function viewsOf(board: Pick<ScreenBoard, 'competition' | 'teamLists' | 'matches'>): readonly View[] {
  const without: View[] = []
  if (board.teamLists.length === 0) without.push('teams')
  if (!board.competition.chances) without.push('needs')
  // A match is read by its two sides, not by a place.
  if (board.matches.length > 0) without.push('teams', 'groups', 'needs', 'mine')
  return VIEWS.filter((view) => !without.includes(view))
}

/** Rows under the team that all their players belong to, in the order of the teams; the others stand last. */
export function byTeam(board: Pick<ScreenBoard, 'rows' | 'teamLists'>) {
  const sheets = board.teamLists.map((team) => ({
    team,
    rows: board.rows.filter((row) => row.entryIds.length > 0 && row.entryIds.every((id) => team.entryIds.includes(id))),
  }))
  const seen = new Set(sheets.flatMap(({ rows }) => rows.map((row) => row.entrant)))
  return {
    sheets: sheets.filter(({ rows }) => rows.length > 0),
    loose: board.rows.filter((row) => !seen.has(row.entrant)),
  }
}

/** Rows under their groups, in starting order; whoever has no group stands last. */
export function byGroup(board: Pick<ScreenBoard, 'rows' | 'groups'>) {
  const sheets = board.groups.map((group) => ({
    group,
    rows: board.rows.filter((row) => row.entryIds.some((id) => group.entryIds.includes(id))),
  }))
  const seen = new Set(sheets.flatMap(({ rows }) => rows.map((row) => row.entrant)))
  const loose = board.rows.filter((row) => !seen.has(row.entrant))
  return { sheets: sheets.filter(({ rows }) => rows.length > 0), loose }
}

export function rowOf(board: Pick<ScreenBoard, 'rows'>, entryId: string | null): ScreenRow | null {
  if (!entryId) return null
  return board.rows.find((row) => row.entrant === entryId || row.entryIds.some((id) => id === entryId)) ?? null
}
