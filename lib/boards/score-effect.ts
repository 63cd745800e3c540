// What another score on one hole of a card would change, in every competition the player's own card counts in. Rules of
// Golf 21.1b(2), 21.2b(2) and 21.3b(2): a score returned too low costs nothing where the hole comes out the same.

import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { placeOfHole } from '@/lib/rules/hole-numbers'
import { dayOfRecord } from './day-of-record'
import { formatIn } from './format-of-competition'
import { listed, scoreInWords, scoreShort } from './in-words'
import { ownReading } from './own-handicaps'

export interface ScoreEffect {
  /** The hole is worth the same in all of them. */
  readonly isNone: boolean
  /** "Hole 7, 8 on the card and 9 made: 0 points either way in Stableford." */
  readonly sentence: string
}

export function scoreEffect(record: DayRecord, entryId: EntryId, hole: number, made: number): ScoreEffect {
  const day = dayOfRecord(record)
  const place = placeOfHole(record.round, hole)
  const holders = new Set([entryId, ...day.sides.filter((side) => side.players.includes(entryId)).map(({ id }) => id)])
  const isTheirs = (card: (typeof day.cards)[number]) => holders.has(card.player) && (card.round ?? 1) === 1
  const returned = day.cards.find(isTheirs)?.scores[place] ?? null
  const other = {
    ...day,
    cards: day.cards.map((card) => (isTheirs(card) ? { ...card, scores: card.scores.with(place, made) } : card)),
  }
  // In a match a wrong score is the players' affair: Rules of Golf 3.2d.
  const counted = record.competitions.filter((one) => !formatIn(one)?.isMatch)
  const values = counted.map((one) => {
    const [now, then] = [ownReading(one, day), ownReading(one, other)]
    const worth = ({ lines }: typeof now) => lines.get(entryId)?.holes[place]?.value ?? null
    return { name: one.name, unit: now.unit, before: worth(now), after: worth(then) }
  })
  const words = (value: number | null, unit: (typeof values)[number]['unit']) =>
    value === null
      ? 'nothing'
      : unit === 'points'
        ? `${value} ${value === 1 ? 'point' : 'points'}`
        : scoreShort(value, unit)
  const changed = values.filter((one) => one.before !== one.after)
  const what = `Hole ${hole}, ${scoreInWords(returned)} on the card and ${made} made`
  if (changed.length === 0) {
    const same = values.map((one) => `${words(one.before, one.unit)} either way in ${one.name}`)
    return { isNone: true, sentence: `${what}: ${listed(same)}.` }
  }
  const differs = changed.map((one) => `${words(one.before, one.unit)} or ${words(one.after, one.unit)} in ${one.name}`)
  return {
    isNone: false,
    sentence: `${what}: ${listed(differs)}. The result of the hole changes, so the exception does not apply.`,
  }
}
