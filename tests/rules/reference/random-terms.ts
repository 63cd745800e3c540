// Terms for a competition on a random day: whatever the format takes, now and then, so that every setting meets every
// format and most other settings.
import type { Competition, Day, Division, Match, MissingPlayer, TieRule, TieStep } from '@/lib/rules/day'
import type { Chance } from './chance'
import { type Form, formOf, isGame } from './forms'

type Named = Pick<Competition, 'id' | 'format'> & Partial<Competition>

/** Every step there is, in an order nobody would choose. */
export function tieRule(chance: Chance, entrants: readonly string[]): TieRule | undefined {
  if (chance.oneIn(3)) return undefined
  const windows: TieStep[] = [9, 6, 3, 1].map((holes) => ({ kind: 'last', holes }))
  const firstNine: TieStep[] = [6, 3, 1].map((holes) => ({ kind: 'first-nine-last', holes }))
  const last = (): TieStep[] => [
    { kind: 'lower-handicap' },
    { kind: 'higher-handicap' },
    { kind: 'lot', seed: chance.between(-3, 99) },
    { kind: 'play-off', order: chance.shuffled(entrants).slice(0, chance.pick([0, 2, 3])) },
    { kind: 'holes', from: chance.between(1, 9), to: chance.between(9, 18) },
  ]
  const first = chance.pick([windows, [...windows, ...firstNine], windows.slice(0, 1), [], []])
  const others = chance.oneIn(2) ? [] : chance.shuffled(last()).slice(0, chance.between(1, 2))
  return {
    steps: chance.oneIn(5) ? [...others, ...first] : [...first, ...others],
    holesCount: chance.pick(['by-number', 'as-played']),
    fractions: chance.pick(['kept', 'rounded']),
  }
}

/** What else the day has that terms may speak of. */
export interface Around {
  readonly numbers: readonly number[]
  readonly entrants: readonly string[]
  readonly players: readonly string[]
  readonly tees: readonly string[]
  readonly closed: boolean
  readonly rounds: number
  readonly often: boolean
}

export function randomTerms(chance: Chance, one: Named, around: Around): Competition {
  const form = formOf(one.format)
  const isMatch = one.matches !== undefined
  const ties = tieRule(chance, around.entrants)
  return {
    ...one,
    ...(ties && !isMatch ? { ties } : {}),
    ...(form.kind === 'maximum' && one.maximum === undefined ? { maximum: maximum(chance) } : {}),
    ...strokeTerms(chance, form),
    ...(form.oneBall && chance.oneIn(3) ? { sideTee: chance.pick(around.tees) } : {}),
    ...(isMatch ? matchTerms(chance, one.format, one.matches!, around) : holeTerms(chance, one, form, around)),
    ...(isGame(one.format) ? groupsOf(chance, one.format, around) : {}),
    ...(around.rounds > 1 ? roundsIn(chance, one, form, around) : {}),
    ...(one.format === 'double-point-stableford' ? { namedHoles: some(chance, around.numbers) } : {}),
  }
}

const maximum = (chance: Chance): NonNullable<Competition['maximum']> =>
  chance.pick([{ kind: 'net-double-bogey' }, { kind: 'double-par' }, { kind: 'fixed', strokes: 7 }] as const)

/** Which rounds are added up, and now and then terms that one of them was played under. */
function roundsIn(chance: Chance, one: Named, form: Form, around: Around): Partial<Competition> {
  const isMatch = one.matches !== undefined
  const rounds = roundsOf(chance, isMatch)
  if (isMatch || rounds.length < 2 || chance.oneIn(2)) return { rounds }
  const { divisions: _d, entrants: _e, minimumDrives: _m, ...scored } = holeTerms(chance, one, form, around)
  const roundTerms = [{ round: rounds[0]!, ...scored, ...strokeTerms(chance, form) }]
  return { rounds, roundTerms }
}

function roundsOf(chance: Chance, isMatch: boolean): number[] {
  return isMatch ? [chance.between(1, 2)] : chance.pick([[1, 2], [1, 2], [2, 1], [2]])
}

function some(chance: Chance, numbers: readonly number[]): number[] {
  return chance.shuffled(numbers).slice(0, chance.between(1, 4))
}

function strokeTerms(chance: Chance, form: Form): Partial<Competition> {
  if (form.kind === 'gross') return {}
  const limit = chance.oneIn(6)
    ? { handicapLimit: chance.pick([{ men: 18, women: 24 }, { men: 10 }, { women: 28 }]) }
    : {}
  if (form.oneBall && chance.oneIn(8)) return { ...limit, dividedBy: chance.between(2, 10) }
  if (!chance.oneIn(4)) return limit
  const weights = Array.from({ length: form.size }, () => chance.between(0, 60))
  const allowance = form.oneBall && chance.oneIn(2) ? weights : chance.pick([0, 50, 75, 90, 100, 110])
  return { ...limit, allowance }
}

function holeTerms(chance: Chance, one: Named, form: Form, around: Around): Partial<Competition> {
  const wins = form.oneBall || form.size > 1
  return {
    ...(chance.oneIn(12) ? { countedHoles: chance.shuffled(around.numbers).slice(0, chance.between(3, 8)) } : {}),
    ...(around.closed && chance.oneIn(6) ? { notPlayed: chance.pick(['level', 'no-score'] as const) } : {}),
    ...(wins && (around.often || chance.oneIn(2)) ? { missing: missing(chance, form) } : {}),
    ...(form.named !== undefined && chance.oneIn(2)
      ? { ballLost: chance.pick(['counts-once', 'named-score-nothing', 'side-out'] as const) }
      : {}),
    ...(form.oneBall && chance.oneIn(3) ? { minimumDrives: chance.between(1, 4) } : {}),
    ...(chance.oneIn(6) ? { divisions: divisions(chance) } : {}),
    ...(chance.oneIn(14) && !isGame(one.format) ? { entrants: around.entrants.slice(1) } : {}),
  }
}

function missing(chance: Chance, form: Form): MissingPlayer {
  const kinds: MissingPlayer[] = [
    { kind: 'nothing' },
    { kind: 'ghost', overPar: chance.between(0, 3), courseHandicap: chance.between(-2, 30) },
    { kind: 'lowest-again' },
  ]
  return chance.pick(form.oneBall ? kinds : [...kinds, { kind: 'drawn', seed: chance.between(1, 50) }])
}

function divisions(chance: Chance): Division[] {
  const cut = chance.between(0, 40)
  return [
    { id: 'low', name: 'Low', handicapTo: cut },
    { id: 'high', name: 'High', handicapFrom: cut + 1 },
    chance.pick([
      { id: 'women', name: 'Women', gender: 'women' as const },
      { id: 'members', name: 'Members', guests: 'none' as const },
      { id: 'guests', name: 'Guests', guests: 'only' as const },
      { id: 'seniors', name: 'Seniors', group: 'seniors' },
    ]),
  ]
}

function matchTerms(
  chance: Chance,
  format: string,
  matches: readonly Match[],
  { numbers }: Around,
): Partial<Competition> {
  const end = () => chance.pick(['a', 'b'] as const)
  const holed = () => chance.pick([3, 4, 4, 5, 'x'] as const)
  return {
    ...(chance.oneIn(3) ? { matchDifference: chance.pick(['rounded', 'unrounded'] as const) } : {}),
    ...(chance.oneIn(3) ? { extraHoleStrokes: chance.pick(['as-on-the-card', 'none'] as const) } : {}),
    ...(format === 'three-part-match' && chance.oneIn(2)
      ? { partPoints: chance.pick(['each-part', 'whole'] as const) }
      : {}),
    ...(chance.oneIn(8) ? { missing: { kind: 'ghost' as const, overPar: 1, courseHandicap: 18 } } : {}),
    matches: matches.map((match) => ({
      ...match,
      ...(chance.oneIn(5) ? { concededHoles: some(chance, numbers).map((hole) => ({ hole, to: end() })) } : {}),
      ...(chance.oneIn(20) ? { concededBy: end() } : chance.oneIn(20) ? { walkover: end() } : {}),
      ...(chance.oneIn(6) ? { abandoned: true } : {}),
      ...(chance.oneIn(2) ? { extraHoles: Array.from({ length: 3 }, () => ({ a: holed(), b: holed() })) } : {}),
    })),
  }
}

function groupsOf(chance: Chance, format: string, { players, often }: Around): Partial<Competition> {
  const size = format.startsWith('split') ? 3 : 2
  if (players.length < 2 * size || (!often && chance.oneIn(2))) return {}
  const shuffled = chance.shuffled(players)
  const ranking = chance.oneIn(3) ? { ranking: chance.pick(['in-group', 'everybody'] as const) } : {}
  return {
    ...ranking,
    groups: [shuffled.slice(0, size), shuffled.slice(size, format.startsWith('split') ? 2 * size : undefined)],
  }
}

/** Two teams of everybody, or of some. */
export function randomTeams(chance: Chance, sides: readonly (readonly string[])[]): Day['teams'] {
  const home = sides.filter((_, at) => at % 2 === 0).flat()
  const away = sides.filter((_, at) => at % 2 === 1).flat()
  const both = chance.oneIn(3) ? [home.slice(1), [...away, ...home.slice(0, 1)]] : [home, away]
  return both.flatMap((players, at) => (players.length ? [{ id: `t${at}`, name: `Team ${at}`, players }] : []))
}
