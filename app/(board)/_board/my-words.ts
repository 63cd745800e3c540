// One player's standing in a sentence: "4th with 35 after 16 holes, three points behind Trevennor."

import { inWords, ordinal } from '@/lib/boards/in-words'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { NO_PLACE, scoreWords, shortName } from './words'

function behind(board: ScreenBoard, row: ScreenRow): string {
  const leader = board.rows[0]
  if (!leader || leader.entrant === row.entrant || leader.score === null || row.score === null) return ''
  const fullCards = leader.holesPlayed === row.holesPlayed
  const gap = fullCards
    ? Math.abs(leader.score - row.score)
    : leader.againstLevel !== null && row.againstLevel !== null
      ? Math.abs(leader.againstLevel - row.againstLevel)
      : null
  if (gap === null) return ''
  if (gap === 0) return `, level with ${shortName(leader.name)}`
  const unit = { points: 'point', strokes: 'stroke', holes: 'hole' }[board.competition.unit]
  return `, ${inWords(gap)} ${unit}${gap === 1 ? '' : 's'} behind ${shortName(leader.name)}`
}

export function mySentence(board: ScreenBoard, row: ScreenRow): string {
  if (row.noPlace === 'not-started') return 'No score on the card yet.'
  if (row.noPlace) return `${NO_PLACE[row.noPlace].replace(/^./, (c) => c.toUpperCase())}.`
  const figure = scoreWords(row.score, board.competition.unit, board.competition.format !== 'gross')
  const place = row.place === null ? '' : row.tied ? `Level ${ordinal(row.place)} with ` : `${ordinal(row.place)} with `
  const holes = board.course.length
  const after = row.holesPlayed < holes ? ` after ${row.holesPlayed} ${row.holesPlayed === 1 ? 'hole' : 'holes'}` : ''
  return `${place}${figure}${after}${behind(board, row)}.`
}
