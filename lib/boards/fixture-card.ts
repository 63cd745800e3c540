// The season as the printed fixture card has it; winners from the published sheets, never recounted.

import type { DayStatus } from '@/lib/facts/day-record'
import { formatOf } from '@/lib/rules/formats/catalogue'
import { listed, scoreLong } from './in-words'
import { firstInGroups } from './shared-games'
import type { FixtureCard, ResultSheet } from './views'

export interface FixtureSource {
  readonly slug: string
  readonly name: string
  readonly foundedYear: number | null
  readonly isDemo: boolean
  readonly season: string | null
  readonly seasons: readonly { readonly name: string; readonly days: number }[]
  readonly days: readonly {
    readonly slug: string
    readonly name: string
    readonly number: number
    readonly date: string
    readonly status: DayStatus
    readonly calledOff: string | null
    readonly startPublished: boolean
    readonly courseName: string
    readonly firstTee: string
    readonly startKind: 'tee-times' | 'shotgun'
    readonly formats: readonly string[]
    readonly players: number
    readonly published: number | null
    readonly winner: Winner | null
  }[]
}

export function fixtureCard(source: FixtureSource): FixtureCard {
  return {
    societySlug: source.slug,
    societyName: source.name,
    foundedYear: source.foundedYear,
    isDemo: source.isDemo,
    seasonName: source.season,
    isNewest: source.season === (source.seasons[0]?.name ?? null),
    seasons: source.seasons.filter(({ name }) => name !== source.season).map(({ name, days }) => ({ name, days })),
    days: source.days.map(({ slug, name, number, formats, ...day }) => ({
      ...day,
      daySlug: slug,
      dayName: name,
      dayNumber: number,
      formats: formats.map((id) => lowered(formatOf(id)?.name ?? id)),
    })),
  }
}

/** "Singles Stableford" reads "singles Stableford" inside a line. */
function lowered(name: string): string {
  return /^[A-Z][a-z]/.test(name) && !name.startsWith('Stableford')
    ? name.charAt(0).toLowerCase() + name.slice(1)
    : name
}

export type Winner = NonNullable<FixtureCard['days'][number]['winner']>

export function winnerOf(sheet: ResultSheet): Winner | null {
  const main = sheet.board.competitions[0]
  const first = main?.rows.filter((row) => row.place === 1) ?? []
  if (!main || !first.length) return null
  // Each group is a game of its own, and each of its firsts has an own score.
  const games = firstInGroups(main)
  if (games.length > 1) {
    return {
      name: listed(games.flatMap(({ best }) => best.map((row) => row.name))),
      score: listed(
        games.map(
          ({ groupNumber, best }) => `${scoreLong(best[0]!.score ?? 0, main.unit, true)} in group ${groupNumber}`,
        ),
      ),
    }
  }
  return {
    name: listed(first.map((row) => row.name)),
    score: scoreLong(first[0]!.score ?? 0, main.unit, main.format !== 'gross'),
  }
}
