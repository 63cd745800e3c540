// What is still possible on a card of eighteen par fours off scratch: scores that are not written are fours, up to the
// hole from which a card is open.
import { z } from 'zod'
import type { Competition, Day, HoleScore } from '@/lib/rules/day'
import { chancesOf } from '@/lib/rules/insight/chances'
import { reading } from '../case-file'
import { levelTee, score } from './days'

const HOLES = Array.from({ length: 18 }, (_, at) => ({ hole: at + 1, par: 4, strokeIndex: at + 1 }))

const given = z.strictObject({
  terms: z.looseObject({ format: z.string() }),
  scores: z.record(z.string(), z.array(score)),
  /** Further cards, full. */
  others: z.record(z.string(), z.array(score)).optional(),
  openFrom: z.record(z.string(), z.int()).optional(),
  sides: z.record(z.string(), z.array(z.string())).optional(),
})

function dayOf({ terms, scores, others, openFrom, sides }: z.infer<typeof given>): Day {
  const all = { ...scores, ...others }
  return {
    date: '2026-06-13',
    edition: '2024',
    tees: [levelTee('tee', HOLES)],
    players: Object.keys(all).map((id) => ({ id, name: id, indexTenths: 0, tee: 'tee' })),
    sides: Object.entries(sides ?? {}).map(([id, players]) => ({ id, players, competitions: ['c'] })),
    cards: Object.entries(all).map(([player, list]) => ({
      player,
      scores: HOLES.map(({ hole }, at): HoleScore => (hole >= (openFrom?.[player] ?? 19) ? null : (list[at] ?? 4))),
    })),
    competitions: [{ id: 'c', allowance: 100, ...terms } as Competition],
    closed: false,
  }
}

export const INSIGHT_READINGS = {
  'small-day-chances': reading(given, (small) => {
    const chances = chancesOf(dayOf(small), 'c')!
    const entrants = chances.kind === 'bounds' ? chances.entrants : []
    const by = <T>(what: (one: (typeof entrants)[number]) => T) =>
      Object.fromEntries(entrants.map((one) => [one.entrant, what(one)]))
    return {
      best: by((one) => one.best),
      worst: by((one) => one.worst),
      possible: by((one) => one.possible),
      certain: by((one) => one.certain),
      holesLeft: by((one) => one.holesLeft),
      needed: Object.fromEntries(entrants.flatMap((one) => (one.needed.length ? [[one.entrant, one.needed]] : []))),
      noBounds: chances.kind === 'no-bounds' ? chances.why : null,
      matches: chances.kind === 'matches' ? chances.matches : [],
    }
  }),
}
