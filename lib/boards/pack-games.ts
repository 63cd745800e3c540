// Skins and split sixes of a group, as its phone counts them without a signal.

import type { PackGame } from '@/lib/facts/card-pack'
import type { DayRecord, GroupRecord } from '@/lib/facts/day-record'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { indexOf } from '@/lib/rules/score/day-index'
import { gamesToCount } from '@/lib/rules/score/games-to-count'
import { termsInForce } from '@/lib/rules/score/terms-in-force'
import { dayOfRecord } from './day-of-record'
import { namesOf } from './entrant-names'
import { formatIn } from './format-of-competition'

/** The games of a group: those of all groups are worked out once. */
export function packGames(record: DayRecord): (group: Pick<GroupRecord, 'entryIds'>) => readonly PackGame[] {
  if (!record.competitions.some((one) => formatIn(one)?.value.kind === 'shared')) return () => []
  const day = dayOfRecord(record)
  const index = indexOf(day)
  const names = namesOf(record)
  const games = day.competitions.flatMap((one) => {
    const terms = termsInForce(one, day, FORMATS)
    if (terms === null) return []
    const competition = record.competitions.find(({ id }) => id === one.id)?.name ?? one.name ?? one.id
    const unit = terms.format.unit === 'skins' ? ('skins' as const) : ('points' as const)
    return gamesToCount(terms, index).map((game) => ({ competition, unit, game }))
  })
  return ({ entryIds }) =>
    games.flatMap(({ game, ...rest }) => {
      const players = game.balls.flatMap((ball) => entryIds.filter((id) => ball.players.includes(id)))
      if (players.length < game.balls.length) return []
      return [{ ...rest, players: players.map((entryId) => ({ entryId, name: names.short(entryId) })), game }]
    })
}
