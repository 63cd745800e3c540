// Promise: whatever an officer types that cannot be kept, the refusal is a golfer's sentence, never the schema library's.

import { describe, expect, it } from 'vitest'
import { keepPerson, ruleOnCard } from '@/lib/facts/commands'
import { parseInput } from '@/lib/society/parse-input'

const person = {
  firstName: 'Alder',
  familyName: 'Thistleby',
  gender: 'men',
  kind: 'member',
  regular: true,
  email: null,
  phone: null,
  handicapSource: 'society',
  indexTenths: null,
}

const sentenceFor = (change: object) => {
  const answer = parseInput(keepPerson, { ...person, ...change })
  return answer.ok ? 'kept' : answer.sentence
}

describe('a refusal of a form', () => {
  it('keeps what can be kept', () => {
    expect(sentenceFor({})).toBe('kept')
  })

  it('says how a year is written', () => {
    expect(sentenceFor({ memberSince: 96 })).toBe('Write the year in full, such as 1996.')
  })

  it.each([
    { memberSince: Number.NaN },
    { firstName: '' },
    { firstName: 'a'.repeat(200) },
    { phone: '0'.repeat(60) },
    { email: 'not an address' },
    { gender: 'neither' },
    { handicapSource: undefined },
  ])('never speaks of types and signs: %j', (change) => {
    expect(sentenceFor(change)).not.toMatch(/kept|expected|invalid|too (small|big)|undefined|NaN/i)
  })

  it('does so for a ruling too', () => {
    const answer = parseInput(ruleOnCard, { kind: 'nothing chosen' })
    if (answer.ok) throw new Error('a ruling of no kind was accepted')
    for (const fault of answer.faults) expect(fault.sentence).not.toMatch(/expected|invalid|too (small|big)|undefined/i)
  })
})
