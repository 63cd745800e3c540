// A day looked at once: who plays from where, course handicaps (RoH 6.1) and cards, found by id. Built for every count of
// the board, so it makes as little as it can.

import type { Card, Day, Player, Side, Tee } from '../day'
import { type CourseHandicap, courseHandicap, parOf, wholeCourse } from '../handicap/course-handicap'
import { strokeOrder } from '../strokes/strokes-on-holes'

export interface TeeSheet {
  readonly tee: Tee
  readonly par: number
  /** Place of each hole in the order of the stroke indexes. */
  readonly order: readonly number[]
}

export interface PlayerLine {
  readonly player: Player
  readonly sheet: TeeSheet
  /** The figure this round is played off: the card's own, else the player's. */
  readonly indexTenths: number
  readonly course: CourseHandicap
  /** The course handicap was set by a ruling, not computed from the index. */
  readonly isRuled: boolean
  /** A playing handicap set by hand for this round, in every competition. */
  readonly handOfRound: number | undefined
}

export interface DayIndex {
  readonly day: Day
  readonly sheets: ReadonlyMap<string, TeeSheet>
  readonly players: ReadonlyMap<string, PlayerLine>
  readonly sides: ReadonlyMap<string, Side>
  /** Ids of the tees somebody plays this round from. */
  readonly teesPlayed: ReadonlySet<string>
  /** By player id, or by side id where a side plays one ball. */
  readonly cards: ReadonlyMap<string, Card>
}

/** The day as one of its rounds sees it: that round's cards, and the tees they were played from. */
export function indexOf(day: Day, round = 1): DayIndex {
  const sheets = new Map<string, TeeSheet>()
  for (const tee of day.tees) sheets.set(tee.id, { tee, par: parOf(tee), order: strokeOrder(tee.holes) })
  const cards = new Map<string, Card>()
  for (const card of day.cards) if ((card.round ?? 1) === round) cards.set(card.player, card)
  const players = new Map<string, PlayerLine>()
  const size = holesOfRound(day, round, sheets)
  for (const player of day.players) {
    const card = cards.get(player.id)
    const own = sheets.get(card?.tee ?? player.tee)
    if (own === undefined) continue
    const sheet = size === null || own.tee.holes.length === size ? own : sheetOfSize(own, size, sheets)
    const indexTenths = card?.indexTenths ?? player.indexTenths
    // A round with an index of its own was played on another day: the player's ruling of this day does not reach it.
    const ruled = card?.courseHandicap ?? (card?.indexTenths === undefined ? player.courseHandicap : undefined)
    const course = ruled === undefined ? courseHandicap(indexTenths, sheet.tee, day.edition) : wholeCourse(ruled)
    const handOfRound = card?.playingHandicap
    players.set(player.id, { player, sheet, indexTenths, course, isRuled: ruled !== undefined, handOfRound })
  }
  const sides = new Map<string, Side>()
  for (const side of day.sides) sides.set(side.id, side)
  const teesPlayed = new Set([...players.values()].map(({ sheet }) => sheet.tee.id))
  return { day, sheets, players, sides, teesPlayed, cards }
}

/** A player's playing handicap set by hand in a competition; null when there is none. */
export function setByHand({ player, handOfRound }: PlayerLine, competitionId: string): number | null {
  const set = player.playingHandicap
  return handOfRound ?? set?.[competitionId] ?? set?.['*'] ?? null
}

/** Holes of this round, told by the cards that were played from a tee of their own. */
function holesOfRound(day: Day, round: number, sheets: ReadonlyMap<string, TeeSheet>): number | null {
  for (const card of day.cards) {
    if ((card.round ?? 1) === round && card.tee !== undefined) return sheets.get(card.tee)?.tee.holes.length ?? null
  }
  return null
}

/** Somebody without a card in a round over fewer or more holes than usual: any tee of that length, own gender first. */
function sheetOfSize(own: TeeSheet, size: number, sheets: ReadonlyMap<string, TeeSheet>): TeeSheet {
  const fitting = [...sheets.values()].filter(({ tee }) => tee.holes.length === size)
  return fitting.find(({ tee }) => tee.gender === own.tee.gender) ?? fitting[0] ?? own
}
