// The phone's light checks and the schemas of lib/facts must say the same, on good values and on broken ones.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deviceFact, writtenScore } from '@/lib/facts/score-fact'
import { isCardPack, isDeliveryAnswer, isDeviceFact, isWrittenScore, saidNo } from '@/lib/outbox/check'
import { aldermossPack } from './aldermoss-four'

const junk = fc.oneof(
  fc.constantFrom(null, undefined, '', 'x', 'X', 0, 1, 18, 19, 30, 31, -1, 4.5, Number.NaN, true, [], {}),
  fc.string({ maxLength: 45 }),
  fc.array(fc.constantFrom(null, 'x', 4, 31, 'y'), { minLength: 8, maxLength: 19 }),
)

const good = fc.oneof(
  fc.record({
    kind: fc.constant('score'),
    seq: fc.integer({ min: 1, max: 999 }),
    cardId: fc.string({ minLength: 1, maxLength: 40 }),
    writer: fc.string({ minLength: 1, maxLength: 40 }),
    writtenAt: fc
      .date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
      .map((at) => at.toISOString()),
    hole: fc.integer({ min: 1, max: 18 }),
    score: fc.oneof(fc.integer({ min: 1, max: 30 }), fc.constantFrom('x', null)),
  }),
  fc.record({
    kind: fc.constant('score'),
    seq: fc.integer({ min: 1, max: 999 }),
    cardId: fc.constant('card'),
    writer: fc.constant('una'),
    writtenAt: fc.constant('2026-04-25T12:53:00.000Z'),
    hole: fc.integer({ min: 1, max: 18 }),
    score: fc.constant(5),
    replaces: fc.array(
      fc.record({ phone: fc.string({ minLength: 1, maxLength: 40 }), seq: fc.integer({ min: 1, max: 999 }) }),
      { maxLength: 8 },
    ),
  }),
  fc.record({
    kind: fc.constant('signature'),
    seq: fc.integer({ min: 1, max: 999 }),
    cardId: fc.string({ minLength: 1, maxLength: 40 }),
    writer: fc.string({ minLength: 1, maxLength: 40 }),
    writtenAt: fc.constant('2026-04-25T12:53:00.000Z'),
    role: fc.constantFrom('player', 'marker'),
    scores: fc.array(fc.oneof(fc.integer({ min: 1, max: 30 }), fc.constantFrom('x', null)), {
      minLength: 9,
      maxLength: 18,
    }),
  }),
  fc.record({
    kind: fc.constant('concession'),
    seq: fc.integer({ min: 1, max: 999 }),
    cardId: fc.constant('card'),
    writer: fc.constant('una'),
    writtenAt: fc.constant('2026-04-25T12:53:00.000Z'),
    matchId: fc.string({ minLength: 1, maxLength: 40 }),
    hole: fc.oneof(fc.integer({ min: 1, max: 18 }), fc.constant(null)),
    by: fc.constantFrom('a', 'b', null),
  }),
)

describe('a fact before it is kept', () => {
  it('takes every good one, like the schema', () => {
    fc.assert(
      fc.property(good, (fact) => {
        expect(deviceFact.safeParse(fact).success).toBe(true)
        expect(isDeviceFact(fact)).toBe(true)
      }),
      { numRuns: 500 },
    )
  })

  it('agrees with the schema when one part of it is broken, missing or too much', () => {
    const broken = fc.tuple(
      good,
      fc.constantFrom(
        'kind',
        'seq',
        'cardId',
        'writer',
        'writtenAt',
        'hole',
        'score',
        'role',
        'scores',
        'replaces',
        'matchId',
        'by',
        'more',
      ),
      junk,
      fc.boolean(),
    )
    fc.assert(
      fc.property(broken, ([fact, part, value, drop]) => {
        const changed: Record<string, unknown> = { ...fact, [part]: value }
        if (drop) delete changed[part]
        expect(isDeviceFact(changed)).toBe(deviceFact.safeParse(changed).success)
      }),
      { numRuns: 4000 },
    )
  })

  it('agrees on what is no fact at all', () => {
    fc.assert(
      fc.property(junk, (value) => {
        expect(isDeviceFact(value)).toBe(deviceFact.safeParse(value).success)
        expect(isWrittenScore(value)).toBe(writtenScore.safeParse(value).success)
      }),
    )
  })
})

describe('an answer of the server', () => {
  const answer = { lastSeq: 2, scoreVersion: 5, answers: [{ seq: 2, answer: 'received' }] }
  it('is one only in our own form', () => {
    expect(isDeliveryAnswer(answer)).toBe(true)
    expect(isDeliveryAnswer({ ...answer, lastSeq: '2' })).toBe(false)
    expect(isDeliveryAnswer({ ...answer, answers: [{ seq: 2, answer: 'lost' }] })).toBe(false)
    expect(isDeliveryAnswer({ ...answer, answers: [{ seq: 2, answer: 'refused' }] })).toBe(false)
    expect(isDeliveryAnswer('<html>Sign in to the clubhouse network</html>')).toBe(false)
  })

  it('is a refusal only with a code and a sentence', () => {
    expect(saidNo({ ok: false, code: 'link-ended', sentence: 'The day is over.', faults: [] })).toMatchObject({
      code: 'link-ended',
    })
    expect(saidNo({ code: 'gap', sentence: '', expected: 4 })?.expected).toBe(4)
    expect(saidNo({ message: 'Not Found' })).toBeNull()
    expect(saidNo(null)).toBeNull()
  })

  it('holds a pack that can be shown, or is none', () => {
    expect(isCardPack(aldermossPack())).toBe(true)
    expect(isCardPack({ ...aldermossPack(), packVersion: 2 })).toBe(false)
    expect(isCardPack({ ...aldermossPack(), cards: [] })).toBe(false)
    expect(isCardPack({ ...aldermossPack(), reading: 'runs' })).toBe(false)
  })
})
