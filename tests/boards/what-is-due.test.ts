// Promise: what is due stands in the order of its dates, also where entries close late or a day is called at short notice.

import { expect, it } from 'vitest'
import { countsOf, whatIsDue } from '@/lib/boards/what-is-due'
import { smallRecord } from './small-record'

const day = smallRecord({ people: ['Ashgill', 'Verrow'], status: 'called', competitions: [{ format: 'stableford' }] })

const datesOf = (entriesCloseOn: string | null, calledOn: string) =>
  whatIsDue({ ...day, entriesCloseOn }, countsOf(day, null), calledOn, calledOn).map(({ what, on }) => `${on} ${what}`)

it.each([
  [null, '2031-04-01'],
  [null, '2031-06-12'],
  ['2031-06-13', '2031-04-01'],
  ['2031-06-14', '2031-06-14'],
])('entries closing on %s, called on %s', (closing, called) => {
  const dates = datesOf(closing, called).map((line) => line.slice(0, 10))
  expect(dates).toEqual([...dates].sort())
})

it('freezes no handicaps before entries are closed', () => {
  expect(datesOf('2031-06-13', '2031-04-01').slice(1, 5)).toEqual([
    '2031-06-13 close-entries',
    '2031-06-13 freeze',
    '2031-06-13 draw',
    '2031-06-13 publish-start',
  ])
})
