// Promise: whoever is hidden is hidden under the full name, and under the family name alone only where nobody else bears it:
// a name that means somebody else as well is left to that person.

import { describe, expect, it } from 'vitest'
import { hiddenNames, publicRecord, withShownNames } from '@/lib/boards/shown-names'
import type { PersonId, RulingId } from '@/lib/facts/ids'
import type { ShownAs } from '@/lib/facts/society-settings'
import { recordAt } from '../screens/day-of-four'
import { asId } from '../setup/ids'

const person = (personId: string, firstName: string, familyName: string) => ({
  personId: asId<PersonId>(personId),
  firstName,
  familyName,
})
const ASHGILLS = [person('p', 'Petra', 'Ashgill'), person('t', 'Tom', 'Ashgill'), person('v', 'Anjali', 'Verrow')]
const as = (...pairs: [string, ShownAs][]) => new Map(pairs)

describe('a name that is hidden', () => {
  const sheet = {
    rows: [{ name: 'Petra Ashgill' }, { name: 'Tom Ashgill' }, { name: 'Anjali Verrow' }],
    ties: ['Ashgill above Verrow, both 38'],
  }

  it('leaves the family name to whoever shares it', () => {
    const shown = withShownNames(sheet, hiddenNames(ASHGILLS, as(['p', 'former-member'])))
    expect(shown.rows.map(({ name }) => name)).toEqual(['Former member', 'Tom Ashgill', 'Anjali Verrow'])
    expect(shown.ties).toEqual(['Ashgill above Verrow, both 38'])
  })

  it('goes with the family name where that is nobody else’s', () => {
    const shown = withShownNames(sheet, hiddenNames(ASHGILLS, as(['v', 'initials'])))
    expect(shown.rows.map(({ name }) => name)).toEqual(['Petra Ashgill', 'Tom Ashgill', 'A. V.'])
    expect(shown.ties).toEqual(['Ashgill above A. V., both 38'])
  })

  it('says of each who is alone in the family', () => {
    expect(hiddenNames(ASHGILLS, as(['p', 'initials'], ['v', 'initials'])).map((one) => one.aloneInFamily)).toEqual([
      false,
      true,
    ])
  })

  it('is read by the same rule in a record as on a sheet', () => {
    const record = recordAt()
    const entries = record.entries.map((one, at) => (at === 1 ? { ...one, familyName: 'Haldane' } : one))
    const ruling = {
      id: asId<RulingId>('r'),
      number: 1,
      cardId: record.cards[0]!.id,
      kind: 'no-return' as const,
      hole: null,
      value: null,
      clause: '',
      reason: 'Haldane walked in',
      byName: 'S',
      ruledAt: new Date(),
      replaces: null,
    }
    const shown = (day: typeof record) =>
      publicRecord({ ...day, rulings: [ruling] }, as([entries[0]!.personId, 'former-member'])).rulings[0]!.reason
    expect(shown({ ...record, entries })).toBe('Haldane walked in')
    expect(shown(record)).toBe('Former member walked in')
  })
})
