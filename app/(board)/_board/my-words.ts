// One player's standing in a sentence: "17th with 21 points after 11 holes, two points behind Storrey after the same 11."

import { inWords, ordinal } from '@/lib/boards/in-words'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { NO_PLACE, scoreWords, shortName } from './words'

interface Gap {
  /** Above nought: behind the leader. */
  readonly behind: number
  /** Said where the two have not played the same holes: how many are compared. */
  readonly after: number | null
}

/** Two figures say something of each other only on the same holes. */
function gapTo(board: ScreenBoard, leader: ScreenRow, row: ScreenRow): Gap | null {
  if (leader.score === null || row.score === null) return null
  const better = board.competition.better === 'high' ? 1 : -1
  const [theirs, mine] = [valuesOf(leader), valuesOf(row)]
  const same = [...mine.keys()].filter((hole) => theirs.has(hole))
  if (same.length === mine.size && same.length === theirs.size)
    return { behind: (leader.score - row.score) * better, after: null }
  // A sum of several rounds has more in it than the holes of this day.
  if (same.length === 0 || row.rounds || leader.rounds) return null
  const sum = (values: ReadonlyMap<number, number>) => same.reduce((total, hole) => total + (values.get(hole) ?? 0), 0)
  return { behind: (sum(theirs) - sum(mine)) * better, after: same.length }
}

function valuesOf({ holes }: ScreenRow): ReadonlyMap<number, number> {
  return new Map(holes.flatMap(([hole, , , value]) => (value === null ? [] : [[hole, value]])))
}

function behind(board: ScreenBoard, row: ScreenRow): string {
  const leader = board.rows[0]
  if (!leader || leader.entrant === row.entrant) return ''
  const gap = gapTo(board, leader, row)
  if (gap === null) return ''
  const name = shortName(leader.name)
  const after = gap.after === null ? '' : ` after the same ${gap.after === 1 ? 'hole' : `${gap.after} holes`}`
  if (gap.behind === 0) return `, level with ${name}${after}`
  const unit = { points: 'point', strokes: 'stroke', holes: 'hole', skins: 'skin' }[board.competition.unit]
  const far = Math.abs(gap.behind)
  return `, ${inWords(far)} ${unit}${far === 1 ? '' : 's'} ${gap.behind > 0 ? 'behind' : 'ahead of'} ${name}${after}`
}

export function mySentence(board: ScreenBoard, row: ScreenRow): string {
  if (row.noPlace === 'not-started' || (row.noPlace === null && row.holesPlayed === 0))
    return 'No score on the card yet.'
  if (row.noPlace) return `${NO_PLACE[row.noPlace].replace(/^./, (c) => c.toUpperCase())}.`
  const figure = scoreWords(row.score, board.competition.unit, board.competition.format !== 'gross')
  const place = row.place === null ? '' : row.tied ? `Level ${ordinal(row.place)} with ` : `${ordinal(row.place)} with `
  const holes = board.course.length
  const after = row.holesPlayed < holes ? ` after ${row.holesPlayed} ${row.holesPlayed === 1 ? 'hole' : 'holes'}` : ''
  return `${place}${figure}${after}${behind(board, row)}.`
}
