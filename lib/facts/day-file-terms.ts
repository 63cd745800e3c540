// Competitions of a day file that make no sense: an unknown format, weights where a percentage belongs, a match against
// nobody, a player in two sides of one competition.

import { formatOf } from '@/lib/rules/formats/catalogue'
import { ballValueOf, type Format, formatFrom } from '@/lib/rules/formats/format'
import { extraTermsFaults } from './day-file-extras'
import { type Faults, quoted } from './day-file-faults'
import type { DayFileShape } from './day-file-schema'
import { contradictions } from './format-choices'

type CompetitionShape = DayFileShape['competitions'][number]
type SideShape = DayFileShape['sides'][number]

/** The format a competition of the file means, a custom one included; null for an unknown id. */
export function formatOfShape({ format }: CompetitionShape): Format | null {
  if (typeof format === 'string') return formatOf(format)
  const { name, ...choices } = format
  const allowance = { house: 100, why: 'A format of the society.' }
  return formatFrom({ ...choices, id: name, name, sentence: '', family: 'singles', allowance, clause: '' })
}

export function competitionFaults(file: DayFileShape, faults: Faults): void {
  faults.unique(
    file.competitions.map(({ id }) => id),
    (i) => `competitions[${i}].id`,
    'a competition',
  )
  file.competitions.forEach((competition, c) => {
    const place = `competitions[${c}]`
    if (typeof competition.format === 'object') {
      const wrong = contradictions(competition.format)
      for (const one of wrong) faults.at(`${place}.format.${one.place}`, one.sentence)
      if (wrong.length > 0) return
    }
    const format = formatOfShape(competition)
    if (format === null) {
      faults.at(
        `${place}.format`,
        `There is no format ${quoted(String(competition.format))}; \`score -- --formats\` lists them.`,
      )
      return
    }
    extraTermsFaults(file, competition, format, place, faults)
    allowanceFaults(competition, format, place, faults)
    entrantFaults(file, competition, format, place, faults)
    ballFaults(file, competition, format, faults)
    matchFaults(file, competition, format, place, faults)
    if (competition.maximum !== undefined && ballValueOf(format.value).kind !== 'maximum') {
      faults.at(`${place}.maximum`, `${format.name} has no maximum score.`)
    }
    tieFaults(file, competition, place, faults)
  })
}

function allowanceFaults(competition: CompetitionShape, format: Format, place: string, faults: Faults): void {
  const { allowance } = competition
  if (typeof allowance !== 'object') return
  if (format.ball === 'own') {
    faults.at(`${place}.allowance`, `${format.name} takes one percentage: every player has an own ball.`)
  } else if (allowance.length !== format.side.to) {
    faults.at(`${place}.allowance`, `${format.name} takes ${format.side.to} weights, one for each player of a side.`)
  }
}

/** Sides that play in a competition: those that name it, and those that name none and are of the right size. */
function sidesIn(file: DayFileShape, competition: CompetitionShape, format: Format): { side: SideShape; at: number }[] {
  return file.sides
    .map((side, at) => ({ side, at }))
    .filter(({ side }) => {
      if (side.competitions !== undefined) return side.competitions.includes(competition.id)
      if (competition.entrants !== undefined) return competition.entrants.includes(side.id)
      return side.players.length >= format.side.from && side.players.length <= format.side.to
    })
}

function entrantFaults(
  file: DayFileShape,
  competition: CompetitionShape,
  format: Format,
  place: string,
  faults: Faults,
): void {
  const known = new Set((format.side.to === 1 ? file.players : file.sides).map(({ id }) => id))
  const what = format.side.to === 1 ? 'player' : 'side'
  const entrants = competition.entrants ?? []
  faults.unique(entrants, (i) => `${place}.entrants[${i}]`, 'an entrant')
  entrants.forEach((id, e) => {
    if (!known.has(id)) faults.at(`${place}.entrants[${e}]`, `There is no ${what} ${quoted(id)}.`)
  })
  if (format.side.to === 1 || format.isMatch) return
  const where = new Map<string, string>()
  for (const { side, at } of sidesIn(file, competition, format)) {
    if (competition.entrants !== undefined && !competition.entrants.includes(side.id)) continue
    side.players.forEach((id, p) => {
      const other = where.get(id)
      if (other !== undefined && other !== side.id) {
        const sentence = `${quoted(id)} is already in side ${quoted(other)} of competition ${quoted(competition.id)}.`
        faults.at(`sides[${at}].players[${p}]`, sentence)
      }
      where.set(id, side.id)
    })
  }
}

/** A side's one ball has a card of its own: the cards of its players, of own balls, cannot stand for it. */
function ballFaults(file: DayFileShape, competition: CompetitionShape, format: Format, faults: Faults): void {
  if (format.ball !== 'one') return
  const own = file.competitions.find((one) => formatOfShape(one)?.ball === 'own')
  const withCard = new Set(file.cards.map(({ player }) => player))
  for (const { side, at } of sidesIn(file, competition, format)) {
    if (withCard.has(side.id) || !side.players.some((id) => withCard.has(id))) continue
    const shared = competition.name ?? competition.id
    const sentence = own
      ? `${own.name ?? own.id} is played with a ball each and ${shared} with one ball a side: they cannot share the cards. Give ${quoted(side.id)} a card of its own, or make a day file for each.`
      : `${quoted(side.id)} plays one ball in ${shared}: its card is written under the side, not under a player.`
    faults.at(`sides[${at}]`, sentence)
  }
}

function matchFaults(
  file: DayFileShape,
  competition: CompetitionShape,
  format: Format,
  place: string,
  faults: Faults,
): void {
  if (!format.isMatch) {
    if (competition.matches !== undefined) faults.at(`${place}.matches`, `${format.name} has no matches.`)
    return
  }
  if (competition.matches === undefined) {
    faults.at(`${place}.matches`, 'A match competition names its matches: [{ "id": "m1", "a": …, "b": … }].')
    return
  }
  faults.unique(
    competition.matches.map(({ id }) => id),
    (i) => `${place}.matches[${i}].id`,
    'a match',
  )
  const playersOf = new Map<string, readonly string[]>(
    format.side.to === 1
      ? file.players.map(({ id }) => [id, [id]])
      : file.sides.map(({ id, players }) => [id, players]),
  )
  const absent = new Set(file.absent?.map(({ id }) => id))
  for (const id of absent) playersOf.set(id, [id])
  const what = format.side.to === 1 ? 'player' : 'side'
  competition.matches.forEach((match, m) => {
    const here = `${place}.matches[${m}]`
    for (const end of ['a', 'b'] as const) {
      const size = playersOf.get(match[end])?.length
      if (size === undefined) faults.at(`${here}.${end}`, `There is no ${what} ${quoted(match[end])}.`)
      else if (size > format.side.to)
        faults.at(`${here}.${end}`, `${format.name} is for sides of ${format.side.to}, not of ${size}.`)
      else if (playersOf.get(match[end])!.every((id) => absent.has(id)) && !isGiven(match))
        faults.at(`${here}.${end}`, `${quoted(match[end])} is absent: say who won by walkover, or who conceded.`)
    }
    const others = playersOf.get(match.b) ?? []
    const both = (playersOf.get(match.a) ?? []).filter((id) => others.includes(id))
    if (match.a === match.b || both.length > 0)
      faults.at(`${here}.b`, 'Nobody can play a match against himself or herself.')
  })
}

const isGiven = ({ walkover, concededBy, result }: NonNullable<CompetitionShape['matches']>[number]) =>
  walkover !== undefined || concededBy !== undefined || result !== undefined

type StepShape = NonNullable<CompetitionShape['ties']>['steps'][number]

const isSameStep = (one: StepShape, other: StepShape) => JSON.stringify(one) === JSON.stringify(other)

function tieFaults(file: DayFileShape, competition: CompetitionShape, place: string, faults: Faults): void {
  const known = new Set([...file.players, ...file.sides].map(({ id }) => id))
  competition.ties?.steps.forEach((step, s) => {
    const same = competition.ties!.steps.findIndex((other) => isSameStep(step, other))
    if (same !== s) faults.at(`${place}.ties.steps[${s}]`, `This step is tried already, as step ${same + 1}.`)
    if (step.kind === 'last' && step.holes > 18)
      faults.at(`${place}.ties.steps[${s}].holes`, 'A round has 18 holes: its last are at most so many.')
    if (step.kind === 'holes' && step.from > step.to)
      faults.at(`${place}.ties.steps[${s}].to`, 'The last hole of a window is not before its first.')
    if (step.kind !== 'play-off') return
    faults.unique(step.order, (i) => `${place}.ties.steps[${s}].order[${i}]`, 'a place for')
    step.order.forEach((id, i) => {
      if (!known.has(id)) faults.at(`${place}.ties.steps[${s}].order[${i}]`, `There is no entrant ${quoted(id)}.`)
    })
  })
}
