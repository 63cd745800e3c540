// What a schema cannot see: ids that name nothing, a card for nobody, indexes that are not a permutation, a player in two
// sides. A day that passes here can be scored.

import type { Fault } from '@/lib/result'
import { firstEditionFrom } from '@/lib/rules/editions/editions'
import { teamFaults } from './day-file-extras'
import { Faults, quoted } from './day-file-faults'
import type { DayFileShape } from './day-file-schema'
import { competitionFaults, formatOfShape } from './day-file-terms'

export function nonsenseIn(file: DayFileShape): Fault[] {
  const faults = new Faults()
  editionFault(file, faults)
  file.course.tees.forEach((tee, t) => {
    teeFaults(tee, `course.tees[${t}]`, faults)
  })
  faults.unique(
    file.course.tees.map(({ id }) => id),
    (i) => `course.tees[${i}].id`,
    'a tee',
  )
  playerFaults(file, faults)
  absentFaults(file, faults)
  sideFaults(file, faults)
  cardFaults(file, faults)
  competitionFaults(file, faults)
  teamFaults(file, faults)
  return faults.list
}

/** Before the first edition a day has to say under which it is counted. */
function editionFault({ date, edition, region = 'gbi' }: DayFileShape, faults: Faults): void {
  const first = firstEditionFrom(region)
  if (edition === undefined && date < first)
    faults.at('date', `No edition was in force before ${first}: name in "edition" the one to count under.`)
}

type TeeShape = DayFileShape['course']['tees'][number]

function teeFaults(tee: TeeShape, place: string, faults: Faults): void {
  const { holes } = tee
  if (holes.length !== 9 && holes.length !== 18) {
    faults.at(`${place}.holes`, `A tee has 9 or 18 holes, not ${holes.length}.`)
    return
  }
  const first = holes.length === 9 && holes[0]!.hole === 10 ? 10 : 1
  holes.forEach(({ hole }, i) => {
    if (hole !== first + i)
      faults.at(`${place}.holes[${i}].hole`, `Holes are written in order: this is hole ${first + i}.`)
  })
  const seen = new Map<number, number>()
  holes.forEach(({ strokeIndex }, i) => {
    const where = `${place}.holes[${i}].strokeIndex`
    if (strokeIndex > 18) faults.at(where, 'A stroke index is from 1 to 18.')
    else if (seen.has(strokeIndex)) {
      faults.at(
        where,
        `Stroke index ${strokeIndex} is already on hole ${first + seen.get(strokeIndex)!}; each is used once.`,
      )
    }
    seen.set(strokeIndex, i)
  })
  const [low, high] = holes.length === 9 ? [200, 500] : [450, 900]
  if (tee.courseRating < low || tee.courseRating > high) {
    faults.at(
      `${place}.courseRating`,
      `That is no course rating for ${holes.length} holes; give the rating of exactly these holes.`,
    )
  }
}

function playerFaults(file: DayFileShape, faults: Faults): void {
  const tees = new Map(file.course.tees.map((tee) => [tee.id, tee]))
  const competitions = new Set(file.competitions.map(({ id }) => id))
  faults.unique(
    file.players.map(({ id }) => id),
    (i) => `players[${i}].id`,
    'a player',
  )
  let size: number | null = null
  file.players.forEach((player, i) => {
    const tee = tees.get(player.tee)
    if (tee === undefined) faults.at(`players[${i}].tee`, `There is no tee ${quoted(player.tee)} on this course.`)
    else if (tee.holes.length !== (size ?? tee.holes.length)) {
      faults.at(`players[${i}].tee`, 'Everybody plays the same number of holes on one day.')
    } else size = tee.holes.length
    if (typeof player.playingHandicap !== 'object') return
    for (const id of Object.keys(player.playingHandicap)) {
      if (id !== '*' && !competitions.has(id)) {
        faults.at(`players[${i}].playingHandicap.${id}`, `There is no competition ${quoted(id)}.`)
      }
    }
  })
}

function absentFaults(file: DayFileShape, faults: Faults): void {
  const absent = file.absent ?? []
  faults.unique(
    absent.map(({ id }) => id),
    (i) => `absent[${i}].id`,
    'somebody absent',
  )
  const there = new Set([...file.players, ...file.sides].map(({ id }) => id))
  absent.forEach(({ id }, i) => {
    if (there.has(id)) faults.at(`absent[${i}].id`, `${quoted(id)} plays on this day and cannot be absent.`)
  })
}

function sideFaults(file: DayFileShape, faults: Faults): void {
  const players = new Set([...file.players, ...(file.absent ?? [])].map(({ id }) => id))
  const competitions = new Map(file.competitions.map((one) => [one.id, one]))
  faults.unique(
    file.sides.map(({ id }) => id),
    (i) => `sides[${i}].id`,
    'a side',
  )
  file.sides.forEach((side, s) => {
    if (players.has(side.id)) faults.at(`sides[${s}].id`, `${quoted(side.id)} is a player’s id; a side needs its own.`)
    const here = new Set<string>()
    side.players.forEach((id, p) => {
      const place = `sides[${s}].players[${p}]`
      if (!players.has(id)) faults.at(place, `There is no player ${quoted(id)}.`)
      else if (here.has(id)) faults.at(place, `${quoted(id)} is in this side already.`)
      here.add(id)
    })
    const holes = holesOf(file, side.players)
    if (side.ballLostOn !== undefined && holes !== null && !holes.some(({ hole }) => hole === side.ballLostOn))
      faults.at(`sides[${s}].ballLostOn`, `There is no hole ${side.ballLostOn} on this card.`)
    if (!playsSomewhere(side, file))
      faults.at(
        `sides[${s}].players`,
        `No competition here takes a side of ${side.players.length}: name its competitions, or leave it out.`,
      )
    side.competitions?.forEach((id, c) => {
      const place = `sides[${s}].competitions[${c}]`
      const competition = competitions.get(id)
      if (competition === undefined) {
        faults.at(place, `There is no competition ${quoted(id)}.`)
        return
      }
      const format = formatOfShape(competition)
      if (format === null) return
      const size = side.players.length
      if (format.side.to === 1) faults.at(place, `${format.name} is played by single players, not by sides.`)
      else if (size > format.side.to)
        faults.at(place, `${format.name} is for sides of ${format.side.to}, not of ${size}.`)
    })
  })
}

/** The holes its players play; null where no tee says so. */
function holesOf({ course, players }: DayFileShape, ids: readonly string[]): TeeShape['holes'] | null {
  const tee = players.find(({ id }) => ids.includes(id))?.tee
  return course.tees.find(({ id }) => id === tee)?.holes ?? null
}

/** Named by itself, by a competition or a match, or of the size of one; and where nobody plays in sides no matter. */
function playsSomewhere(side: DayFileShape['sides'][number], { competitions }: DayFileShape): boolean {
  if (side.competitions !== undefined) return true
  const size = side.players.length
  const forSides = competitions.flatMap((one) => {
    const format = formatOfShape(one)
    return format !== null && format.side.to > 1 ? [{ one, format }] : []
  })
  return (
    forSides.length === 0 ||
    forSides.some(
      ({ one, format }) =>
        one.entrants?.includes(side.id) ||
        one.matches?.some(({ a, b }) => a === side.id || b === side.id) ||
        (one.entrants === undefined && size >= format.side.from && size <= format.side.to),
    )
  )
}

function cardFaults(file: DayFileShape, faults: Faults): void {
  const holesOf = new Map(file.course.tees.map((tee) => [tee.id, tee.holes]))
  const teeOf = new Map(file.players.map((player) => [player.id, player.tee]))
  const players = new Set(teeOf.keys())
  for (const side of file.sides) {
    const tee = teeOf.get(side.players[0]!)
    if (tee !== undefined && !teeOf.has(side.id)) teeOf.set(side.id, tee)
  }
  // One card a player and round.
  const seen = new Set<string>()
  const sizeOf = new Map<number, number>()
  file.cards.forEach((card, c) => {
    const round = card.round ?? 1
    const key = `${round} ${card.player}`
    if (seen.has(key))
      faults.at(`cards[${c}].player`, `There is already a card of ${quoted(card.player)}${inRound(round)}.`)
    seen.add(key)
    const own = teeOf.get(card.player)
    if (own === undefined) {
      faults.at(`cards[${c}].player`, `There is no player or side ${quoted(card.player)}.`)
      return
    }
    if (card.handicapIndex !== undefined && !players.has(card.player))
      faults.at(`cards[${c}].handicapIndex`, 'A side has no handicap index; each of its players has one.')
    const holes = holesOf.get(card.tee ?? own)
    if (holes === undefined) {
      if (card.tee !== undefined) faults.at(`cards[${c}].tee`, `There is no tee ${quoted(card.tee)} on this course.`)
      return
    }
    const size = sizeOf.get(round) ?? holes.length
    sizeOf.set(round, size)
    if (size !== holes.length) faults.at(`cards[${c}].tee`, 'Everybody plays the same number of holes in one round.')
    oneCard(card, `cards[${c}]`, holes, faults)
  })
}

const inRound = (round: number) => (round === 1 ? '' : ` in round ${round}`)

type CardShape = DayFileShape['cards'][number]

function oneCard(card: CardShape, place: string, holes: TeeShape['holes'], faults: Faults): void {
  if (card.missed && card.scores.some((score) => score !== null)) {
    faults.at(`${place}.missed`, 'A round that was missed has no scores.')
  }
  if (card.scores.length > holes.length) {
    faults.at(`${place}.scores`, `${card.scores.length} scores on a card of ${holes.length} holes.`)
  }
  if ((card.drives?.length ?? 0) > holes.length) {
    faults.at(`${place}.drives`, `${card.drives!.length} drives on a card of ${holes.length} holes.`)
  }
  const numbers = new Set(holes.map(({ hole }) => hole))
  for (const hole of Object.keys(card.penaltyStrokes ?? {})) {
    if (!numbers.has(Number(hole)))
      faults.at(`${place}.penaltyStrokes.${hole}`, `There is no hole ${hole} on this card.`)
  }
  if (card.startHole !== undefined && !numbers.has(card.startHole)) {
    faults.at(`${place}.startHole`, `There is no hole ${card.startHole} on this card.`)
  }
}
