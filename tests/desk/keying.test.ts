import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  againstPaper,
  atTotal,
  beginKeying,
  caughtUp,
  clashes,
  differs,
  handOn,
  type Keying,
  keyedAhead,
  lineOf,
  openInWords,
  pressed,
  readKeyed,
  readLine,
  runOf,
  settled,
  shownKeyed,
  typed,
  withPaper,
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
        // Behind the 18th stands the box for the total.
        expect(now.at).toBeLessThanOrEqual(18)
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
  it('says which hole is open, by its number on the card', () => {
    expect(openInWords(runOf([4, null, 5]))).toContain('Hole 2 has no score')
    expect(openInWords(runOf([null, null, 5]))).toContain('the first is hole 1')
    expect(openInWords(runOf([4, null, 5], 0, 3, 10))).toContain('Hole 11 has no score')
    expect(againstPaper(runOf([4, null, 5], 0, 3, 10), 13, 'Total')).toBe('Total: hole 11 must be 4.')
    expect(openInWords(runOf([4, 'x']))).toBeNull()
  })
})

describe('the total on the paper', () => {
  it('says what the open holes must come to', () => {
    const scores = [5, 4, 5, 3, 5, 4, null, null, null]
    expect(againstPaper(runOf(scores), 40, 'Out')).toBe('Out: holes 7, 8, 9 must come to 14.')
  })

  it('agrees, or says how far out it is', () => {
    expect(againstPaper(runOf([4, 4]), 8, 'Out')).toBe('Out agrees, 8.')
    expect(againstPaper(runOf([4, 4]), 9, 'Out')).toContain('The paper says 9, the holes come to 8.')
    expect([differs(runOf([4, 4]), '9'), differs(runOf([4, 4]), '8'), differs(runOf([4, 4]), '')]).toEqual([
      true,
      false,
      false,
    ])
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
    const ahead = keyedAhead(beginKeying(none), [...'455445544554455445', ...'81', 's', 'Enter'])
    expect(ahead.now.scores).toEqual([...'455445544554455445'].map(Number))
    expect(ahead.now.paper.total).toBe('81')
    expect(ahead.signed).toBe(true)
  })

  it('go on in a card that is half keyed, and stop where they stop', () => {
    const ahead = keyedAhead(beginKeying([4, 5, ...none.slice(2)]), ['x', 't', '+'])
    expect(ahead.now.scores.slice(0, 5)).toEqual([4, 5, 'x', 11, null])
    expect([ahead.now.paper.total, ahead.signed]).toEqual(['', false])
  })

  it('write what the same keys write one by one, in however many turns', () => {
    const key = fc.constantFrom(...'0123456789xt+', 'Backspace', 'ArrowLeft', 'ArrowRight', 'Delete')
    fc.assert(
      fc.property(fc.array(key, { maxLength: 60 }), fc.nat(60), (keys, cut) => {
        const first = keyedAhead(beginKeying(none), keys.slice(0, cut))
        expect(keyedAhead(first.now, keys.slice(cut)).now).toEqual(keyed(keys))
      }),
    )
  })
})

describe('behind the last hole', () => {
  const FIGURES = [...'0123456789xXnNtT*']
  const MOVES = ['ArrowLeft', 'ArrowRight', 'End', 'Backspace', 'Delete', 'Tab']
  const holes = fc.constantFrom(9, 18)
  const before = fc.array(fc.constantFrom(...FIGURES, '+', ...MOVES, 'Home'), { maxLength: 60 })
  const after = fc.array(fc.constantFrom(...FIGURES), { maxLength: 30 })

  /** Any keys, then the hand on the last hole and a figure in it: from here on the paper's total is typed. */
  function passed(size: number, keys: readonly string[]): Keying {
    const none = Array.from({ length: size }, () => null)
    const { now } = keyedAhead(beginKeying(none), keys)
    return keyedAhead({ ...now, at: size - 1 }, ['6']).now
  }

  it('the total is the only thing a figure reaches, whatever was keyed before and whatever is missing', () => {
    fc.assert(
      fc.property(holes, before, after, (size, keys, more) => {
        const now = passed(size, keys)
        expect(atTotal(now)).toBe(true)
        const then = keyedAhead(now, more).now
        expect(then.scores).toEqual(now.scores)
        expect(atTotal(then)).toBe(true)
      }),
    )
  })

  it('each move of the hand lets one hole be corrected, never the one after it too', () => {
    const key = fc.constantFrom(...FIGURES, ...MOVES)
    fc.assert(
      fc.property(holes, before, fc.array(key, { maxLength: 40 }), (size, keys, more) => {
        const now = passed(size, keys)
        const full = { ...now, scores: now.scores.map((score) => score ?? 5) }
        const then = keyedAhead(full, more).now
        const changed = then.scores.filter((score, place) => score !== full.scores[place]).length
        expect(changed).toBeLessThanOrEqual(more.filter((one) => MOVES.includes(one)).length)
      }),
    )
  })

  it('a card with a skipped hole: the total of 94 stays 94, and the 18th stays 6', () => {
    const card = keyedAhead(empty(), [...'5544', 'Tab', ...'5545544554456', ...'94'])
    expect(card.now.scores[4]).toBeNull()
    expect(card.now.scores[17]).toBe(6)
    expect(card.now.paper.total).toBe('94')
    expect(openInWords(runOf(card.now.scores))).toContain('Hole 5 has no score')
    const put = { ...card.now, at: 4 }
    const filled = keyedAhead(put, [...'794'])
    expect([filled.now.scores[4], filled.now.scores[5]]).toEqual([7, 5])
  })

  it('one more belongs to the last hole as long as no total is begun', () => {
    const card = keyed([...'455445544554455449', '+', '+'])
    expect(card.scores[17]).toBe(11)
    expect(keyed(['8', '+'], card).scores[17]).toBe(11)
    expect(keyed(['8', 'Backspace', '+'], card).scores[17]).toBe(11)
  })

  it('going back needs a key of its own before anything is a hole’s again', () => {
    const card = keyed([...'455445544554455445'])
    const back = keyed(['Backspace'], card)
    expect([back.at, back.scores[17]]).toEqual([17, 5])
    expect(keyed(['Backspace'], back).scores[17]).toBeNull()
    expect(keyed(['Home', '3', '4'], card).scores.slice(0, 3)).toEqual([3, 4, 5])
  })

  it('a card that is full is corrected hole by hole, and entered anew from the first', () => {
    const full = beginKeying(Array.from({ length: 18 }, () => 5))
    expect(keyed(['3', '4'], full).scores.slice(0, 3)).toEqual([3, 4, 5])
    const one = keyed([...'494'], handOn(full, 6))
    expect(one.scores.slice(5, 9)).toEqual([5, 4, 5, 5])
    expect(one.paper.total).toBe('94')
  })

  it('a figure no hole can have is refused whole, never split', () => {
    expect(typed(empty(), 3, '94')).toBeNull()
    expect(typed(empty(), 3, '12')?.scores.slice(3, 5)).toEqual([12, null])
    expect(withPaper(empty(), 'out', ' 4x7 ').paper.out).toBe('47')
  })
})

describe('a book that moves on under the hand', () => {
  const score = fc.constantFrom(null, 'x' as const, 3, 4, 5)
  const card = fc.array(score, { minLength: 18, maxLength: 18 })

  it('fills what was not keyed here, and leaves what was', () => {
    fc.assert(
      fc.property(card, card, card, (here, before, book) => {
        const now = caughtUp({ ...beginKeying(here), base: before, at: 3 }, book)
        for (const [place, score] of now.scores.entries())
          expect(score).toBe(here[place] === before[place] ? book[place] : here[place])
        expect(now.at).toBe(3)
      }),
    )
  })

  it('names the holes where somebody else wrote something else, and no other', () => {
    fc.assert(
      fc.property(card, card, card, (here, before, book) => {
        const now = caughtUp({ ...beginKeying(here), base: before }, book)
        const places = here.flatMap((score, place) =>
          score !== before[place] && book[place] !== before[place] && score !== book[place] ? [place] : [],
        )
        expect(clashes(now, book)).toEqual(places)
      }),
    )
  })

  it('is settled with either, and then clashes no more', () => {
    fc.assert(
      fc.property(
        card,
        card,
        card,
        fc.constantFrom('mine' as const, 'theirs' as const),
        (here, before, book, whose) => {
          const now = caughtUp({ ...beginKeying(here), base: before }, book)
          const after = settled(now, book, whose)
          expect(clashes(after, book)).toEqual([])
          if (whose === 'mine') expect(after.scores).toEqual(now.scores)
          else for (const place of clashes(now, book)) expect(after.scores[place]).toBe(book[place])
        },
      ),
    )
  })

  it('carries the card it was opened on through the form', () => {
    fc.assert(
      fc.property(card, (scores) => {
        expect(readLine(lineOf(scores), 18)).toEqual(scores)
      }),
    )
    expect(readLine('5 4 forty', 3)).toBeNull()
    expect(readLine('5 4', 3)).toBeNull()
  })
})
