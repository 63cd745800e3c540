import { describe, expect, it } from 'vitest'
import { whatChanged } from '@/app/desk/_frame/day-glance'
import { readAllowance, readDayForm } from '@/app/desk/[society]/_day-form/read-day-form'
import { readFigure } from '@/app/desk/[society]/_figures/read-figure'
import { cellFault, copyOf, emptyTee, indexAdvice, spread, tenths } from '@/app/desk/[society]/courses/card-draft'
import { isPublishedFor } from '@/lib/boards/format-of-competition'
import { callDay } from '@/lib/facts/commands'

describe('a figure as people write it', () => {
  it.each([
    ['18.4', 184],
    ['18,4', 184],
    ['18', 180],
    ['18.4*', 184],
    ['+2.1', -21],
    ['+0', 0],
  ])('%s is %i tenths', (written, figure) => {
    expect(readFigure(written)).toEqual({ ok: true, value: figure })
  })

  it.each(['', 'eleven', '18.44', '-2.1', '184'])('“%s” is refused in its place', (written) => {
    const answer = readFigure(written)
    expect(answer.ok).toBe(false)
    if (!answer.ok) expect(answer.faults[0]?.place).toBe('claimedTenths')
  })
})

describe('the day form', () => {
  const form = (more: Record<string, string> = {}) => {
    const data = new FormData()
    const fields: Record<string, string> = {
      seasonId: 's1',
      name: 'Spring Cup',
      date: '2026-04-25',
      courseId: 'c1',
      holes: '18',
      startKind: 'tee-times',
      firstTee: '10:00',
      intervalMinutes: '10',
      expected: '36',
      teeMen: 't1',
      teeWomen: '',
      'competitions[0].name': 'Spring Cup',
      'competitions[0].format': 'stableford',
      'competitions[0].terms.allowance': '95',
      'competitions[0].ties': 'countback',
      'competitions[0].prizes[0].name': 'Winner',
      'competitions[0].prizes[0].place': '1',
      'competitions[0].prizes[0].eligible': 'members',
      'competitions[0].prizes[0].valuePence': '£12.50',
      ...more,
    }
    for (const [name, value] of Object.entries(fields)) data.set(name, value)
    return data
  }

  it('is what the use case asks for', () => {
    const read = callDay.parse(readDayForm(form()))
    expect(read.competitions[0]?.terms).toMatchObject({ allowance: 95, allowanceFrom: 'published' })
    expect(read.competitions[0]?.prizes[0]?.valuePence).toBe(1250)
    expect(read.teeWomen).toBeNull()
  })

  it('marks another allowance as a house choice with its reason', () => {
    const read = callDay.parse(
      readDayForm(
        form({
          'competitions[0].terms.allowance': '90',
          'competitions[0].terms.allowanceReason': 'Voted at the annual meeting',
        }),
      ),
    )
    expect(read.competitions[0]?.terms).toMatchObject({
      allowance: 90,
      allowanceFrom: 'house-choice',
      allowanceReason: 'Voted at the annual meeting',
    })
  })

  it('leaves what cannot be read for the schema to refuse in its place', () => {
    const answer = callDay.safeParse(readDayForm(form({ 'competitions[0].terms.allowance': 'lots' })))
    expect(answer.success).toBe(false)
    expect(answer.error?.issues[0]?.path.slice(0, 4)).toEqual(['competitions', 0, 'terms', 'allowance'])
  })

  it('reads shares of a side, lowest first', () => {
    expect(readAllowance('35/15')).toEqual([35, 15])
    expect(readAllowance('95 %')).toBe(95)
    expect(readAllowance('')).toBeNull()
  })

  it('counts both published figures of the table as published, and nothing else', () => {
    expect(isPublishedFor({ format: 'stableford' }, 95, '2024')).toBe(true)
    expect(isPublishedFor({ format: 'stableford' }, 100, '2024')).toBe(true)
    expect(isPublishedFor({ format: 'stableford' }, 90, '2024')).toBe(false)
  })
})

describe('a course card being typed', () => {
  const tee = emptyTee(18, 'men')
  const withIndexes = (indexes: readonly number[]) => ({
    ...tee,
    holes: indexes.map((one) => ({ par: '4', strokeIndex: String(one), yards: '' })),
  })

  it('names the twin of a stroke index', () => {
    const doubled = {
      ...tee,
      holes: tee.holes
        .with(0, { par: '4', strokeIndex: '7', yards: '' })
        .with(4, { par: '4', strokeIndex: '7', yards: '' }),
    }
    expect(cellFault(doubled, 0, 'strokeIndex')).toBe('Stroke index 7 is on hole 5 too.')
  })

  it('refuses a par that no hole has and leaves empty cells alone', () => {
    const odd = { ...tee, holes: tee.holes.with(0, { par: '8', strokeIndex: '', yards: '' }) }
    expect(cellFault(odd, 0, 'par')).toBe('Par is 3 to 6.')
    expect(cellFault(odd, 1, 'par')).toBeNull()
  })

  it('advises when odd and even indexes are mixed, and is quiet when they are not', () => {
    const usual = [1, 3, 5, 7, 9, 11, 13, 15, 17, 2, 4, 6, 8, 10, 12, 14, 16, 18]
    expect(indexAdvice(withIndexes(usual))).toBeNull()
    expect(indexAdvice(withIndexes([2, 1, ...usual.slice(2, 9), 3, ...usual.slice(10)]))).not.toBeNull()
  })

  it('fills a row from a pasted line and copies par and index, never yards', () => {
    expect(spread('4\t5\t3')).toEqual(['4', '5', '3'])
    expect(spread('4')).toBeNull()
    const copied = copyOf({ ...tee, holes: tee.holes.with(0, { par: '4', strokeIndex: '1', yards: '348' }) })
    expect(copied.holes[0]).toEqual({ par: '4', strokeIndex: '1', yards: '' })
  })

  it('reads a rating with point or comma', () => {
    expect(tenths('69.2')).toBe(692)
    expect(tenths('69,2')).toBe(692)
    expect(tenths('lots')).toBeNaN()
  })
})

describe('what another desk changed', () => {
  it('names who came and who went', () => {
    expect(whatChanged({ entered: { 1: 'A B', 2: 'C D' } }, { entered: { 2: 'C D', 3: 'E F' } })).toEqual([
      'Now entered: E F.',
      'No longer entered: A B.',
    ])
  })

  it('loses nobody where two bear one name, and splits no name at an "and"', () => {
    const two = { 1: 'Peter Marsh', 2: 'Peter Marsh', 3: 'Ann and Away' }
    expect(whatChanged({ entered: { 1: 'Peter Marsh' } }, { entered: two })).toEqual([
      'Now entered: Peter Marsh and Ann and Away.',
    ])
    expect(whatChanged({ entered: two }, { entered: { 2: 'Peter Marsh', 3: 'Ann and Away' } })).toEqual([
      'No longer entered: Peter Marsh.',
    ])
  })

  it('says old and new of everything else, and nothing when all is as it was', () => {
    expect(whatChanged({ 'first tee': '10.00' }, { 'first tee': '10.30' })).toEqual(['First tee: 10.30 (was 10.00).'])
    expect(whatChanged({ name: 'Spring Cup' }, { name: 'Spring Cup' })).toEqual([])
  })
})
