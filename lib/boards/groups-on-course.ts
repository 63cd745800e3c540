// Where each group is, from what has been written: nobody is asked and no clock is read.

import type { DayRecord, GroupRecord } from '@/lib/facts/day-record'
import type { CurrentCard } from './current-card'
import type { GroupOnCourse } from './views'

export function groupsOnCourse(
  record: Pick<DayRecord, 'groups' | 'round' | 'entries'>,
  cards: ReadonlyMap<string, CurrentCard>,
): readonly GroupOnCourse[] {
  return record.groups.map((group) => groupOnCourse(group, record.round.holes, cards))
}

function groupOnCourse(group: GroupRecord, holes: number, cards: ReadonlyMap<string, CurrentCard>): GroupOnCourse {
  // A player who was ruled out or went in no longer holds the group back.
  const playing = group.entryIds.flatMap((id) => {
    const card = cards.get(id)
    return card && card.outcome === null ? [card] : []
  })
  const order = Array.from({ length: holes }, (_, at) => ((group.startHole - 1 + at) % holes) + 1)
  const written = (hole: number) => playing.filter((card) => card.scores[hole - 1] !== null).length
  const through = playing.length ? order.filter((hole) => written(hole) === playing.length).length : 0
  const last = order.findLastIndex((hole) => written(hole) > 0)
  const at = last < 0 ? null : written(order[last]!) === playing.length ? last + 1 : last
  return {
    number: group.number,
    startTime: group.startTime,
    startHole: group.startHole,
    started: last >= 0,
    through,
    onHole: at === null || at >= holes ? null : order[at]!,
    entryIds: group.entryIds,
  }
}
