// Promise: the card as it stands depends on the order of arrival and nothing else; a writer's last word replaces only
// that writer's; a ruling settles a hole whatever comes after it.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currentCard, faultsOf, rulingsInForce, wantsInWords } from '@/lib/boards/current-card'
import type { FactRecord, RulingRecord } from '@/lib/facts/day-record'
import { asId } from '../setup/ids'

const fact = (id: number, writer: string, hole: number, score: FactRecord['score'], late = false): FactRecord => ({
  id,
  cardId: asId('c'),
  hole,
  score,
  writer: asId(writer),
  deviceId: asId('d'),
  seq: id,
  replaces: null,
  writtenAt: new Date(0),
  receivedAt: new Date(0),
  late,
})
const ruling = (number: number, kind: RulingRecord['kind'], over: Partial<RulingRecord> = {}): RulingRecord => ({
  id: asId(String(number)),
  number,
  cardId: asId('c'),
  kind,
  hole: null,
  value: null,
  clause: '',
  reason: 'because',
  byName: 'P',
  ruledAt: new Date(0),
  replaces: null,
  ...over,
})
const card = (facts: readonly FactRecord[], rulings: readonly RulingRecord[] = []) =>
  currentCard({ card: { id: asId('c') }, holes: 18, firstHole: 1, facts, rulings, signatures: [] })

describe('the card as it stands', () => {
  it('keeps a dispute open until the writers agree, whoever wrote last', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('a', 'b', 'desk'), fc.constantFrom<FactRecord['score']>(4, 5, 'x', null)), {
          maxLength: 14,
        }),
        (written) => {
          const facts = written.map(([writer, score], at) => fact(at + 1, writer, 7, score))
          const words = new Map(written)
          const standing = [...words.values()].filter((score) => score !== null)
          const line = card(facts).holes[6]!
          expect(line.notAgreed).toBe(new Set(standing).size > 1)
          if (standing.length === 0) expect(line.score).toBeNull()
          else expect(standing).toContain(line.score)
          const last = written.at(-1)
          if (last && last[1] !== null) expect(line.score).toBe(last[1])
        },
      ),
    )
  })

  it('does not count a late fact', () => {
    const now = card([fact(1, 'a', 1, 4), fact(2, 'b', 1, 9, true)])
    expect([now.scores[0], now.notAgreed, now.lateFacts.length]).toEqual([4, [], 1])
  })

  it('follows a ruling, until a later one takes it back', () => {
    const facts = [fact(1, 'a', 11, 5), fact(2, 'b', 11, 6)]
    const five = ruling(1, 'hole-score', { hole: 11, value: 5 })
    const settled = card([...facts, fact(3, 'b', 11, 8)], [five])
    expect([settled.scores[10], settled.notAgreed]).toEqual([5, []])
    expect(card(facts, [ruling(1, 'hole-score', { hole: 11 })]).scores[10]).toBe('x')
    expect(card(facts, [five, ruling(2, 'withdrawn-ruling', { replaces: 1 })]).notAgreed).toEqual([11])
    expect(rulingsInForce([five, ruling(2, 'hole-score', { hole: 11, value: 6, replaces: 1 })])).toHaveLength(1)
  })

  it('adds penalties up and knows the last word on the outcome', () => {
    const now = card(
      [],
      [
        ruling(1, 'penalty-strokes', { hole: 3, value: 2 }),
        ruling(2, 'penalty-strokes', { hole: 3, value: 1 }),
        ruling(3, 'penalty-points', { value: 2 }),
        ruling(4, 'no-return'),
        ruling(5, 'disqualified', { replaces: 4 }),
        ruling(6, 'playing-handicap', { value: -2 }),
      ],
    )
    expect([now.penaltyStrokes, now.penaltyPoints, now.outcome, now.playingHandicap]).toEqual([
      { 3: 3 },
      2,
      'disqualified',
      -2,
    ])
    expect(faultsOf(now)).toEqual([])
  })

  it('says what it wants in a few words', () => {
    const all = Array.from({ length: 18 }, (_, at) => fact(at + 1, 'a', at + 1, 4))
    const some = all.filter(({ hole }) => hole !== 3 && hole < 16)
    expect(wantsInWords(card([]))).toBe('No hole has a score yet.')
    expect(wantsInWords(card(some))).toBe(
      'Holes 3 and 16 to 18 have no score. The player has not signed. The marker has not signed.',
    )
    expect(wantsInWords(card(all.slice(1), [ruling(1, 'card-stands')]))).toBe('Hole 1 has no score.')
    expect(wantsInWords(card(all, [ruling(1, 'card-stands')]))).toBe('')
    expect(wantsInWords(card([], [ruling(1, 'no-return')]))).toBe('')
  })
})
