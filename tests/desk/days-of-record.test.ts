import { describe, expect, it } from 'vitest'
import { daysOfRecord } from '@/app/desk/[society]/record/days-of-record'
import type { ActLine } from '@/lib/boards/record-of-acts'

// Invented acts, ours. No published standard says how a record is laid out.
const act = (id: number, at: string, did: string): ActLine => ({
  id,
  at,
  who: 'An Officer',
  from: null,
  act: did,
  did,
  area: 'results',
  areaName: 'results',
  subject: 'A day',
  changes: [],
})
const dayOf = (at: string) => at.slice(0, 10)

describe('the record by days', () => {
  it('puts the newest day first and loses no line', () => {
    const lines = [
      act(3, '2026-11-09T10:00:00Z', 'took a card in'),
      act(2, '2026-11-28T09:00:00Z', 'changed the draw'),
      act(1, '2026-11-09T11:00:00Z', 'took a card in'),
    ]
    const days = daysOfRecord(lines, dayOf)
    expect(days.map(({ day }) => day)).toEqual(['2026-11-28', '2026-11-09'])
    expect(days.map(({ lines }) => lines.map(({ id }) => id))).toEqual([[2], [1, 3]])
  })

  it('says what a folded day holds, the commonest first', () => {
    const lines = [
      act(5, '2026-11-09T10:00:00Z', 'closed a day'),
      ...[1, 2, 3].map((id) => act(id, `2026-11-09T09:0${id}:00Z`, 'took a card in')),
    ]
    expect(daysOfRecord(lines, dayOf)[0]!.sum).toBe('Four acts: took a card in (3), closed a day')
    const many = ['a', 'b', 'c', 'd'].map((did, at) => act(at, '2026-11-09T10:00:00Z', did))
    expect(daysOfRecord(many, dayOf)[0]!.sum).toMatch(/^Four acts: \w, \w, \w, and more$/)
  })

  it('opens the newest day, and older ones while a dozen lines are not yet seen', () => {
    const openOf = (...counts: number[]) => {
      const lines = counts.flatMap((count, day) =>
        Array.from({ length: count }, (_, at) => act(at, `2026-11-${20 - day}T10:00:00Z`, 'x')),
      )
      return daysOfRecord(lines, dayOf).map(({ open }) => open)
    }
    expect(openOf(7, 5, 1)).toEqual([true, true, false])
    expect(openOf(7, 30)).toEqual([true, false])
    expect(openOf(30, 1)).toEqual([true, false])
  })
})
