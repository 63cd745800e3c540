// What a group's phone is told about a side's ball: the drives where the terms ask for a minimum, the rota of a named ball.

import type { CardPack, PackBall } from '@/lib/facts/card-pack'
import type { CompetitionRecord, DayRecord, GroupRecord, SideRecord } from '@/lib/facts/day-record'
import { holesFrom } from '@/lib/rules/hole-numbers'
import { sideBall } from './ball-facts'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'
import { lossInWords, playingOf } from './named-balls'

/** The kind of ball that is written about in a competition; null where nothing is. */
export function ballKind(competition: CompetitionRecord): PackBall['kind'] | null {
  const format = formatIn(competition)
  if (format?.count.kind === 'named-player') return 'named-ball'
  return format?.ball === 'one' && competition.terms.minimumDrives !== undefined ? 'drives' : null
}

export function packBalls(record: DayRecord, group: GroupRecord): Pick<CardPack, 'balls'> {
  const balls = record.competitions.flatMap((competition) => {
    const kind = ballKind(competition)
    if (kind === null) return []
    return competition.sides.flatMap((side) => ballOf(record, competition, side, kind, group))
  })
  return balls.length > 0 ? { balls } : {}
}

function ballOf(
  record: DayRecord,
  competition: CompetitionRecord,
  side: SideRecord,
  kind: PackBall['kind'],
  group: GroupRecord,
): PackBall[] {
  const here = side.entryIds.filter((id) => group.entryIds.includes(id))
  const card = here.flatMap((id) => record.cards.find((one) => one.entryId === id) ?? [])[0]
  if (!card) return []
  const names = namesOf(record)
  const { drives } = sideBall(side.id, record.ballFacts, record.round)
  const loss = lossInWords(competition)
  const lost = new Map<number, boolean>()
  for (const fact of record.ballFacts)
    if (fact.sideId === side.id && fact.kind === 'ball-lost' && !fact.late) lost.set(fact.hole, fact.lost)
  return [
    {
      kind,
      sideId: side.id,
      cardId: card.id,
      name: names.entrant(side.id),
      players: playingOf(record, side).map((entryId) => ({ entryId, name: names.short(entryId) })),
      minimum: kind === 'drives' ? (competition.terms.minimumDrives ?? null) : null,
      drives: kind === 'drives' ? drives : drives.map(() => null),
      ...(loss === null ? {} : { cost: loss.cost, ...(loss.inTurn === null ? {} : { inTurn: loss.inTurn }) }),
      // In the order of play, so that the first is where it was lost.
      lost: kind === 'named-ball' ? holesFrom(record.round, group.startHole).filter((hole) => lost.get(hole)) : [],
    },
  ]
}
