// A player's whole card in place, every figure a door to its working.

import { Scorecard } from '@/app/_parts/scorecard'
import { listed } from '@/lib/boards/in-words'
import type { HoleLine } from '@/lib/rules/standings'
import { cardAt } from './addresses'
import type { ScreenBoard, ScreenRow } from './screen-board'
import { shortName } from './words'

/** The lean holes of the screen as the scorecard part takes them; index and net are not shown across. */
function linesOf(board: ScreenBoard, row: ScreenRow): HoleLine[] {
  return row.holes.map(([hole, strokes, gross, value]) => ({
    hole,
    par: board.course.find((one) => one.hole === hole)?.par ?? 0,
    strokeIndex: 0,
    strokes,
    gross,
    net: null,
    value,
  }))
}

/** "Trevennor on 1, 4 and 7; Coldbrook on 2 and 3": whose score counted, for a side. */
export function whoCounted(row: ScreenRow): string | null {
  if (row.entryIds.length < 2) return null
  const names = row.name.split(' and ')
  const parts = row.entryIds.map((id, at) => {
    const holes = row.holes.filter((hole) => hole[4]?.split(' ').includes(id)).map((hole) => String(hole[0]))
    return holes.length > 0 ? `${shortName(names[at] ?? 'partner')} on ${listed(holes)}` : null
  })
  const said = parts.filter((part) => part !== null)
  return said.length > 0 ? `Counted: ${said.join('; ')}.` : null
}

export function HolesOfRow({ board, row, c }: { board: ScreenBoard; row: ScreenRow; c: number }) {
  const { societySlug, daySlug } = board.head
  const entry = row.entryIds[0] ?? row.entrant
  const counted = whoCounted(row)
  const whose = (hole: number) => row.holes.find((one) => one[0] === hole)?.[4]?.split(' ')[0] ?? entry
  return (
    <>
      <div className="holes-of-row">
        <Scorecard
          lines={linesOf(board, row)}
          way="across"
          unit={board.competition.unit}
          caption={row.name}
          openHref={(hole) => cardAt(societySlug, daySlug, whose(hole), { c, hole })}
        />
      </div>
      {counted && <p className="small second">{counted}</p>}
    </>
  )
}
