// Promise: whoever opens the card from the home screen comes to the one card that can be meant, and chooses where there is
// more than one; a card with something to send is never passed over.
import { describe, expect, it } from 'vitest'
import { dateOnPhone, onlyCurrent } from '@/lib/outbox/current-card'
import type { CardHere } from '@/lib/outbox/on-this-phone'

const TODAY = '2026-06-13'
const card = (link: string, over: Partial<CardHere> = {}): CardHere => ({
  link,
  dayName: 'Downland Day',
  date: TODAY,
  group: 6,
  waitingScores: 0,
  waitingSignatures: 0,
  ended: false,
  ...over,
})
const meant = (...cards: CardHere[]) => onlyCurrent(cards, TODAY)?.link ?? null

describe('the card that is meant', () => {
  it('is today’s, whatever else is still on the phone', () => {
    expect(meant(card('today'), card('in April', { date: '2026-04-25' }))).toBe('today')
    expect(meant(card('tomorrow', { date: '2026-06-14' }))).toBe('tomorrow')
    expect(meant(card('in April', { date: '2026-04-25' }))).toBeNull()
    expect(meant()).toBeNull()
  })

  it('is nobody’s guess where there are two', () => {
    expect(meant(card('morning'), card('afternoon'))).toBeNull()
    expect(meant(card('today'), card('in April', { date: '2026-04-25', waitingScores: 2 }))).toBeNull()
  })

  it('is not one whose link has ended, unless something on it is not sent', () => {
    expect(meant(card('old link', { ended: true }), card('new link'))).toBe('new link')
    expect(meant(card('old link', { ended: true, waitingSignatures: 1 }))).toBe('old link')
  })

  it('goes by the phone’s own calendar', () => {
    expect(dateOnPhone(new Date(2026, 5, 3, 23, 59))).toBe('2026-06-03')
  })
})
