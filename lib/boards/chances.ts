// What it needs to win, in a golfer's words. The figures are exact (lib/rules/insight); here they only become sentences,
// and only where the committee has allowed them and the round is on.

import type { CompetitionRecord, DayRecord } from '@/lib/facts/day-record'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { type CompetitionChances, chancesOf, type EntrantChances, type NoBounds } from '@/lib/rules/insight/chances'
import type { MatchChances } from '@/lib/rules/insight/match-chances'
import type { Needed } from '@/lib/rules/insight/needed'
import { dayOfRecord } from './day-of-record'
import type { Names } from './entrant-names'
import { capital, counted, inWords, isSeveral, scoreLong, type Unit } from './in-words'
import type { BoardChances, EntrantChance } from './views'

// A record is one state of the book and never changes: the board and every card page of it share one count.
const known = new WeakMap<DayRecord, Map<string, BoardChances | null>>()

/** Null while the committee has not allowed it, before play and after the day is closed. */
export function boardChances(
  record: DayRecord,
  competition: CompetitionRecord,
  unit: Unit,
  names: Names,
): BoardChances | null {
  if (record.showsChances !== true || record.status !== 'in-play') return null
  const ofRecord = known.get(record) ?? new Map<string, BoardChances | null>()
  known.set(record, ofRecord)
  const kept = ofRecord.get(competition.id)
  if (kept !== undefined) return kept
  const counted = chancesOf(dayOfRecord(record), competition.id)
  const chances = counted && inSentences(counted, { unit, net: isNet(competition), names })
  ofRecord.set(competition.id, chances)
  return chances
}

function isNet({ format, terms }: CompetitionRecord): boolean {
  return (terms.custom ?? formatOf(format))?.strokes.kind !== 'none'
}

interface Manner {
  readonly unit: Unit
  readonly net: boolean
  readonly names: Names
}

const NO_BOUNDS: Record<NoBounds, string> = {
  'shared-in-the-group':
    'What a hole is worth here hangs on the scores of the others in the group: nothing exact can be said before they are in.',
  'named-ball':
    'The named ball may still be lost, and that may cost or gain: nothing exact can be said before the end.',
  'drawn-card': 'A side counts somebody else’s card: nothing exact can be said before the end.',
  'card-counts-twice': 'The same card counts for two entrants: nothing exact can be said before the end.',
}

export function inSentences(chances: CompetitionChances, manner: Manner): BoardChances {
  switch (chances.kind) {
    case 'no-bounds':
      return { note: NO_BOUNDS[chances.why], entrants: {}, matches: {} }
    case 'matches':
      return {
        note: null,
        entrants: {},
        matches: Object.fromEntries(chances.matches.map((one) => [one.match, matchSentence(one, manner.names)])),
      }
    case 'bounds':
      return {
        note: null,
        entrants: Object.fromEntries(chances.entrants.map((one) => [one.entrant, entrantChance(one, manner)])),
        matches: {},
      }
  }
}

function entrantChance(one: EntrantChances, manner: Manner): EntrantChance {
  const { possible, certain, holesLeft } = one
  const first =
    certain === 'alone' ? 'certain' : certain === 'level' ? 'certain-level' : possible === 'no' ? 'out' : 'possible'
  return {
    first,
    holesLeft,
    stands: firstSentence(one, manner),
    range: holesLeft > 0 ? rangeSentence(one, manner) : '',
    needed: first === 'possible' ? neededInWords(one, manner) : '',
  }
}

/** All of it in one breath. */
export function chanceInFull({ stands, needed }: EntrantChance): string {
  return [stands, needed].filter((each) => each !== '').join(' ')
}

/** Four points a hole is a birdie with two strokes, hole after hole: more is arithmetic and nobody's hope. */
const BEYOND_HOPE = 4

function neededInWords(one: EntrantChances, manner: Manner): string {
  const least = one.needed.map(({ ties, wins }) => ties ?? wins ?? 0)
  if (manner.unit === 'points' && Math.max(0, ...least) > BEYOND_HOPE * one.holesLeft)
    return `More than four points a hole on ${one.holesLeft === 1 ? 'the hole left' : `the ${inWords(one.holesLeft)} holes left`}: possible only by the Rules.`
  return one.needed.map((needed) => neededSentence(one, needed, manner)).join(' ')
}

function firstSentence({ possible, certain, best, holesLeft }: EntrantChances, { unit, net }: Manner): string {
  if (certain === 'alone') return 'First place is certain.'
  if (certain === 'level') return 'Nobody can finish ahead any more; level is possible.'
  if (best === null) return 'No score can count here any more.'
  if (possible === 'no') return 'First place is out of reach.'
  // Points are only ever added: who is round and may still be first is ahead of everybody as it stands.
  if (holesLeft === 0)
    return unit === 'points'
      ? `Finished on ${scoreLong(best, unit, net)}: can only be caught.`
      : `Finished with ${scoreLong(best, unit, net)}: first if nobody comes in better.`
  return possible === 'level'
    ? 'Can still finish level for first place, but not ahead.'
    : 'First place is still possible.'
}

/** "At the best 54 points, at the worst 24." */
function rangeSentence({ best, worst }: EntrantChances, { unit, net }: Manner): string {
  if (best === null) return ''
  if (best === worst) return `It stays at ${scoreLong(best, unit, net)}.`
  const low = worst === null ? 'no score' : unit === 'points' ? signed(worst) : scoreLong(worst, unit, net)
  return `At the best ${scoreLong(best, unit, net)}, at the worst ${low}.`
}

/** "14 points on the six holes left tie with Trevennor, 15 win; countback would go to Trevennor." */
function neededSentence(one: EntrantChances, needed: Needed, manner: Manner): string {
  const { names, unit, net } = manner
  const them = names.entrantShort(needed.against)
  const holes = one.holesLeft === 1 ? 'the hole left' : `the ${inWords(one.holesLeft)} holes left`
  const whom = needed.full ? them : `${them} as it stands now`
  if (needed.already) return `Ahead of ${whom} whatever comes on ${holes}.`
  if (needed.ties === null && needed.wins === null) return `${capital(whom)} cannot be caught.`
  const amount = (total: number) => scoreLong(total, unit, net)
  const many = (total: number) => unit === 'points' && total !== 1
  if (needed.ties === null) {
    const passes = many(needed.wins!) ? 'pass' : 'passes'
    return `${capital(amount(needed.wins!))} on ${holes} ${passes} ${whom}; level is not possible.`
  }
  const wins =
    needed.wins === null
      ? 'nothing wins'
      : `${unit === 'points' ? signed(needed.wins) : amount(needed.wins)} ${many(needed.wins) ? 'win' : 'wins'}`
  const who = { mine: names.entrantShort(one.entrant), theirs: them }
  const then =
    needed.countback === null
      ? ''
      : needed.countback === 'level'
        ? '; the tie would stand'
        : needed.countback === 'depends'
          ? '; level, the countback hangs on which holes they are made on'
          : `; countback would go to ${who[needed.countback]}`
  return `${capital(amount(needed.ties))} on ${holes} ${many(needed.ties) ? 'tie' : 'ties'} with ${whom}, ${wins}${then}.`
}

const signed = (n: number) => (n < 0 ? `−${-n}` : String(n))

const wonBy = (name: string) => `${name} ${isSeveral(name) ? 'have' : 'has'} won.`

function matchSentence(one: MatchChances, names: Names): string {
  const { best, worst, dormie, holesLeft, aNeeds, bNeeds } = one
  const [a, b] = [names.entrantShort(one.a), names.entrantShort(one.b)]
  if (best === worst) return best === 'won' ? wonBy(a) : best === 'lost' ? wonBy(b) : 'The match is halved.'
  const left = counted(holesLeft, 'hole')
  if (dormie !== null) {
    const [up, down] = dormie === 'a' ? [a, b] : [b, a]
    return `${up} ${isSeveral(up) ? 'are' : 'is'} dormie ${inWords(holesLeft)} and cannot be beaten in the round; ${down} must win ${holesLeft === 1 ? 'the hole left' : `all ${inWords(holesLeft)} left`} to halve.`
  }
  const need = (name: string, needs: number | null) => {
    if (needs === null) return ''
    if (needs <= 0) {
      const win = isSeveral(name) ? 'win' : 'wins'
      return needs === 0
        ? `${name} ${win} by winning as many as are lost`
        : `${name} ${win} even by losing ${inWords(-needs)} more than are won`
    }
    return `${name} must win ${counted(needs, 'hole')} more than are lost`
  }
  const each = [need(a, aNeeds), need(b, bNeeds)].filter((said) => said !== '')
  return each.length === 0 ? `${capital(left)} left.` : `${capital(left)} left: ${each.join('; ')}.`
}
