// Where each group is, from what has been written: nobody is asked and no clock is read.

import type { DayRecord, GroupRecord } from '@/lib/facts/day-record'
import { holesFrom, placeOfHole, type RoundHoles } from '@/lib/rules/hole-numbers'
import type { CurrentCard } from './current-card'
import { startHolesOf } from './start-holes'
import type { GroupOnCourse } from './views'

export function groupsOnCourse(
  record: Pick<DayRecord, 'groups' | 'round' | 'entries'>,
  cards: ReadonlyMap<string, CurrentCard>,
): readonly GroupOnCourse[] {
  const starts = startHolesOf(record)
  return record.groups.map((group) => {
    const startsAt = starts.get(group.number)
    const isShared = startsAt !== undefined && startsAt !== String(group.startHole)
    return { ...groupOnCourse(group, record.round, cards), ...(isShared ? { startsAt } : {}) }
  })
}

function groupOnCourse(group: GroupRecord, round: RoundHoles, cards: ReadonlyMap<string, CurrentCard>): GroupOnCourse {
  // A player who was ruled out or went in no longer holds the group back.
  const playing = group.entryIds.flatMap((id) => {
    const card = cards.get(id)
    return card && card.outcome === null ? [card] : []
  })
  const order = holesFrom(round, group.startHole)
  const written = (hole: number) => playing.filter((card) => card.scores[placeOfHole(round, hole)] !== null).length
  const needed = (hole: number) => playing.filter((card) => !card.notNeeded.includes(hole))
  const isDone = (hole: number) => needed(hole).every((card) => card.scores[placeOfHole(round, hole)] !== null)
  const through = playing.length ? order.filter((hole) => written(hole) > 0 && isDone(hole)).length : 0
  const last = order.findLastIndex((hole) => written(hole) > 0)
  // Where the matches of the group are over nobody plays on.
  const next = order.findIndex((hole, place) => place > last && needed(hole).length > 0)
  const at = last < 0 ? null : !isDone(order[last]!) ? last : next < 0 ? null : next
  return {
    number: group.number,
    startTime: group.startTime,
    startHole: group.startHole,
    started: last >= 0,
    through,
    onHole: at === null ? null : order[at]!,
    entryIds: group.entryIds,
  }
}
