// House rules that stand behind a result without having been chosen, said among the terms wherever a day needs them: the
// card of partners on different tees, the parts of a match between teams, games in several groups, a ball that is lost, a
// scramble side that is short.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import type { Format } from '@/lib/rules/formats/format'
import { ballLostInWords } from '@/lib/rules/formats/lost-ball'
import type { CompetitionResult } from '@/lib/rules/standings'
import { inWords } from './in-words'
import { sideTeeOf } from './side-tee'
import { PART_POINTS, RANKING } from './terms-in-words'

export function houseRulesSaid(
  record: Pick<DayRecord, 'entries' | 'tees'>,
  { sides, terms }: Pick<CompetitionRecord, 'sides' | 'terms'>,
  { teams, standings, allowanceFrom }: Pick<CompetitionResult, 'teams' | 'standings' | 'allowanceFrom'>,
  format: Format | null,
): readonly string[] {
  if (format === null) return []
  const { value, count, ball, side, shortSides } = format
  const teeOf = new Map(record.entries.map((entry) => [entry.id, entry.roundTeeId]))
  const isMixed = sides.some(({ entryIds }) => new Set(entryIds.map((id) => teeOf.get(id))).size > 1)
  const sizes = new Set(sides.map(({ entryIds }) => entryIds.length))
  const short = [...sizes].filter((size) => size < side.to && shortSides?.[size] !== undefined).sort((a, b) => a - b)
  const isPublished = allowanceFrom.startsWith('published') && terms.dividedBy === undefined
  return [
    ...(ball === 'one' && isMixed && sideTeeOf(record, terms.sideTee) === null
      ? [
          `${terms.sideTee === undefined ? '' : 'Nobody plays from the tees that the terms name. '}A side on different tees plays to the card with the lowest par of its players’ tees.`,
        ]
      : []),
    ...(isPublished && terms.missing === undefined
      ? short.map((size) => `A side of ${inWords(size)} takes the published figure for ${inWords(size)}.`)
      : []),
    ...(value.kind === 'against-opponent' && value.parts !== undefined && teams !== undefined && !terms.partPoints
      ? [PART_POINTS['each-part']]
      : []),
    ...(value.kind === 'shared' && !terms.ranking && standings.some(({ group }) => group !== undefined)
      ? [RANKING['in-group']]
      : []),
    ...(count.kind === 'named-player' && terms.ballLost === undefined
      ? [ballLostInWords(count.lost, count.times)]
      : []),
  ]
}
