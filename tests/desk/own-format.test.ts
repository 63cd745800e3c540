// Promise: the list of formats offers exactly what the book can run; the five choices of an own format go to the form
// and back unchanged, and a known format under another name keeps its published figure.
import { describe, expect, it } from 'vitest'
import { draftOf, playOf, withFormat, withOwn } from '@/app/desk/[society]/_day-form/drafts'
import { SHELVES } from '@/app/desk/[society]/_day-form/format-select'
import { choicesOf, OWN_FORMAT, ownFrom } from '@/app/desk/[society]/_day-form/own-format'
import { readDayForm } from '@/app/desk/[society]/_day-form/read-day-form'
import { callDay } from '@/lib/facts/commands'
import { whyNotYet } from '@/lib/facts/formats-offered'
import { FORMATS, formatOf } from '@/lib/rules/formats/catalogue'

const EDITION = '2024'

/** A filled form whose first competition has these fields. */
function typed(fields: Record<string, string>) {
  const data = new FormData()
  const day = {
    seasonId: 's1',
    name: 'Spring Cup',
    date: '2026-04-25',
    courseId: 'c1',
    firstTee: '10:00',
    intervalMinutes: '10',
    expected: '36',
    teeMen: 't1',
  }
  for (const [name, value] of Object.entries(day)) data.set(name, value)
  const all = { name: 'Cup', 'terms.allowance': '85', ties: 'countback', ...fields }
  for (const [name, value] of Object.entries(all)) data.set(`competitions[0].${name}`, value)
  return data
}

const read = (fields: Record<string, string>) => callDay.parse(readDayForm(typed(fields))).competitions[0]!

const ownFields = (chosen: Record<string, string>, before: unknown = null) => ({
  ...Object.fromEntries(Object.entries(chosen).map(([choice, id]) => [`terms.custom.${choice}`, id])),
  'terms.custom.before': JSON.stringify(before),
})

describe('the list of formats', () => {
  it('has every format the book can run, once, and no other', () => {
    const listed = SHELVES.flatMap(({ formats }) => formats.map((one) => one.id))
    const runs = FORMATS.filter((one) => whyNotYet(one) === null).map((one) => one.id)
    expect([...listed].sort()).toEqual([...runs].sort())
    expect(listed).toContain('stableford')
    expect(listed).toContain('skins')
    expect(listed).toContain('four-ball-match')
  })
})

describe('a format of the society’s own', () => {
  it.each(FORMATS.map((one) => [one.id, one] as const))('%s goes to the form and back', (_, format) => {
    const { side, ball, strokes, value, count } = format
    expect(choicesOf(ownFrom(format, 'Ours'))).toEqual({ side, ball, strokes, value, count })
  })

  it('is sent by its name and keeps the published figure of the format it is', () => {
    const own = ownFrom(formatOf('four-ball-stableford')!, 'Ours')
    const one = read({ format: 'Ours', ...ownFields(own.chosen) })
    expect(one.format).toBe('Ours')
    expect(one.terms).toMatchObject({ allowance: 85, allowanceFrom: 'published' })
    expect(one.terms.custom).toMatchObject({ side: { from: 2, to: 2 }, count: { kind: 'best', take: [1] } })
  })

  it('is a house choice with its reason when nothing is published for it', () => {
    const chosen = { side: '3', ball: 'own', strokes: 'each-player', value: 'medal', count: 'waltz' }
    const { terms } = read({ format: 'Medal waltz', ...ownFields(chosen) })
    expect(terms.allowanceFrom).toBe('house-choice')
    expect(terms.allowanceReason).toMatch(/Nothing is published/)
  })

  it('keeps a choice the lists do not have', () => {
    const before = { ...ownFrom(formatOf('waltz')!, '').before!, side: { from: 3, to: 4 } }
    const own = ownFrom(before, 'Ours')
    const one = read({ format: 'Ours', ...ownFields(own.chosen, own.before) })
    expect(one.terms.custom?.side).toEqual({ from: 3, to: 4 })
  })

  it('is refused in its place when a choice is missing or somebody wrote over it', () => {
    const chosen = { side: '3', ball: 'own', strokes: 'each-player', value: 'croquet', count: 'best-1' }
    const answer = callDay.safeParse(readDayForm(typed({ format: 'Ours', ...ownFields(chosen) })))
    expect(answer.success).toBe(false)
    expect(answer.error?.issues.every((one) => one.path.slice(0, 4).join('.') === 'competitions.0.terms.custom')).toBe(
      true,
    )
  })

  it('begins from the format before, and its figure is proposed as the choices change', () => {
    const stableford = draftOf(read({ format: 'stableford', 'terms.allowance': '95' }))
    const begun = withFormat(stableford, OWN_FORMAT, 36, EDITION)
    expect(playOf(begun).custom?.value).toEqual(formatOf('stableford')?.value)
    expect(begun.allowance).toBe('95')
    const own = begun.own!
    const pairs = withOwn(begun, { ...own, chosen: { ...own.chosen, side: '2' } }, 36, EDITION)
    expect(pairs.allowance).toBe('85')
    const none = withOwn(pairs, { ...own, chosen: { ...own.chosen, strokes: 'none' } }, 36, EDITION)
    expect(none.allowance).toBe('0')
  })
})
