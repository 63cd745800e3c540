// Promise: what the board says in words is what its figures say.
import { describe, expect, it } from 'vitest'
import { clockInWords } from '@/lib/boards/dates-in-words'
import { againstLevelInWords, listed, ordinal, scoreLong, scoreShort } from '@/lib/boards/in-words'
import { tieRuleInWords, tieSentence } from '@/lib/boards/tie-sentences'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'

describe('words', () => {
  it('name windows and both figures of a broken tie', () => {
    const broken = {
      level: ['t', 'h'],
      step: 'last six',
      against: 'h',
      figures: [
        { window: 'last nine', mine: '18', theirs: '18' },
        { window: 'last six', mine: '11', theirs: '10' },
      ],
    }
    const names = { entrantShort: (id: string) => (id === 't' ? 'Trevennor' : 'Holmgarth') }
    expect(tieSentence(broken, 't', 38, 'points', names)).toBe(
      'Trevennor above Holmgarth, both 38: last nine 18 each, last six 11 to 10.',
    )
  })

  it('read the tie rule out', () => {
    expect(tieRuleInWords(PUBLISHED_COUNTBACK)).toBe(
      'Last nine, last six, last three, last hole, then the first nine the same way, then shared; holes by their number.',
    )
    expect(tieRuleInWords({ steps: [], holesCount: 'by-number', fractions: 'kept' })).toContain('stand')
  })

  it('write times, places, lists and scores as the trade does', () => {
    expect(['00:05', '09:30', '12:00', '14:52'].map(clockInWords)).toEqual([
      '12.05 am',
      '9.30 am',
      '12.00 pm',
      '2.52 pm',
    ])
    expect([1, 2, 3, 4, 11, 12, 13, 21, 111].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '111th',
    ])
    expect(listed(['Ashgill', 'Coldbrook', 'Verrow'])).toBe('Ashgill, Coldbrook and Verrow')
    expect([scoreShort(3, 'holes'), scoreShort(-1, 'holes'), scoreShort(0, 'holes')]).toEqual([
      '3 up',
      '1 down',
      'level',
    ])
    expect([scoreLong(1, 'points', true), scoreLong(70, 'strokes', true), scoreLong(81, 'strokes', false)]).toEqual([
      '1 point',
      'net 70',
      'gross 81',
    ])
    expect([-2, 0, 1].map(againstLevelInWords)).toEqual(['two under', 'level par', 'one over'])
  })
})
