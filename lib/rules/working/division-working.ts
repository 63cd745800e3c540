// In which division an entrant stands, and why: the handicap of this competition against each boundary, then gender,
// guests and the society's own groups. Society custom; the limits are in the terms.

import type { Competition, Day, Division } from '../day'
import { wholeHandicap } from '../exact/fraction'
import { FORMATS } from '../formats/catalogue'
import type { Format } from '../formats/format'
import { handicapOf } from '../score/balls'
import { type DayIndex, indexOf } from '../score/day-index'
import { type NotIn, notIn } from '../score/divisions'
import type { Entry } from '../score/entry-lines'
import { entriesOf } from '../score/field'
import { sharedEntries } from '../score/shared-holes'
import { termsInForce } from '../score/terms-in-force'
import type { WorkingStep } from '../standings'

const CLAUSE = 'Terms of the competition'

export interface DivisionWorking {
  /** The handicap that decides, and how it is made up; none where no division asks for one. */
  readonly handicap: WorkingStep | null
  /** One step a division, in the order of the terms, with whether the entrant is in it. */
  readonly divisions: readonly { readonly id: string; readonly isIn: boolean; readonly step: WorkingStep }[]
}

/** Every entrant's way into the divisions; empty for a competition that has none. */
export function divisionWorkings(
  day: Day,
  competition: Competition,
  formats: readonly Format[] = FORMATS,
): ReadonlyMap<string, DivisionWorking> {
  const divisions = competition.divisions ?? []
  const terms = termsInForce(competition, day, formats)
  if (terms === null || terms.format.isMatch || divisions.length === 0) return new Map()
  // Of several rounds the last one's handicaps decide.
  const rounds = competition.rounds ?? [1]
  const index = indexOf(day, rounds[rounds.length - 1] ?? 1)
  const { value } = terms.format
  const entries = value.kind === 'shared' ? sharedEntries(terms, value, index) : entriesOf(terms, index)
  return new Map(
    entries.map((entry) => [
      entry.entrant.id,
      {
        handicap: divisions.some(asksHandicap) ? handicapStep(entry, terms.format) : null,
        divisions: divisions.map((division) => divisionStep(entry, division, index)),
      },
    ]),
  )
}

const asksHandicap = ({ handicapFrom, handicapTo }: Division) => handicapFrom !== undefined || handicapTo !== undefined

function handicapStep({ balls, entrant }: Entry, { strokes }: Format): WorkingStep {
  const own = balls.filter((ball) => !ball.filled)
  const figure = wholeHandicap(handicapOf(balls))
  const gross = strokes.kind === 'none'
  const label = gross ? 'Course handicap' : 'Playing handicap'
  const what = label.toLowerCase()
  if (own.length < 2) {
    const whose = entrant.players.length > 1 ? ' of the side' : ''
    const why = gross ? `No handicap counts here: the course handicap${whose}, rounded, decides.` : null
    const sentence = why ?? `The playing handicap${whose} in this competition decides.`
    return { figure, label, sentence, clause: CLAUSE }
  }
  const sum = own.map((ball) => wholeHandicap(ball.has)).join(' + ')
  return { figure, label, sum, sentence: `The ${what}s of the side, added up, decide.`, clause: CLAUSE }
}

function divisionStep(entry: Entry, division: Division, index: DayIndex): DivisionWorking['divisions'][number] {
  const out = notIn(entry, division, index)
  const handicap = handicapOf(entry.balls)
  const sentence = out === null ? inBecause(handicap, division) : outBecause(handicap, out, division, index)
  const step = { figure: out === null ? 'in' : 'not in', label: division.name, sentence, clause: CLAUSE }
  return { id: division.id, isIn: out === null, step }
}

/** "18 is from 16 to 24; a member; marked “seniors”." */
function inBecause(handicap: number, division: Division): string {
  const { handicapFrom: from, handicapTo: to, gender, guests, group } = division
  const shown = wholeHandicap(handicap)
  const band =
    from !== undefined && to !== undefined
      ? `${shown} is from ${wholeHandicap(from)} to ${wholeHandicap(to)}`
      : from !== undefined
        ? `${shown} is ${wholeHandicap(from)} or more`
        : to !== undefined
          ? `${shown} is ${wholeHandicap(to)} or less`
          : null
  const reasons = [
    band,
    gender === undefined ? null : `plays from the ${gender}’s tees`,
    guests === undefined ? null : guests === 'only' ? 'a guest' : 'no guest',
    group === undefined ? null : `marked “${group}”`,
  ].filter((one) => one !== null)
  if (reasons.length === 0) return 'Everybody is in it.'
  const said = reasons.join('; ')
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`
}

function outBecause(handicap: number, out: NotIn, division: Division, { players }: DayIndex): string {
  const shown = wholeHandicap(handicap)
  switch (out.kind) {
    case 'handicap-from':
      return `${shown} is less than ${wholeHandicap(division.handicapFrom ?? 0)}.`
    case 'handicap-to':
      return `${shown} is more than ${wholeHandicap(division.handicapTo ?? 0)}.`
  }
  const name = players.get(out.player)?.player.name ?? out.player
  switch (out.kind) {
    case 'gender':
      return `It is for the ${division.gender}’s tees, and ${name} plays from others.`
    case 'guests':
      return division.guests === 'only'
        ? `It is for guests, and ${name} is a member.`
        : `It is for members, and ${name} is a guest.`
    case 'group':
      return `It is for those marked “${division.group}”, and ${name} is not.`
    case 'not-playing':
      return `${name} does not play on this day.`
  }
}
