'use client'

import { DndContext, type DragEndEvent, MouseSensor, TouchSensor, useSensor, useSensors } from '@dnd-kit/core'
import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import { StartsAgain } from '@/app/desk/_form/unsaved'
import type { EntryId } from '@/lib/facts/ids'
import { shownDraw } from '@/lib/facts/shown-draw'
import type { RoundHoles } from '@/lib/rules/hole-numbers'
import type { DrawnPlayer } from './drawn-player'
import { GroupRow } from './group-row'
import { type Groups as GroupsOf, lonely, movedTo, placeOf, shifted, without } from './groups'
import { movesBetween, movesInWords, placesOf } from './moves'
import { Seat } from './seat'

export interface DrawnGroup {
  readonly startTime: string
  readonly startHole: number
  readonly entryIds: readonly EntryId[]
}

interface Props {
  readonly action: FormAction
  readonly players: readonly DrawnPlayer[]
  readonly groups: readonly DrawnGroup[]
  readonly shotgun: boolean
  readonly interval: number
  readonly firstTee: string
  readonly round: RoundHoles
  readonly shut: boolean
  /** Id of the form that publishes: what stands here goes with it. */
  readonly publishForm: string
  /** What members see until the groups are saved. */
  readonly meanwhile: string
  readonly children: ReactNode
}

interface Step {
  readonly groups: GroupsOf
  readonly starts: readonly Starts[]
}

interface Starts {
  readonly time: string
  readonly hole: number
}

/** The draw under the hand: drag a name, or take it with the keys, or choose its group from the list. */
export const Arrange = (props: Props) => (
  <StartsAgain>
    <Groups {...props} />
  </StartsAgain>
)

function Groups({
  action,
  players,
  groups: kept,
  shotgun,
  interval,
  firstTee,
  round,
  shut,
  publishForm,
  meanwhile,
  children,
}: Props) {
  const [groups, setGroups] = useState<GroupsOf>(() => kept.map((group) => group.entryIds))
  const [starts, setStarts] = useState<readonly Starts[]>(() =>
    kept.map((one) => ({ time: one.startTime, hole: one.startHole })),
  )
  const [from, setFrom] = useState(kept)
  const [said, setSaid] = useState('')
  const focusOn = useRef<string | null>(null)
  const [touched, setTouched] = useState(false)
  const [past, setPast] = useState<readonly Step[]>([])

  if (from !== kept && !touched) {
    setFrom(kept)
    setGroups(kept.map((group) => group.entryIds))
    setStarts(kept.map((one) => ({ time: one.startTime, hole: one.startHole })))
  }

  useEffect(() => {
    if (!focusOn.current) return
    document.getElementById(`seat-${focusOn.current}`)?.focus()
    focusOn.current = null
  })

  const nameOf = new Map(players.map((player) => [player.entryId, player]))
  const known = groups.map((ids) => ids.filter((id) => nameOf.has(id)))
  const pool = players.filter((player) => placeOf(known, player.entryId) === null)
  // A finger that wanders over the names scrolls the page; a name is taken by holding it.
  const sensors = useSensors(
    useSensor(MouseSensor, { activationConstraint: { distance: 6 } }),
    useSensor(TouchSensor, { activationConstraint: { delay: 250, tolerance: 6 } }),
  )

  /** Before every change, so that it can be taken back step by step. */
  function remember() {
    setTouched(true)
    setPast((before) => [...before, { groups: known, starts }])
  }

  function stepBack() {
    const last = past.at(-1)
    if (!last) return
    setGroups(last.groups)
    setStarts(last.starts)
    setPast(past.slice(0, -1))
    setTouched(past.length > 1)
  }

  function put(next: GroupsOf, entryId: EntryId) {
    if (JSON.stringify(next) === JSON.stringify(known)) return
    remember()
    setGroups(next)
    const place = placeOf(next, entryId)
    const who = nameOf.get(entryId)?.name ?? ''
    setSaid(place ? `${who}: group ${place.group + 1}, ${ordinal(place.seat)}.` : `${who}: in no group.`)
  }

  const move = (entryId: EntryId, to: number | null, seat?: number) =>
    put(to === null ? without(known, entryId) : movedTo(known, entryId, to, seat), entryId)

  function onDragEnd({ active, over }: DragEndEvent) {
    if (!over) return
    const [kind, group, seat] = String(over.id).split(' ')
    const entryId = String(active.id) as EntryId
    if (kind === 'pool') move(entryId, null)
    if (kind === 'group') move(entryId, Number(group))
    if (kind === 'seat') move(entryId, Number(group), Number(seat))
  }

  function onKey(event: KeyboardEvent, entryId: EntryId) {
    const place = placeOf(known, entryId)
    const go = (next: GroupsOf) => {
      event.preventDefault()
      focusOn.current = entryId
      put(next, entryId)
    }
    if (event.key === 'ArrowUp' && place && place.group > 0) go(movedTo(known, entryId, place.group - 1))
    if (event.key === 'ArrowDown' && place && place.group < known.length - 1)
      go(movedTo(known, entryId, place.group + 1))
    if (event.key === 'ArrowLeft' && place) go(shifted(known, entryId, -1))
    if (event.key === 'ArrowRight' && place) go(shifted(known, entryId, 1))
    if (/^[1-9]$/.test(event.key) && Number(event.key) <= known.length)
      go(movedTo(known, entryId, Number(event.key) - 1))
    if (event.key === 'Delete' && place) go(without(known, entryId))
  }

  function addGroup() {
    remember()
    const last = starts.at(-1)
    setGroups([...known, []])
    setStarts([...starts, { time: last && !shotgun ? later(last.time, interval) : firstTee, hole: round.firstHole }])
  }

  const alone = lonely(known)
  const sent = known.flatMap((entryIds, place) =>
    entryIds.length === 0
      ? []
      : [{ entryIds, startTime: starts[place]?.time ?? firstTee, startHole: starts[place]?.hole ?? round.firstHole }],
  )
  const moves = movesBetween(placesOf(from, shotgun), placesOf(sent, shotgun))
  const seat = (entryId: EntryId, group: number | null) => {
    const player = nameOf.get(entryId)
    return player ? (
      <Seat
        key={entryId}
        player={player}
        was={moves.find((one) => one.entryId === entryId)?.from ?? null}
        group={group}
        seat={placeOf(known, entryId)?.seat ?? null}
        groups={known.length}
        onKey={onKey}
        onMove={(to) => move(entryId, to)}
        shut={shut}
      />
    ) : null
  }

  return (
    <ActForm
      action={action}
      label="The groups"
      className="arrange"
      saves
      unsaved={movesInWords(
        moves,
        players.map((player) => [player.entryId, player.name]),
      )}
      meanwhile={meanwhile}
      stepBack={past.length > 0 ? stepBack : null}
      onAnswer={(state) => {
        if (state.refused) return
        setTouched(false)
        setPast([])
      }}
    >
      {children}
      <input type="hidden" name="draw" form={publishForm} value={shownDraw(sent)} />
      <input type="hidden" name="groups" value={JSON.stringify(sent)} />
      <p className="small second">
        Drag a name to another group, or choose it with Tab: <kbd>↑</kbd> <kbd>↓</kbd> to the group before or after,{' '}
        <kbd>1</kbd>–<kbd>9</kbd> to that group, <kbd>←</kbd> <kbd>→</kbd> within the group. A full group gives a player
        in exchange.
      </p>
      <p className="unseen" role="status">
        {said}
      </p>
      <DndContext id="draw" sensors={sensors} onDragEnd={onDragEnd}>
        {pool.length > 0 ? (
          <GroupRow id="pool" title="In no group" count={pool.length} waits>
            {pool.map((player) => seat(player.entryId, null))}
          </GroupRow>
        ) : null}
        {known.map((ids, group) => (
          <GroupRow
            // biome-ignore lint/suspicious/noArrayIndexKey: a group is its place in the order, nothing else
            key={group}
            id={`group ${group}`}
            title={`Group ${group + 1}`}
            count={ids.length}
            start={starts[group]}
            shotgun={shotgun}
            round={round}
            shut={shut}
            onStart={(start) => {
              remember()
              setStarts(starts.with(group, start))
            }}
          >
            {ids.map((entryId) => seat(entryId, group))}
          </GroupRow>
        ))}
      </DndContext>
      {shut ? null : (
        <div className="keep-bar">
          <p aria-live="polite">
            {alone.length > 0 ? `Group ${alone.join(' and ')} has one player: nobody could mark the card. ` : ''}
            {pool.length > 0 ? `${pool.length} in no group.` : ''}
          </p>
          <p className="acts">
            <button type="button" className="btn" onClick={addGroup}>
              Add a group
            </button>
            <Send kind={touched ? 'first' : undefined} why={alone.length > 0 && 'a group of one'}>
              Keep these {sent.length} groups
            </Send>
          </p>
        </div>
      )}
    </ActForm>
  )
}

const ordinal = (seat: number) => ['first', 'second', 'third', 'fourth'][seat] ?? String(seat + 1)

function later(time: string, minutes: number): string {
  const [hour = 0, minute = 0] = time.split(':').map(Number)
  const all = hour * 60 + minute + minutes
  return `${String(Math.floor(all / 60) % 24).padStart(2, '0')}:${String(all % 60).padStart(2, '0')}`
}
