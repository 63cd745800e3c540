// Promise: a card is signed whole, by player and marker in their own names, signal or not; what comes too late is told, and
// the end of a link loses nothing.

import { describe, expect, it } from 'vitest'
import { nextJob } from '@/app/card/_phone/next-job'
import { toSign } from '@/app/card/_phone/sign-part'
import { standing } from '@/app/card/_phone/standing'
import { cardsNow } from '@/lib/outbox/card-now'
import { mayNotSign } from '@/lib/outbox/signing'
import { asId } from '../setup/ids'
import { aldermossPack, FOUR, GROSS } from './aldermoss-four'
import { opened, quiet } from './opened-book'

describe('signing', () => {
  async function eighteen() {
    const all = await opened()
    for (const entryId of FOUR)
      for (const [index, score] of GROSS[entryId].entries())
        await all.book.write(asId(`card-${entryId}`), index + 1, score)
    return all
  }

  it('refuses a card with a hole missing, and names the hole', async () => {
    const { book } = await opened()
    for (let hole = 1; hole <= 17; hole++) await book.write(asId('card-trevennor'), hole, 5)
    expect(await book.sign(asId('card-trevennor'), 'player', asId('trevennor'))).toMatchObject({
      ok: false,
      code: 'holes-missing',
      sentence: 'Jago has no score yet on hole 18.',
    })
  })

  it('lets player and marker sign on one phone, each in their own name, without a signal', async () => {
    const { book, signal, card, now, server, fire } = await eighteen()
    signal.on = false
    expect((await book.sign(asId('card-trevennor'), 'marker', asId('coldbrook'))).ok).toBe(true)
    expect(card(asId('trevennor')).closed).toBe(false)
    expect(await book.sign(asId('card-trevennor'), 'player', asId('coldbrook'))).toMatchObject({
      code: 'not-the-marker',
    })
    expect((await book.sign(asId('card-trevennor'), 'player', asId('trevennor'))).ok).toBe(true)
    expect(card(asId('trevennor'))).toMatchObject({ closed: true, state: 'out' })
    expect(now().waitingSignatures).toBe(2)
    expect(await book.write(asId('card-trevennor'), 1, 9)).toMatchObject({ ok: false, code: 'card-closed' })
    signal.on = true
    fire()
    await quiet()
    await quiet()
    expect(server.taken.filter((each) => each.fact.kind === 'signature').map((each) => each.fact.writer)).toEqual([
      'coldbrook',
      'trevennor',
    ])
    expect(card(asId('trevennor')).state).toBe('handed-in')
  })

  it('signs nothing that did not come in before the day was closed, and says so once', () => {
    const pack = { ...aldermossPack(), status: 'closed' as const }
    const [first, ...others] = cardsNow(
      {
        ...pack,
        cards: pack.cards.map((card, at) => (at === 0 ? card : { ...card, state: 'taken-in' as const })),
      },
      [],
      'a-phone',
    )
    expect(first).toMatchObject({ isOver: true, closed: false })
    expect(mayNotSign(first!, 'player', first!.card.entryId)).toMatchObject({
      code: 'day-closed',
      sentence: `The day is closed, and ${first!.card.firstName}’s card did not come in. Only the committee can count it now.`,
    })
    expect(others.map((card) => card.isOver)).toEqual([false, false, false])
    expect(toSign(pack, first!, '')).toEqual([])
    expect(nextJob(pack, [first!, ...others], others[0]!.card.entryId)).toBeNull()
    expect(standing(pack, first!)).toBe('not handed in: the day is closed')
  })

  it('drops a signature when a score changes after it', async () => {
    const { book, card } = await eighteen()
    await book.sign(asId('card-trevennor'), 'marker', asId('coldbrook'))
    expect(card(asId('trevennor')).signatures).toHaveLength(1)
    await book.write(asId('card-trevennor'), 4, 6)
    expect(card(asId('trevennor')).signatures).toHaveLength(0)
  })

  it('tells of a score that came after the card was handed in', async () => {
    const { book, server, now } = await opened()
    server.pack = {
      ...server.pack,
      cards: server.pack.cards.map((each) => (each.entryId === 'haldane' ? { ...each, state: 'handed-in' } : each)),
    }
    await book.write(asId('card-haldane'), 1, 4)
    await quiet()
    expect(now().answered.map((each) => each.sentence)).toEqual(['This card is signed and handed in.'])
    await book.markSeen(now().answered.map((each) => each.seq))
    expect(now().answered).toEqual([])
  })
})

describe('the end of a link', () => {
  it('says so, keeps the scores, and goes on when the link lives again', async () => {
    const { book, server, now } = await opened()
    server.ended = { code: 'link-ended', sentence: 'The day is over and the link has ended with it.' }
    await book.write(asId('card-trevennor'), 1, 5)
    await quiet()
    expect(now().ended?.code).toBe('link-ended')
    expect(now().waitingScores).toBe(1)
    server.ended = null
    await book.refresh()
    expect(now().ended).toBeNull()
  })
})
