import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  againstPaper,
  beginKeying,
  caughtUp,
  type Keying,
  keyedAhead,
  pressed,
  readKeyed,
  runOf,
  shownKeyed,
  wantsBeforeEnter,
} from '@/app/desk/[society]/days/[day]/returns/keying'

const empty = () => beginKeying(Array.from({ length: 18 }, () => null))
const keyed = (keys: readonly string[], from: Keying = empty()) =>
  keys.reduce<Keying>((now, key) => pressed(now, key) ?? now, from)

describe('keying a card', () => {
  it('writes a figure and moves on', () => {
    const now = keyed(['5', '4'])
    expect(now.scores.slice(0, 3)).toEqual([5, 4, null])
    expect(now.at).toBe(2)
  })

  it('writes ten with T or *, and one more with + on the hole just written', () => {
    expect(keyed(['*']).scores[0]).toBe(10)
    expect(keyed(['9', '+']).scores[0]).toBe(10)
    const now = keyed(['t', '+', '+', '3'])
    expect(now.scores.slice(0, 2)).toEqual([12, 3])
  })

  it('takes + for the hole under the hand when nothing was just written', () => {
    const begun = { ...empty(), scores: empty().scores.with(4, 7), at: 4 }
    expect(pressed(begun, '+')?.scores[4]).toBe(8)
  })

  it('writes no score with 0, X or N and takes it back with Backspace', () => {
    for (const key of ['0', 'x', 'X', 'n']) expect(keyed([key]).scores[0]).toBe('x')
    const now = keyed(['0'])
    const back = pressed(now, 'Backspace')
    expect(back?.scores[0]).toBeNull()
    expect(back?.at).toBe(0)
  })

  it('leaves keys alone that mean nothing here', () => {
    for (const key of ['Tab', 'q', 'F5', 'Escape']) expect(pressed(empty(), key)).toBeNull()
  })

  it('begins at the first open hole', () => {
    expect(beginKeying([4, 5, null, 3]).at).toBe(2)
    expect(beginKeying([4, 5]).at).toBe(0)
  })

  it('never leaves the card and never writes a score nobody could have', () => {
    const key = fc.constantFrom(
      '1',
      '5',
      '9',
      '0',
      '+',
      'n',
      'ArrowLeft',
      'ArrowRight',
      'Backspace',
      'Delete',
      'Home',
      'End',
    )
    fc.assert(
      fc.property(fc.array(key, { maxLength: 80 }), (keys) => {
        const now = keyed(keys)
        expect(now.at).toBeGreaterThanOrEqual(0)
        expect(now.at).toBeLessThan(18)
        expect(now.scores).toHaveLength(18)
        for (const score of now.scores) {
          if (typeof score === 'number') expect(score >= 1 && score <= 30).toBe(true)
        }
      }),
    )
  })

  it('reads back what it shows', () => {
    for (const score of [1, 9, 10, 30, 'x', null] as const) expect(readKeyed(shownKeyed(score))).toBe(score)
    expect(readKeyed('0')).toBe('x')
    for (const text of ['31', 'five', '1.5', '-3']) expect(readKeyed(text)).toBe('unreadable')
  })
})

describe('Enter', () => {
  it('says which hole is open, and asks once about a total that differs', () => {
    expect(wantsBeforeEnter(runOf([4, null, 5]), null)).toContain('Hole 2 has no figure')
    expect(wantsBeforeEnter(runOf([null, null, 5]), 9)).toContain('the first is hole 1')
    expect(wantsBeforeEnter(runOf([4, null, 5], 0, 3, 10), null)).toContain('Hole 11 has no figure')
    expect(againstPaper(runOf([4, null, 5], 0, 3, 10), 13, 'Total')).toBe('Total: hole 11 must be 4.')
    expect(wantsBeforeEnter(runOf([4, 5]), 10)).toContain('The paper says 10, and 9 is keyed')
    expect(wantsBeforeEnter(runOf([4, 5]), 9)).toBeNull()
    expect(wantsBeforeEnter(runOf([4, 'x']), null)).toBeNull()
  })
})

describe('the total on the paper', () => {
  it('says what the open holes must come to', () => {
    const scores = [5, 4, 5, 3, 5, 4, null, null, null]
    expect(againstPaper(runOf(scores), 40, 'Out')).toBe('Out: holes 7, 8, 9 must come to 14.')
  })

  it('agrees, or says how far out it is', () => {
    expect(againstPaper(runOf([4, 4]), 8, 'Out')).toBe('Out agrees, 8.')
    expect(againstPaper(runOf([4, 4]), 9, 'Out')).toBe('Out is 8 keyed and 9 on the paper: 1 too few.')
  })

  it('finds a total that the open holes cannot reach', () => {
    expect(againstPaper(runOf([9, 9, null]), 18, 'Out')).toContain('Look again')
  })

  it('keeps quiet while the paper total is not given', () => {
    expect(againstPaper(runOf([4, null]), null, 'Out')).toBeNull()
  })
})

describe('keys pressed before the card was there', () => {
  const none = Array.from({ length: 18 }, () => null)

  it('are holes first, then the total of the paper and the signatures', () => {
    const ahead = keyedAhead(beginKeying(none), '', [...'455445544554455445', ...'81', 's', 'Enter'])
    expect(ahead.now.scores).toEqual([...'455445544554455445'].map(Number))
    expect(ahead.paper).toBe('81')
    expect(ahead.signed).toBe(true)
  })

  it('go on in a card that is half keyed, and stop where they stop', () => {
    const ahead = keyedAhead(beginKeying([4, 5, ...none.slice(2)]), '', ['x', 't', '+'])
    expect(ahead.now.scores.slice(0, 5)).toEqual([4, 5, 'x', 11, null])
    expect(ahead).toMatchObject({ paper: '', signed: false })
  })

  it('write what the same keys write one by one, in however many turns', () => {
    const key = fc.constantFrom(...'0123456789xt+', 'Backspace', 'ArrowLeft', 'ArrowRight', 'Delete')
    fc.assert(
      fc.property(fc.array(key, { maxLength: 17 }), fc.nat(17), (keys, cut) => {
        const first = keyedAhead(beginKeying(none), '', keys.slice(0, cut))
        expect(keyedAhead(first.now, first.paper, keys.slice(cut)).now).toEqual(keyed(keys))
      }),
    )
  })
})

describe('a book that moves on under the hand', () => {
  const score = fc.constantFrom(null, 'x' as const, 3, 4, 5)
  const card = fc.array(score, { minLength: 18, maxLength: 18 })

  it('fills what was not keyed here, and leaves what was', () => {
    fc.assert(
      fc.property(card, card, card, (here, before, book) => {
        const now = caughtUp({ scores: here, at: 3, last: null }, before, book)
        for (const [place, score] of now.scores.entries())
          expect(score).toBe(here[place] === before[place] ? book[place] : here[place])
        expect(now.at).toBe(3)
      }),
    )
  })
})
