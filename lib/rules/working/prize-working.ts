// How a prize came to whoever has it: who stood where, who may win it, who holds one already, who steps up. Society
// custom: the terms of the competition say who may win what, and whether anybody takes two.

import { ordinal } from '../exact/fraction'
import type { WorkingStep } from '../standings'

/** Somebody with a place, as the prize looks at them. */
export interface PrizeCandidate {
  readonly entrant: string
  readonly name: string
  readonly place: number
  readonly tied: boolean
  /** Ready for the sheet: "36 points". */
  readonly score: string
  /** Why this prize is not for them, without a full stop: "guests play for the guest prize". */
  readonly barred?: string
  /** The prize they hold already and that keeps them from another: "First in the Spring Cup". */
  readonly holds?: string
}

export interface PrizeFall {
  readonly name: string
  /** 1 for the first among those who may win it. */
  readonly place: number
  /** Who may win it, as it follows "It is for": "members", "guests", "everybody in Division 1". */
  readonly isFor: string
  /** Best first. */
  readonly candidates: readonly PrizeCandidate[]
  /** Entrant ids; several where a tie shares it, none where nobody has it. */
  readonly winners: readonly string[]
}

const CLAUSE = 'Terms of the competition'

export function prizeWorking(fall: PrizeFall): WorkingStep[] {
  const { name, place, isFor, candidates, winners } = fall
  const steps: WorkingStep[] = [
    {
      figure: ordinal(place),
      label: name,
      sentence: `It is for ${isFor}: the ${ordinal(place)} of those who may win it.`,
      clause: CLAUSE,
    },
  ]
  const last = candidates.reduce((at, one, i) => (winners.includes(one.entrant) ? i : at), -1)
  let among = 0
  candidates.forEach((one, i) => {
    if (one.barred === undefined) among++
    // Below the last winner nothing was decided; with no winner everybody was looked at.
    if (last >= 0 && i > last) return
    steps.push({
      figure: ordinal(one.place),
      label: one.name,
      sum: one.score,
      sentence: fateOf(one, among, fall),
      clause: CLAUSE,
    })
  })
  if (last < 0) {
    const sentence =
      candidates.length === 0
        ? 'Nobody has a place: nobody wins it.'
        : among === 0
          ? 'Nobody with a place may win it.'
          : 'Too few are left for this place: nobody wins it.'
    steps.push({ figure: '–', label: 'Nobody', sentence, clause: CLAUSE })
  }
  return steps
}

function fateOf(one: PrizeCandidate, among: number, { place, winners }: PrizeFall): string {
  if (winners.includes(one.entrant)) {
    if (winners.length > 1) return 'Level, and the tie stands: the prize is shared.'
    return among > place ? 'Steps up and wins it.' : 'Wins it.'
  }
  if (one.barred !== undefined) return `May not win it: ${one.barred}.`
  if (one.holds !== undefined) return `Holds ${one.holds} already: the next one steps up.`
  return `The ${ordinal(among)} of those who may win it: this prize is for the ${ordinal(place)}.`
}
