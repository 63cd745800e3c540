// Promise: every pair of inks that meets on a page is as far apart as the house asks, in both lights, and the figures
// on the house-style page are those of the style sheet.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { contrast, INKS, PAIRS } from '@/app/house-style/inks'

const sheet = readFileSync('app/styles/tokens.css', 'utf8')

function inksOf(selector: string): Record<string, string> {
  const from = sheet.indexOf(selector)
  if (from < 0) throw new Error(`No ${selector} in tokens.css`)
  const block = sheet.slice(from, sheet.indexOf('}', from))
  return Object.fromEntries(
    [...block.matchAll(/--([a-z0-9-]+):\s*(#[0-9a-f]{6})/g)].map((found) => [found[1], found[2]]),
  )
}

describe('inks', () => {
  it.each([
    ['light', "[data-theme='light']"],
    ['dark', "[data-theme='dark']"],
    ['dark', ':root:not([data-theme])'],
  ] as const)('%s: the sheet under %s is what the page shows', (light, selector) => {
    expect(inksOf(selector)).toEqual(INKS[light])
  })

  it.each(PAIRS.flatMap(({ on, least }) => (['light', 'dark'] as const).map((light) => ({ on, least, light }))))(
    '$light: $on.0 on $on.1 is at least $least',
    ({ on: [front, back], least, light }) => {
      expect(contrast(INKS[light][front], INKS[light][back])).toBeGreaterThanOrEqual(least)
    },
  )

  it('measures as WCAG 2.2 does', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10)
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
    expect(contrast('#6a3164', '#6a3164')).toBe(1)
  })
})
