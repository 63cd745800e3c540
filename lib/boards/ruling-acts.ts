// From a fault of a card and the answer given to it to the rulings that carry it out. What needs no ruling here is said in
// words: the book adds up, and one partner's score counts by itself.

import type { RulingKind } from '@/lib/facts/day-record'
import type { WrittenScore } from '@/lib/facts/score-fact'
import { ok, type Result, refused } from '@/lib/result'
import { holesFrom } from '@/lib/rules/hole-numbers'
import type { CardFault, CardRuling, Consequence, RulingChoice } from '@/lib/rules/rulings/ruling'
import { RULINGS_ON_CARDS } from '@/lib/rules/rulings/rulings-on-cards'
import { type CurrentCard, keyOf } from './current-card'
import type { ScoreEffect } from './score-effect'

export interface RulingAct {
  readonly kind: RulingKind
  readonly hole: number | null
  readonly value: number | null
}

/** What else an answer must know. */
export type ChoiceNeeds = 'hole' | 'strokes' | 'made' | 'handicap' | 'first-hole' | 'writer'

export interface CardFaultOffer {
  readonly fault: CardFault
  readonly name: string
  readonly sentence: string
  readonly choices: readonly (RulingChoice & { readonly needs: readonly ChoiceNeeds[] })[]
}

/** Faults that this book cannot have, or that need no ruling in it. */
const SETTLED: readonly CardFault[] = ['wrong-total', 'one-partner-only', 'side-score-not-identified']
export const SETTLED_IN_WORDS =
  'The book adds up by itself, knows whose score is whose, and counts a partner who scored alone: none of that needs a ruling.'

const OF_A_MATCH: readonly CardFault[] = ['handicap-too-high-in-match', 'handicap-too-low-in-match']

/** The faults that may be ruled on by choice; those of a match only where one is played. */
export function faultsOffered(hasMatches: boolean): readonly CardFaultOffer[] {
  return RULINGS_ON_CARDS.filter(
    ({ fault }) => !SETTLED.includes(fault) && (hasMatches || !OF_A_MATCH.includes(fault)),
  ).map(({ fault, name, sentence, choices }) => ({
    fault,
    name,
    sentence,
    // The committee's own decision is any ruling there is: it has a form of its own.
    choices: choices
      .filter(({ consequence }) => consequence.kind !== 'committee')
      .map((choice) => ({ ...choice, needs: needsOf(fault, choice.consequence) })),
  }))
}

function needsOf(fault: CardFault, consequence: Consequence): readonly ChoiceNeeds[] {
  switch (consequence.kind) {
    case 'stands':
      return ['hole']
    case 'no-effect':
      return ['hole', 'made']
    case 'penalty-strokes':
      // Unsigned: the last hole. Late: the first. Both are known.
      return fault === 'score-lower-unknown-penalty' ? ['hole', 'strokes'] : []
    case 'right-handicap':
    case 'lower-handicap':
      return ['handicap']
    case 'no-score-before':
      return ['first-hole']
    case 'one-version':
      return ['writer']
    default:
      return []
  }
}

export interface ChoiceGiven {
  readonly fault: string
  readonly choice: string
  readonly hole: number | null
  readonly value: number | null
  /** Which handicap the value is. */
  readonly measure: 'index' | 'course' | 'playing'
  readonly writer: string | null
}

/** What another score on a hole would change: counted by the engine, in every competition. */
export type EffectOf = (hole: number, made: number) => ScoreEffect

export interface ActsOfChoice {
  readonly ruling: CardRuling
  readonly choice: RulingChoice
  readonly acts: readonly RulingAct[]
  /** What was computed for it, to be kept with the reason. */
  readonly said: string | null
}

type Refusals = 'not-understood'
const unclear = (place: string, sentence: string) =>
  refused<Refusals>('not-understood', sentence, [{ place, sentence }])

/** `startHole` is where the player's group began. */
export function actsOfChoice(
  given: ChoiceGiven,
  card: Pick<CurrentCard, 'holes' | 'missing' | 'notAgreed'>,
  startHole: number,
  effectOf: EffectOf,
): Result<ActsOfChoice, Refusals> {
  const ruling = RULINGS_ON_CARDS.find(({ fault }) => fault === given.fault)
  const choice = ruling?.choices.find(({ id }) => id === given.choice)
  if (!ruling || !choice) return unclear('choice', 'Choose what was wrong and what follows from it.')
  if (choice.consequence.kind === 'no-effect') {
    const line = card.holes.find((one) => one.hole === given.hole)
    if (!line || typeof line.score !== 'number') return unclear('hole', 'Say which hole, one that has a score.')
    if (given.value === null || given.value <= line.score || given.value > 30)
      return unclear('value', `Say how many strokes were made: more than the ${line.score} on the card.`)
    const effect = effectOf(line.hole, given.value)
    if (!effect.isNone) return unclear('choice', effect.sentence)
    const stands: RulingAct = { kind: 'hole-score', hole: line.hole, value: line.score }
    return ok({ ruling, choice, acts: [stands], said: effect.sentence })
  }
  const acts = actsFor(ruling, choice.consequence, given, card, startHole)
  return acts.ok ? ok({ ruling, choice, acts: acts.value, said: null }) : acts
}

const HANDICAP_KINDS = { index: 'handicap-index', course: 'course-handicap', playing: 'playing-handicap' } as const

function actsFor(
  { fault }: CardRuling,
  consequence: Consequence,
  { hole, value, measure, writer }: ChoiceGiven,
  card: Pick<CurrentCard, 'holes' | 'missing' | 'notAgreed'>,
  startHole: number,
): Result<readonly RulingAct[], Refusals> {
  const outcome = (kind: RulingKind) => ok([{ kind, hole: null, value: null }])
  const score = (on: number, counts: WrittenScore): RulingAct => ({
    kind: 'hole-score',
    hole: on,
    value: counts === 'x' ? null : counts,
  })
  switch (consequence.kind) {
    case 'disqualified':
    case 'no-return':
      return outcome(consequence.kind)
    case 'stands': {
      const line = card.holes.find((one) => one.hole === hole)
      if (!line || line.score === null) return unclear('hole', 'Say which hole, one that has a score.')
      return ok([score(line.hole, line.score)])
    }
    case 'no-score-on-hole':
      if (card.missing.length === 0) return unclear('choice', 'No hole of this card is blank.')
      return ok(card.missing.map((missing) => score(missing, 'x')))
    case 'no-score-before': {
      const round = { holes: card.holes.length, firstHole: card.holes[0]?.hole ?? 1 }
      const order = holesFrom(round, startHole)
      const at = hole === null ? -1 : order.indexOf(hole)
      if (at < 1) return unclear('hole', 'Say with which hole the player began: a later one than the group.')
      return ok(order.slice(0, at).map((missed) => score(missed, 'x')))
    }
    case 'penalty-strokes': {
      const on =
        fault === 'not-signed' ? (card.holes.at(-1)?.hole ?? null) : fault === 'started-late' ? startHole : hole
      if (on === null) return unclear('hole', 'Say on which hole.')
      const strokes = { kind: 'penalty-strokes' as const, hole: on, value: value ?? consequence.strokes }
      return ok(fault === 'not-signed' ? [strokes, { kind: 'card-stands', hole: null, value: null }] : [strokes])
    }
    case 'right-handicap':
    case 'lower-handicap':
      if (value === null) return unclear('value', 'Say which handicap counts.')
      return ok([{ kind: HANDICAP_KINDS[measure], hole: null, value }])
    case 'one-version': {
      const differs = card.notAgreed.flatMap((on) => {
        const opinions = card.holes.find((one) => one.hole === on)?.opinions ?? []
        // By the writer's key; by the bare name where a name is enough.
        const fact = opinions.find((one) => keyOf(one) === writer) ?? opinions.find((one) => one.writer === writer)
        return fact ? [score(on, fact.score)] : []
      })
      if (differs.length === 0 || differs.length < card.notAgreed.length)
        return unclear('writer', 'Choose the version that has every hole on which the two differ.')
      return ok(differs)
    }
    case 'no-effect':
    case 'corrected':
    case 'side-disqualified':
    case 'committee':
      return unclear('choice', SETTLED_IN_WORDS)
  }
}
