// Promise: what is conceded on a phone is kept there first, counts without a signal, and can be taken back until a card of
// the match is handed in.

import { describe, expect, it } from 'vitest'
import type { PackMatch } from '@/lib/facts/card-pack'
import type { CardId } from '@/lib/facts/ids'
import type { BallToCount } from '@/lib/rules/matches/match-now'
import { asId } from '../setup/ids'
import { aldermossPack } from './aldermoss-four'
import { FakeServer } from './fake-server'
import { opened, quiet } from './opened-book'

const ball = (player: string): BallToCount => ({
  players: [player],
  gross: [],
  strokes: Array.from({ length: 18 }, () => 0),
  pars: Array.from({ length: 18 }, () => 4),
})
const MATCH: PackMatch = {
  competition: 'Singles',
  a: 'Trevennor',
  b: 'Haldane',
  match: {
    id: 'm1',
    a: [ball('trevennor')],
    b: [ball('haldane')],
    holes: Array.from({ length: 18 }, (_, at) => at + 1),
    count: { kind: 'best', take: [1] },
    on: { kind: 'strokes' },
    maximum: { kind: 'net-double-bogey' },
    startHole: 1,
    over: false,
    conceded: [],
  },
}
const onDay = () => opened(new FakeServer(aldermossPack({ matches: [MATCH] })))
const what = { cardId: asId<CardId>('card-trevennor'), matchId: 'm1' }

describe('conceding', () => {
  it('counts at once without a signal, and is sent in its turn', async () => {
    const { book, server, signal, fire, now, card } = await onDay()
    signal.on = false
    expect((await book.concede({ ...what, hole: 4, by: 'a' })).ok).toBe(true)
    await book.write(asId('card-trevennor'), 5, 4)
    expect(now().matches[0]?.match.conceded).toEqual([[4, -1]])
    expect(card(asId('haldane')).notNeeded).toEqual([4])
    expect(now().waitingScores).toBe(2)
    signal.on = true
    fire()
    await quiet()
    expect(server.taken.map(({ fact }) => fact.kind)).toEqual(['concession', 'score'])
    expect(now().matches[0]?.match.conceded).toEqual([[4, -1]])
    expect(now().waitingScores).toBe(0)
  })

  it('of the match leaves nothing to write on either card, and is taken back', async () => {
    const { book, now, card } = await onDay()
    await book.concede({ ...what, hole: null, by: 'b' })
    expect(card(asId('trevennor')).missing).toEqual([])
    expect(card(asId('haldane')).missing).toEqual([])
    expect(card(asId('coldbrook')).missing).not.toEqual([])
    await book.concede({ ...what, hole: null, by: null })
    await quiet()
    expect(card(asId('haldane')).missing).not.toEqual([])
    expect(now().matches[0]?.match.ended).toBeUndefined()
  })

  it('is refused on the phone where the match is not there, was ended at the desk, or a card is handed in', async () => {
    const { book } = await onDay()
    expect(await book.concede({ ...what, matchId: 'm2', hole: 4, by: 'a' })).toMatchObject({ code: 'no-such-match' })
    const ended = { up: 1, finished: true, result: 'walkover', takes: 'everything' } as const
    const given = await opened(
      new FakeServer(aldermossPack({ matches: [{ ...MATCH, match: { ...MATCH.match, ended } }] })),
    )
    expect(await given.book.concede({ ...what, hole: 4, by: 'a' })).toMatchObject({ code: 'match-ended' })
    const pack = aldermossPack({ matches: [MATCH] })
    const cards = pack.cards.map((one) => (one.entryId === 'haldane' ? { ...one, state: 'handed-in' as const } : one))
    const closed = await opened(new FakeServer({ ...pack, cards }))
    expect(await closed.book.concede({ ...what, hole: 4, by: 'a' })).toMatchObject({ code: 'card-closed' })
  })
})
