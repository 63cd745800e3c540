// Promise: a card is complete when its matches are, and the phone counts a match as the board does, on any day.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cardProgress, progressInWords } from '@/lib/boards/card-progress'
import { cardsOnTheirWay, progressOf } from '@/lib/boards/cards-on-their-way'
import { faultsOf, wantsInWords } from '@/lib/boards/current-card'
import { cardsAsTheyStand, dayOfRecord } from '@/lib/boards/day-of-record'
import { formatIn } from '@/lib/boards/format-of-competition'
import { groupPack } from '@/lib/boards/group-pack'
import { groupsOnCourse } from '@/lib/boards/groups-on-course'
import { hasMatches } from '@/lib/boards/match-cards'
import { cardsInTheWay } from '@/lib/boards/returns'
import type { DayRecord, FactRecord } from '@/lib/facts/day-record'
import type { EntryId } from '@/lib/facts/ids'
import { cardsNow, scoresIn } from '@/lib/outbox/card-now'
import { lotFrom } from '@/lib/rules/draw/lot'
import { holesFrom } from '@/lib/rules/hole-numbers'
import { matchNow } from '@/lib/rules/matches/match-now'
import { scoreDay } from '@/lib/rules/score-day'
import { asId } from '../setup/ids'
import { randomRecord } from './random-record'
import { smallRecord } from './small-record'

/** A day of matches by lot, stopped anywhere in the order of play, with holes left out and holes in dispute. */
function dayOfMatches(seed: number): DayRecord {
  const record = randomRecord(seed)
  const lot = lotFrom(seed + 1)
  const matches = record.competitions.filter((one) => formatIn(one)?.isMatch)
  const competitions = matches.length > 0 && lot(3) > 0 ? matches : record.competitions
  const facts = record.cards.flatMap((card): FactRecord[] => {
    const start = record.groups.find((one) => one.entryIds.includes(card.entryId))?.startHole ?? 1
    const played = holesFrom(record.round, start).slice(0, record.round.holes - lot(10))
    const own = record.facts.filter((fact) => fact.cardId === card.id && played.includes(fact.hole) && lot(40) > 0)
    const twice = own.filter(() => lot(150) === 0)
    return [
      ...own,
      ...twice.map((fact) => ({ ...fact, id: fact.id + 50_000, writer: asId<EntryId>('other'), score: 9 })),
    ]
  })
  return { ...record, competitions, facts }
}

const figures = ({ up, finished, result }: { up: number; finished: boolean; result: string }) => ({
  ahead: finished ? Math.sign(up) : null,
  finished,
  result,
})

describe('phone and board', () => {
  it('stand alike on every match of any day, and want the same holes', () => {
    let matches = 0
    let early = 0
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const record = dayOfMatches(seed)
        fc.pre(hasMatches(record))
        const cards = cardsAsTheyStand(record)
        const results = new Map(
          scoreDay(dayOfRecord(record))
            .flatMap((one) => one.matches ?? [])
            .map((one) => [one.id, one]),
        )
        for (const group of record.groups) {
          const pack = groupPack(record, group)
          const onPhone = cardsNow(pack, [], 'this-phone')
          for (const card of onPhone) {
            const server = cards.get(card.card.entryId)
            const { missing, notNeeded, onlyFor, notAgreed } = card
            // The server lists a hole in dispute by the newest score; on the phone it has none.
            expect({ missing, notNeeded, onlyFor, notAgreed }).toEqual({
              missing: server?.missing.filter((hole) => !notAgreed.includes(hole)),
              notNeeded: server?.notNeeded,
              onlyFor: server?.onlyFor,
              notAgreed: server?.notAgreed,
            })
            if (notNeeded.length > 0) early++
          }
          for (const { match } of pack.matches ?? []) {
            const players = [...match.a, ...match.b].flatMap((ball) => ball.players)
            if (players.some((id) => (cards.get(id)?.notAgreed.length ?? 0) > 0)) continue
            const board = results.get(match.id)!
            const up = board.winner === null ? 0 : board.winner === board.a ? 1 : -1
            expect(figures(matchNow(match, scoresIn(onPhone)))).toEqual(figures({ ...board, up }))
            matches++
          }
        }
      }),
      { numRuns: 40 },
    )
    expect(matches).toBeGreaterThan(25)
    expect(early).toBeGreaterThan(10)
  })

  it('what is written on a hole that is not needed changes no match', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), fc.integer({ min: 2, max: 9 }), (seed, score) => {
        const record = dayOfMatches(seed)
        fc.pre(hasMatches(record))
        for (const group of record.groups) {
          for (const { match } of groupPack(record, group).matches ?? []) {
            const cards = cardsAsTheyStand(record)
            const given = (id: string) => cards.get(id)?.scores
            const before = matchNow(match, given)
            if (!before.finished || match.abandoned) continue
            // On a side's blank card nothing is written: of one ball the first card with anything on it is the side's.
            const late = (id: string) =>
              given(id)?.map((one, at, card) =>
                before.notNeeded.includes(match.holes[at]!) && card.some((each) => each !== null) ? score : one,
              )
            expect(figures(matchNow(match, late))).toEqual(figures(before))
          }
        }
      }),
      { numRuns: 15 },
    )
  })
})

const fours = (holes: number) => Array.from({ length: holes }, () => 4)
const fives = (holes: number) => Array.from({ length: holes }, () => 5)
const pair = { format: 'match', pairings: [{ a: 'Storrey', b: 'Haldane' }] }

describe('a match that ends early', () => {
  const over = smallRecord({
    people: ['Storrey', 'Haldane'],
    competitions: [pair],
    scores: { Storrey: fours(10), Haldane: fives(10) },
  })

  it('needs no hole after it is over: only the signatures are wanted, at the desk and on the board', () => {
    const cards = cardsAsTheyStand(over)
    const card = cards.get('d-Storrey')!
    expect(card.missing).toEqual([])
    expect(card.notNeeded).toEqual([11, 12, 13, 14, 15, 16, 17, 18])
    expect(faultsOf(card).map((fault) => fault.place)).toEqual(['player', 'marker'])
    expect(wantsInWords(card)).toBe('The player has not signed. The marker has not signed.')
    expect(cardsInTheWay(over, cards)[0]?.sentence).not.toContain('no score')
    const progress = progressOf(over, cards, asId('d-Storrey'))
    expect(progress && progressInWords(progress)).toBe('finished, not signed')
    expect(groupsOnCourse(over, cards)).toMatchObject([{ started: true, through: 10, onHole: null }])
    expect(cardsOnTheirWay(over, cards)).toMatchObject({ cards: 2, toSign: 2, onCourse: 0 })
  })

  it('needs every hole where a medal is played beside it, and says for what', () => {
    const both = {
      ...over,
      competitions: [
        ...over.competitions,
        ...smallRecord({ people: [], competitions: [{ format: 'medal' }] }).competitions.map((one) => ({
          ...one,
          id: asId<typeof one.id>('d-medal'),
          name: 'June Medal',
          number: 2,
        })),
      ],
    }
    const card = cardsAsTheyStand(both).get('d-Haldane')!
    expect(card.missing).toEqual([11, 12, 13, 14, 15, 16, 17, 18])
    expect(card.notNeeded).toEqual([])
    expect(wantsInWords(card)).toBe(
      'Holes 11 to 18 have no score. The match is over; June Medal needs the other holes. The player has not signed. The marker has not signed.',
    )
    expect(faultsOf(card)[0]?.sentence).toBe(
      'Hole 11 has no score. The match is over; June Medal needs the other holes.',
    )
  })

  it('still needs a hole left out before the end, and a hole conceded at the desk never', () => {
    const gap = smallRecord({
      people: ['Storrey', 'Haldane'],
      competitions: [
        { ...pair, pairings: [{ a: 'Storrey', b: 'Haldane', ending: { concededHoles: [{ hole: 2, to: 'a' }] } }] },
      ],
      scores: { Storrey: [4, null, null, ...fours(8)], Haldane: [5, null, 5, ...fives(8)] },
    })
    const cards = cardsAsTheyStand(gap)
    expect(cards.get('d-Storrey')!.missing).toEqual([3])
    expect(cards.get('d-Haldane')!.missing).toEqual([])
  })

  it('asks nothing of a card whose match was given before anybody played', () => {
    const given = smallRecord({
      people: ['Storrey', 'Haldane'],
      competitions: [{ ...pair, pairings: [{ a: 'Storrey', b: 'Haldane', ending: { walkover: 'a' } }] }],
    })
    const cards = cardsAsTheyStand(given)
    expect(faultsOf(cards.get('d-Storrey')!)).toEqual([])
    expect(cardsInTheWay(given, cards).map((one) => one.sentence)).toEqual([
      'S Storrey: The card is ready: accept it.',
      'H Haldane: The card is ready: accept it.',
    ])
  })

  it('is played to the last hole by whoever has a second match that is still on', () => {
    const two = smallRecord({
      people: ['Storrey', 'Haldane', 'Verrow'],
      competitions: [{ ...pair, pairings: [...pair.pairings, { a: 'Storrey', b: 'Verrow' }] }],
      scores: { Storrey: fours(10), Haldane: fives(10), Verrow: fours(10) },
    })
    const cards = cardsAsTheyStand(two)
    expect(cards.get('d-Haldane')!.missing).toEqual([])
    expect(cards.get('d-Storrey')!.missing).toEqual([11, 12, 13, 14, 15, 16, 17, 18])
  })

  it('is on no hole of the card any more', () => {
    const progress = cardProgress({ state: 'out', order: [1, 2, 3, 4], missing: [2], notNeeded: [3, 4] })
    expect(progress).toEqual({ state: 'on-hole', hole: 2 })
  })
})
