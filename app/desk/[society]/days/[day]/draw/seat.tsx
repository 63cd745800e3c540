'use client'

import { useDraggable, useDroppable } from '@dnd-kit/core'
import type { KeyboardEvent } from 'react'
import type { EntryId } from '@/lib/facts/ids'
import type { DrawnPlayer } from './drawn-player'

interface Props {
  readonly player: DrawnPlayer
  /** Where the player was when the draw was last saved; null: there still. */
  readonly was: string | null
  readonly group: number | null
  readonly seat: number | null
  readonly groups: number
  readonly shut: boolean
  readonly onKey: (event: KeyboardEvent, entryId: EntryId) => void
  readonly onMove: (to: number | null) => void
}

/** One player in a group: a name that can be dragged or moved by keys, and a list of groups to move to. */
export function Seat({ player, was, group, seat, groups, shut, onKey, onMove }: Props) {
  const drag = useDraggable({ id: player.entryId, disabled: shut })
  const drop = useDroppable({ id: group === null ? `pool ${player.entryId}` : `seat ${group} ${seat}` })
  const { x, y } = drag.transform ?? { x: 0, y: 0 }
  const where = group === null ? 'in no group' : `group ${group + 1}`
  return (
    <li
      ref={drop.setNodeRef}
      className={['seat', was ? 'moved' : '', drop.isOver ? 'over' : '', drag.isDragging ? 'dragged' : '']
        .join(' ')
        .trim()}
    >
      <button
        type="button"
        id={`seat-${player.entryId}`}
        ref={drag.setNodeRef}
        className="seat-name"
        style={drag.transform ? { transform: `translate(${x}px, ${y}px)` } : undefined}
        aria-label={[player.name, player.figure?.said, where].filter(Boolean).join(', ')}
        aria-disabled={shut || undefined}
        {...drag.listeners}
        onKeyDown={(event) => {
          if (!shut) onKey(event, player.entryId)
        }}
      >
        {player.name}
        {player.figure ? <span className="fig ph"> {player.figure.written}</span> : null}
        {player.note ? <span className="second small"> {player.note}</span> : null}
        {was ? <b className="small"> was {was}</b> : null}
      </button>
      {shut ? null : (
        <select
          className="seat-to"
          aria-label={`Move ${player.name} to`}
          value={group === null ? '' : String(group)}
          onChange={(event) => onMove(event.target.value === '' ? null : Number(event.target.value))}
        >
          {Array.from({ length: groups }, (_one, place) => place).map((place) => (
            <option key={place} value={place}>
              group {place + 1}
            </option>
          ))}
          <option value="">no group</option>
        </select>
      )}
    </li>
  )
}
