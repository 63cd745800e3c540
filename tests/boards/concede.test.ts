// Promise: what is conceded on a phone counts there as it counts in the book. Rules of Golf 2023, 3.2b(1): the opponent may
// be conceded the next stroke, a hole or the match, before it is completed; a hole that was conceded needs no score.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cardsAsTheyStand, dayOfRecord } from '@/lib/boards/day-of-record'
import { groupPack } from '@/lib/boards/group-pack'
import type { DayRecord } from '@/lib/facts/day-record'
import { endingAfter } from '@/lib/facts/match-ending'
import { cardsNow, scoresIn } from '@/lib/outbox/card-now'
import { type Concession, isEndedOtherwise, withConcession } from '@/lib/rules/matches/concede'
import { matchNow } from '@/lib/rules/matches/match-now'
import { scoreDay } from '@/lib/rules/score-day'
import { smallRecord } from './small-record'

const upTo = (holes: number, score: number) => Array.from({ length: holes }, () => score)
const PEOPLE = ['Storrey', 'Haldane']

const dayAfter = (played: readonly [number, number], scores: readonly [number, number] = [4, 5]) =>
  smallRecord({
    people: PEOPLE,
    competitions: [{ format: 'match', pairings: [{ a: 'Storrey', b: 'Haldane' }] }],
    scores: { Storrey: upTo(played[0], scores[0]), Haldane: upTo(played[1], scores[1]) },
  })

/** The same words written into the book. */
const inBook = (record: DayRecord, said: readonly Concession[]): DayRecord => ({
  ...record,
  competitions: record.competitions.map((one) => ({
    ...one,
    pairings: one.pairings.map((pairing) => ({ ...pairing, ending: said.reduce(endingAfter, pairing.ending) })),
  })),
})

const onPhone = (record: DayRecord, said: readonly Concession[]) => {
  const pack = groupPack(record, record.groups[0]!)
  const matches = (pack.matches ?? []).map((one) => ({ ...one, match: said.reduce(withConcession, one.match) }))
  const cards = cardsNow(pack, [], 'phone', matches)
  return { match: matches[0]!.match, cards, now: matchNow(matches[0]!.match, scoresIn(cards)) }
}

const concession = fc.record({
  hole: fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: 18 }) }, fc.constant(null)),
  by: fc.constantFrom('a', 'b', null),
})

describe('a concession', () => {
  it('counts on the phone as in the book, whatever was said before it and taken back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 18 }),
        fc.array(concession, { maxLength: 12 }),
        fc.integer({ min: 3, max: 5 }),
        (played, said, score) => {
          const record = dayAfter([played, played], [4, score])
          const phone = onPhone(record, said)
          const book = inBook(record, said)
          const [board] = scoreDay(dayOfRecord(book))[0]!.matches ?? []
          expect({ finished: phone.now.finished, result: phone.now.result }).toEqual({
            finished: board!.finished,
            result: board!.result,
          })
          const server = cardsAsTheyStand(book)
          for (const card of phone.cards) expect(card.missing).toEqual(server.get(card.card.entryId)?.missing)
          // The pack made of the book afterwards says the same as the phone's own words laid over the older pack.
          const after = groupPack(book, book.groups[0]!).matches![0]!.match
          expect(matchNow(after, scoresIn(phone.cards))).toEqual(phone.now)
        },
      ),
      { numRuns: 200 },
    )
  })

  it('of a hole wins it for the other side, and both cards need no score there', () => {
    const { now, cards } = onPhone(dayAfter([3, 3], [4, 4]), [{ hole: 4, by: 'a' }])
    expect(now).toMatchObject({ up: -1, played: 4, finished: false })
    for (const card of cards) {
      expect(card.notNeeded).toEqual([4])
      expect(card.missing).not.toContain(4)
    }
  })

  it('of the match ends it, and both cards are complete as they are', () => {
    const { now, cards } = onPhone(dayAfter([7, 7]), [{ hole: null, by: 'b' }])
    expect(now).toMatchObject({ up: 1, finished: true, result: 'conceded' })
    for (const card of cards) expect(card.missing).toEqual([])
  })

  it('that was taken back leaves the match as it was', () => {
    const record = dayAfter([7, 7])
    const back: Concession[] = [
      { hole: 8, by: 'a' },
      { hole: null, by: 'b' },
      { hole: null, by: null },
      { hole: 8, by: null },
    ]
    expect(onPhone(record, back).now).toEqual(onPhone(record, []).now)
    expect(inBook(record, back)).toEqual(record)
  })

  it('said twice is said once', () => {
    const once: Concession = { hole: 9, by: 'b' }
    expect(endingAfter(endingAfter({}, once), once)).toEqual({ concededHoles: [{ hole: 9, to: 'a' }] })
  })

  it('is not asked for in a match the desk has ended', () => {
    const record = dayAfter([3, 3])
    const walkover = {
      ...record,
      competitions: record.competitions.map((one) => ({
        ...one,
        pairings: one.pairings.map((pairing) => ({ ...pairing, ending: { walkover: 'a' as const } })),
      })),
    }
    expect(isEndedOtherwise(onPhone(walkover, []).match)).toBe(true)
    expect(isEndedOtherwise(onPhone(record, []).match)).toBe(false)
    expect(isEndedOtherwise(onPhone(record, [{ hole: null, by: 'a' }]).match)).toBe(false)
  })
})
