// Promise: a new day's form says what it took over from the last day, the start before all.

import { expect, test } from 'vitest'
import { takenOver } from '@/lib/boards/taken-over'
import type { CallDay } from '@/lib/facts/commands'

const cup = { name: 'Team Yellow', format: 'yellow-ball' } as CallDay['competitions'][number]
const day = { firstTee: '09:30', intervalMinutes: 10, places: null, competitions: [cup] }

test('the start, with what goes with it', () => {
  const shotgun = takenOver('Spring Cup', { ...day, startKind: 'shotgun', places: 40 }, 'Aldermoss Park')
  expect(shotgun.start).toBe('As on Spring Cup: shotgun start at 9.30 am, 18 holes, 40 places.')
  expect(takenOver('Spring Cup', { ...day, holes: 9 }, 'Aldermoss Park').start).toBe(
    'As on Spring Cup: tee times from 9.30 am, 10 minutes between groups, 9 holes.',
  )
})

test('the course and the competitions', () => {
  const both = [cup, { ...cup, name: 'Best two' }]
  const one = takenOver('Spring Cup', { ...day, competitions: both }, 'Aldermoss Park')
  expect(one.course).toBe('As on Spring Cup: Aldermoss Park and its tees.')
  expect(one.competitions).toBe('As on Spring Cup: Team Yellow and Best two, with their terms and prizes.')
})
