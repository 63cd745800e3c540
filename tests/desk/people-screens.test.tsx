// Promise: the screens of entries, members and the first steps say what they must before a button is pressed: no host is
// chosen, whoever withdraws is named in full, two of one name are told apart, the next step alone stands open.

import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { FRESH } from '@/app/desk/_form/act-state'
import { DayLine, InDay } from '@/app/desk/_frame/day-line'
import { FirstSteps } from '@/app/desk/[society]/_start/first-steps'
import { type EntryLine, EntryList } from '@/app/desk/[society]/days/[day]/entries/entry-list'
import { GuestForm, KnownGuestForm } from '@/app/desk/[society]/days/[day]/entries/guest-form'
import { MissingHandicaps } from '@/app/desk/[society]/days/[day]/handicaps/missing-handicaps'
import { whyNotFreeze } from '@/app/desk/[society]/days/[day]/handicaps/why-not-freeze'
import { PersonForm } from '@/app/desk/[society]/members/person-form'
import type { PersonId } from '@/lib/facts/ids'
import { asId } from '../setup/ids'

const action = async () => FRESH
const text = (markup: string) =>
  markup
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

const line = (over: Partial<EntryLine>): EntryLine => ({
  personId: asId('p1'),
  entryId: asId('e1'),
  firstName: 'Peter',
  familyName: 'Marsh',
  knownAs: null,
  gender: 'men',
  regular: true,
  guestOf: null,
  figure: '15.1',
  status: 'entered',
  roundTeeId: asId('t1'),
  ...over,
})

describe('entries', () => {
  it('tells a father from his son, and who waits or has withdrawn', () => {
    const lines = [
      line({ knownAs: 'senior' }),
      line({ personId: asId('p2'), entryId: asId('e2'), knownAs: 'junior', status: 'waiting' }),
      line({ personId: asId('p3'), entryId: asId('e3'), firstName: 'Ann', status: 'withdrawn' }),
    ]
    const drawn = {
      status: 'called' as const,
      isPublished: false,
      places: null,
      entries: [],
      groups: [],
      competitions: [],
      teams: [],
    }
    const markup = renderToStaticMarkup(
      <EntryList action={action} lines={lines} tees={[]} drawn={drawn} shut={null}>
        {null}
      </EntryList>,
    )
    expect(text(markup)).toMatch(/Peter Marsh \(senior\) 15\.1/)
    expect(text(markup)).toMatch(/Peter Marsh \(junior\) 15\.1 on the waiting list/)
    expect(text(markup)).toMatch(/Ann Marsh 15\.1 withdrawn/)
    expect(markup.match(/name="was"/g)).toHaveLength(2)
  })

  it('chooses no host and no guest by itself', () => {
    const hosts = {
      entered: [{ value: 'h1', label: 'Holmgarth, Freya' }],
      others: [{ value: 'h2', label: 'Storrey, Magnus' }],
    }
    const guests = [{ value: 'g1', label: 'Maddock, Sorley', figure: '11.0', hostId: asId<PersonId>('h1') }]
    const known = renderToStaticMarkup(
      <KnownGuestForm action={action} hosts={hosts} guests={guests}>
        {null}
      </KnownGuestForm>,
    )
    const fresh = renderToStaticMarkup(
      <GuestForm action={action} hosts={hosts}>
        {null}
      </GuestForm>,
    )
    for (const markup of [known, fresh]) {
      expect(markup).toMatch(/<option value=""[^>]*>Choose the host/)
      expect(markup).not.toMatch(/<option value="h\d" selected/)
      expect(markup).toMatch(/<optgroup label="Not entered on this day yet"><option value="h2"/)
    }
    expect(known).toMatch(/<option value=""[^>]*>Choose the guest/)
  })
})

describe('members', () => {
  it('begin with the founder’s own name where that is offered, and ask for no word until two share a name', () => {
    const suggested = { firstName: 'Dorcas', familyName: 'Ellerthwaite' }
    const markup = renderToStaticMarkup(<PersonForm action={action} suggested={suggested} at="/desk/x/members" />)
    expect(markup).toMatch(/value="Dorcas"/)
    expect(markup).toMatch(/value="Ellerthwaite"/)
    expect(markup).not.toContain('name="knownAs"')
  })
})

describe('the freeze', () => {
  it('says who has no handicap, and takes it there', () => {
    const missing = [{ personId: asId<PersonId>('p9'), name: 'New Comer' }]
    expect(whyNotFreeze(12, missing)).toBe('New Comer has no handicap yet')
    expect(whyNotFreeze(12, [...missing, { name: 'Bo Two' }])).toBe('New Comer and Bo Two have no handicap yet')
    expect(whyNotFreeze(0, [])).toBe('nobody is entered')
    expect(whyNotFreeze(12, [])).toBe(false)
    const markup = renderToStaticMarkup(
      <MissingHandicaps action={action} missing={missing} today="2031-06-01" members="/desk/x/members" day="cup" />,
    )
    expect(markup).toContain('href="/desk/x/members/p9?day=cup"')
    expect(markup).toContain('aria-label="Handicap of New Comer"')
  })
})

describe('the first steps', () => {
  it('open the next one with its buttons, tick what is done, and let a second officer be added at any time', () => {
    const steps = (['season', 'members', 'course', 'day', 'officer'] as const).map((what, at) => ({
      what,
      isDone: at === 0,
      note: 'x',
    }))
    const addMe = { firstName: 'Dorcas', familyName: 'Ellerthwaite' }
    const markup = renderToStaticMarkup(<FirstSteps society="x" first={{ steps, seasonId: asId('s'), addMe }} />)
    expect(text(markup)).toContain('1 of 5 done')
    expect(markup.match(/<h3>/g)).toHaveLength(1)
    expect(text(markup)).toContain('Next Add the members')
    expect(text(markup)).toContain('add Dorcas Ellerthwaite')
    expect(markup).toContain('href="/desk/x/officers#give-h"')
    expect(markup).not.toContain('/courses/new')
  })
})

describe('the line above the tabs of a day', () => {
  const day = (number: number) => ({ slug: `d${number}`, number, name: `Day ${number}`, date: `2031-0${number}-14` })

  it('leads to all golf days and the neighbours, and is not there outside a day', () => {
    const place = { ...day(2), of: 3, before: day(1), after: null }
    const markup = renderToStaticMarkup(
      <InDay society="x" place={place}>
        <DayLine />
      </InDay>,
    )
    expect(markup).toContain('href="/desk/x"')
    expect(markup).toContain('href="/desk/x/days/d1"')
    expect(text(markup)).toContain('Day 2 of 3')
    expect(renderToStaticMarkup(<DayLine />)).toBe('')
  })
})
