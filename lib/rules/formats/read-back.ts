// A format of the society's own, read back as one plain sentence from its five choices, and the allowance proposed for
// it: the published one where it is a published format under another name (RoH 2024, Appendix C), else a house choice.

import { editionOf } from '../editions/editions'
import { allowanceFor, FORMATS, inWords, type ProposedAllowance } from './catalogue'
import type { BallValue, CountChoice, FiveChoices, Format, StrokesChoice, Take, ValueChoice } from './format'

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight']
const word = (n: number) => NUMBERS[n] ?? String(n)

export function readBack(choices: FiveChoices, allowance?: number | readonly number[]): string {
  const parts = [
    sideInWords(choices),
    strokesInWords(choices.strokes, allowance),
    valueInWords(choices.value),
    countInWords(choices),
  ].filter((part) => part !== '')
  const sentence = parts.join('; ')
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`
}

function sideInWords({ side, ball }: FiveChoices): string {
  if (side.to === 1) return 'every player for himself or herself'
  const size = side.from === side.to ? word(side.to) : `${word(side.from)} to ${word(side.to)}`
  return ball === 'one' ? `sides of ${size} play one ball` : `sides of ${size}, each player with an own ball`
}

function strokesInWords(strokes: StrokesChoice, allowance?: number | readonly number[]): string {
  if (strokes.kind === 'none') return 'no handicap counts'
  const share = allowance === undefined ? 'the allowance' : inWords(allowance)
  const off = strokes.off === 'lowest' ? ', as the difference from the lowest' : ''
  const whose = strokes.kind === 'each-player' ? 'each course handicap' : 'the side’s course handicaps'
  return `strokes are ${share} of ${whose}${off}`
}

function ballInWords(value: BallValue): string {
  switch (value.kind) {
    case 'strokes':
      return 'every stroke counts'
    case 'maximum':
      return 'every stroke counts up to a maximum on each hole'
    case 'points': {
      const { best, points } = value.table
      const level = points[-best] ?? 0
      return `points on each hole, ${level} for level with par`
    }
    case 'against-par':
      return 'each hole is won, halved or lost against par'
  }
}

function valueInWords(value: ValueChoice): string {
  if (value.kind === 'against-opponent') {
    const parts = value.parts === undefined ? '' : `, in ${word(value.parts.length)} parts`
    const on =
      value.on.kind === 'strokes'
        ? 'on net strokes'
        : value.on.kind === 'points'
          ? 'on points'
          : `where ${ballInWords(value.on)}`
    return `each hole is won, halved or lost against an opponent ${on}${parts}`
  }
  if (value.kind === 'shared') {
    const { shares } = value
    if (shares.kind === 'by-place') return `each hole shares out ${shares.points.join('-')} points inside the group`
    return `the best score alone takes the hole, and a tied hole is ${shares.tied}`
  }
  return ballInWords(value)
}

const RANKS = ['the best score', 'the second', 'the third', 'the fourth']

function timesInWords(n: number): string {
  return n === 1 ? 'once' : n === 2 ? 'twice' : `${word(n)} times`
}

function takeInWords(take: Take): string {
  if (take.every((weight) => weight === 1))
    return take.length === 1 ? 'the best score' : `the best ${word(take.length)} scores`
  return take.map((weight, i) => `${RANKS[i] ?? `number ${i + 1}`} ${timesInWords(weight)}`).join(' and ')
}

function countInWords({ count, side, ball }: FiveChoices): string {
  if (side.to === 1 || ball === 'one') return ''
  const one = count.kind === 'best' && count.take.length === 1 && count.take[0] === 1
  return `of the side ${countChoiceInWords(count)} ${one ? 'counts' : 'count'}`
}

function countChoiceInWords(count: CountChoice): string {
  switch (count.kind) {
    case 'best':
      return takeInWords(count.take)
    case 'by-turn':
      return `hole by hole in turn, ${count.turn.map(takeInWords).join(', then ')},`
    case 'by-stretch':
      return count.stretches.map(({ to, take }) => `${takeInWords(take)} up to hole ${to}`).join(', ')
    case 'named-player': {
      const times = count.times === 1 ? '' : `, ${word(count.times)} times over,`
      return `a named player’s score in turn${times} and ${takeInWords(count.others)} of the others`
    }
  }
}

function same(a: FiveChoices, b: FiveChoices): boolean {
  const key = ({ side, ball, strokes, value, count }: FiveChoices) =>
    JSON.stringify([side, ball, strokes, value, count])
  return key(a) === key(b)
}

/** The known format that makes the same five choices, if there is one. */
export function knownAs(choices: FiveChoices, formats: readonly Format[] = FORMATS): Format | null {
  return formats.find((one) => same(one, choices)) ?? null
}

export function proposedForChoices(choices: FiveChoices, fieldSize: number, editionId: string): ProposedAllowance {
  const known = knownAs(choices)
  if (known !== null) return allowanceFor(known, fieldSize, editionOf(editionId))
  const none = choices.strokes.kind === 'none'
  return {
    allowance: none ? 0 : 100,
    from: 'house-choice',
    clause: 'House choice',
    sentence: none
      ? 'No handicap counts.'
      : 'Nothing is published for a format like this: the committee chooses the figure.',
  }
}
