// Which groups the formats of a day need, and who would be left over: said before the draw is made, for every number of players.

import type { CompetitionRecord } from '@/lib/facts/day-record'
import { groupSizes } from '@/lib/rules/draw/group-sizes'
import { formatIn } from './format-of-competition'
import { capital, counted, inWords, listed } from './in-words'
import { sizeOfShare } from './shared-games'

type Competition = Pick<CompetitionRecord, 'name' | 'format' | 'terms'>

/** What one competition asks of a group; plain data, for the form in the browser. */
export interface GroupNeed {
  readonly name: string
  readonly kind: 'exactly' | 'partners' | 'opponents' | 'pairs-opposed' | 'sides'
  readonly size: number
}

/** Competitions that are counted in any group ask nothing and are left out. */
export function groupNeeds(competitions: readonly Competition[]): readonly GroupNeed[] {
  return competitions.flatMap((one): GroupNeed[] => {
    const format = formatIn(one)
    if (!format) return []
    const { name } = one
    const share = sizeOfShare(format)
    if (share !== null) return [{ name, kind: 'exactly', size: share }]
    if (format.sideSize === 2) return [{ name, kind: format.isMatch ? 'pairs-opposed' : 'partners', size: 2 }]
    if (format.isMatch && format.sideSize === 1) return [{ name, kind: 'opponents', size: 2 }]
    // Larger sides than a group are made of the whole field.
    if (format.sideSize > 2 && format.sideSize <= 4) return [{ name, kind: 'sides', size: format.sideSize }]
    return []
  })
}

/** Players in a group as the draw proposes it: three for a game of three or sides of three. */
export function proposedGroupSize(needs: readonly GroupNeed[]): 3 | 4 {
  const first = needs.find(({ kind }) => kind === 'exactly' || kind === 'sides')
  return first?.size === 3 ? 3 : 4
}

/** Two of a group belong together, as partners or as opponents: an odd group leaves one over. */
export function goInPairs(needs: readonly GroupNeed[]): boolean {
  return needs.some(({ size }) => size === 2)
}

export interface DrawAsked {
  readonly players: number
  readonly groupSize: 2 | 3 | 4
  readonly inPairs: boolean
}

/** "Groups of four, three and two." and then, for each competition, how many it leaves out. */
export function whatTheNumberGives(needs: readonly GroupNeed[], asked: DrawAsked): readonly string[] {
  const sizes = groupSizes(asked.players, asked.groupSize, 'last', asked.inPairs)
  if (sizes.length === 0) return []
  return [sizesInWords(sizes), ...needs.flatMap((need) => leftOver(need, sizes))]
}

function sizesInWords(sizes: readonly number[]): string {
  const said = [...new Set(sizes)].map((size) => {
    const many = sizes.filter((one) => one === size).length
    return `${counted(many, 'group')} of ${inWords(size)}`
  })
  return `${capital(listed(said))}.`
}

function leftOver({ name, kind, size }: GroupNeed, sizes: readonly number[]): readonly string[] {
  const odd = sizes.filter((one) => one % 2 === 1).length
  const sum = (of: (group: number) => number) => sizes.reduce((total, group) => total + of(group), 0)
  switch (kind) {
    case 'exactly': {
      const out = sum((group) => (group === size ? 0 : group))
      return out === 0
        ? []
        : [
            `${capital(counted(out, 'player'))} ${out === 1 ? 'has' : 'have'} no part in ${name}: it is for groups of ${inWords(size)}.`,
          ]
    }
    case 'partners':
      return odd === 0
        ? []
        : [`${capital(counted(odd, 'player'))} ${odd === 1 ? 'has' : 'have'} no partner in ${name}.`]
    case 'opponents':
      return odd === 0
        ? []
        : [`${capital(counted(odd, 'player'))} ${odd === 1 ? 'has' : 'have'} no opponent in ${name}.`]
    case 'pairs-opposed': {
      const alone = sizes.filter((group) => Math.floor(group / 2) % 2 === 1).length
      return [
        ...(odd === 0
          ? []
          : [`${capital(counted(odd, 'player'))} ${odd === 1 ? 'has' : 'have'} no partner in ${name}.`]),
        ...(alone === 0
          ? []
          : [
              `${capital(counted(alone, 'pair'))} ${alone === 1 ? 'has' : 'have'} no opponents in the group in ${name}.`,
            ]),
      ]
    }
    case 'sides': {
      const out = sum((group) => Math.max(0, group - size))
      const short = sizes.filter((group) => group < size).length
      return [
        ...(out === 0 ? [] : [`${capital(counted(out, 'player'))} ${out === 1 ? 'has' : 'have'} no side in ${name}.`]),
        ...(short === 0
          ? []
          : [`${capital(counted(short, 'side'))} of ${name} ${short === 1 ? 'is' : 'are'} short of ${inWords(size)}.`]),
      ]
    }
  }
}
