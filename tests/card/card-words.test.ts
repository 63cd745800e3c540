// Promise: the card says in the words of every screen how far it has come, why a signature came off, and what is next.

import { describe, expect, it } from 'vitest'
import { nextJob } from '@/app/card/_phone/next-job'
import { signatureOffOnHole, signaturesOffInWords } from '@/app/card/_phone/signature-off'
import { standing } from '@/app/card/_phone/standing'
import type { CardPack } from '@/lib/facts/card-pack'
import type { EntryId } from '@/lib/facts/ids'
import { cardsNow } from '@/lib/outbox/card-now'
import { type FactDraft, type KeptFact, unanswered } from '@/lib/outbox/kept-fact'
import { aldermossPack } from '../outbox/aldermoss-four'
import { asId } from '../setup/ids'

const AT = '2026-04-25T12:53:00.000Z'
const PACK = aldermossPack()
const facts = (drafts: readonly FactDraft[]): KeptFact[] =>
  drafts.map((draft, at) => unanswered('link', at + 1, { draft, before: null }, AT))
const score = (entryId: string, hole: number, strokes: number): FactDraft => ({
  kind: 'score',
  cardId: asId(`card-${entryId}`),
  writer: asId('haldane'),
  hole,
  score: strokes,
})
const round = (entryId: string, holes = 18) => Array.from({ length: holes }, (_, at) => score(entryId, at + 1, 4))
const sign = (entryId: string, writer: string, role: 'player' | 'marker'): FactDraft => ({
  kind: 'signature',
  cardId: asId(`card-${entryId}`),
  writer: asId(writer),
  role,
  scores: Array.from({ length: 18 }, () => 4),
})
const read = (drafts: readonly FactDraft[], pack: CardPack = PACK) => cardsNow(pack, facts(drafts), 'here')
const first = (drafts: readonly FactDraft[]) => read(drafts)[0]!

describe('how far a card has come', () => {
  it('is said in the words every screen uses', () => {
    expect(standing(PACK, first([]))).toBe('not started')
    expect(standing(PACK, first(round('haldane', 11)))).toBe('on the 12th')
    expect(standing(PACK, first(round('haldane', 17)))).toBe('next: hole 18')
    expect(standing(PACK, first(round('haldane', 17).filter((each) => each.kind !== 'score' || each.hole !== 4)))).toBe(
      'missing: hole 4',
    )
    expect(standing(PACK, first(round('haldane')))).toBe('finished, not signed')
    expect(standing(PACK, first([...round('haldane'), sign('haldane', 'tarrablane', 'marker')]))).toBe(
      'finished, signed by the marker',
    )
  })
})

describe('a signature that comes off', () => {
  it('says which hole did it, and that it has to be given again', () => {
    const drafts = [...round('haldane'), sign('haldane', 'haldane', 'player'), score('haldane', 5, 2)]
    const card = first(drafts)
    expect(card.signatures).toEqual([])
    expect(signaturesOffInWords(PACK, card)).toEqual([
      'Corin’s signature came off because hole 5 changed from 4 to 2: sign again.',
    ])
    expect(signatureOffOnHole(PACK, [card], 5)).toBe('Corin must sign again: hole 5 changed')
    expect(signatureOffOnHole(PACK, [card], 6)).toBeNull()
    expect(standing(PACK, card)).toBe('Corin to sign again')
    const again = first([...drafts, sign('haldane', 'haldane', 'player')])
    expect(signaturesOffInWords(PACK, again)).toEqual([])
  })

  it('is said as well where the server took it off', () => {
    const off = [{ role: 'marker', entryId: asId<EntryId>('tarrablane'), hole: 5, from: 4, to: 2 }] as const
    const pack = { ...PACK, cards: PACK.cards.map((card) => ({ ...card, signaturesOff: off })) }
    expect(signaturesOffInWords(pack, read([], pack)[0]!)).toEqual([
      'Una’s signature came off because hole 5 changed from 4 to 2: sign again.',
    ])
  })
})

describe('the next job', () => {
  const signed = [...round('haldane'), sign('haldane', 'tarrablane', 'marker'), sign('haldane', 'haldane', 'player')]
  it('is the next card of the group to sign, then what keeps one back, then nothing', () => {
    const two = [...signed, ...round('trevennor')]
    expect(nextJob(PACK, read(two), asId('haldane'))).toMatchObject({ words: 'Jago’s card', entryId: 'trevennor' })
    expect(nextJob(PACK, read([...signed, ...round('coldbrook', 17)]), asId('haldane'))).toMatchObject({
      words: 'hole 18',
    })
    const alone = { ...PACK, cards: PACK.cards.slice(0, 1) }
    expect(nextJob(alone, read(signed, alone), 'haldane')).toBeNull()
  })
})
