// Promise: once a list is saved nothing of it counts as unsaved, although the page comes back with other fields; what was
// typed while the answer was on its way still does.

import { expect, it } from 'vitest'
import { changedNames, savedOf } from '@/app/desk/_form/form-snapshot'

const sent = new Map([['enter', 'a b']])
const came = new Map([
  ['enter', 'a b'],
  ['was', 'a 1, b 2'],
  ['tee-a', 'yellow'],
])

it('takes the page as it came back', () => {
  expect(changedNames(savedOf(sent, came, new Set()), came)).toEqual([])
})

it('keeps what was typed meanwhile as unsaved', () => {
  const typed = new Map([...came, ['enter', 'a b c']])
  expect(changedNames(savedOf(sent, typed, new Set(['enter'])), typed)).toEqual(['enter'])
  expect(changedNames(savedOf(sent, came, null), came)).not.toEqual([])
})
