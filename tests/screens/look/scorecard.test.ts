// Promise: a card's foot adds up, and an unfinished hole leaves the gross open instead of making it smaller.
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { grossFigure, inWords, sumsOf, valueFigure } from '@/app/_parts/card-sums'
import { Dots } from '@/app/_parts/dots'
import { card } from '@/app/house-style/specimen'

describe('a card', () => {
  it('adds up out, in and all', () => {
    expect(sumsOf(card.slice(0, 9))).toEqual({ par: 36, strokes: 10, gross: 44, value: 20 })
    expect(sumsOf(card.slice(9))).toEqual({ par: 36, strokes: 9, gross: 45, value: 18 })
    expect(sumsOf(card)).toEqual({ par: 72, strokes: 19, gross: 89, value: 38 })
  })

  it('shows points that follow from its own strokes', () => {
    for (const line of card) expect(line.value).toBe(Math.max(0, 2 + line.par - (line.net ?? Number.NaN)))
  })

  it.each(['x', null] as const)('has no gross with %s on a hole, but keeps its points', (gross) => {
    const lines = card.map((line) =>
      line.hole === 7 ? { ...line, gross, net: null, value: gross === 'x' ? 0 : null } : line,
    )
    expect(sumsOf(lines)).toMatchObject({ gross: null, value: 36 })
  })

  it('has nothing to show before the first hole', () => {
    expect(sumsOf(card.map((line) => ({ ...line, gross: null, value: null })))).toMatchObject({
      gross: null,
      value: null,
    })
  })

  it('writes holes against par with their sign and says one as one', () => {
    expect([1, 0, -1, null].map((value) => valueFigure(value, 'holes'))).toEqual(['+', '0', '−', ''])
    expect(grossFigure('x')).toBe('–')
    expect(inWords(1, 'points')).toBe('1 point')
    expect(inWords(-1, 'holes')).toBe('-1 hole')
    expect(inWords(0, 'points')).toBe('0 points')
  })
})

describe('dots', () => {
  const drawn = (strokes: number) => renderToStaticMarkup(createElement(Dots, { strokes }))

  it('are one for each stroke, filled when received, open when given back', () => {
    expect(drawn(2)).toBe('<span class="dots" role="img" aria-label="2 strokes received"><i></i><i></i></span>')
    expect(drawn(-1)).toBe('<span class="dots back" role="img" aria-label="1 stroke given back"><i></i></span>')
    expect(drawn(0)).toContain('no stroke')
  })
})
