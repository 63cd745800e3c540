// Promise: who may sign, and when, is one answer on the phone and on the server: a match that ended early, a side with one
// card, a side alone in its group. Rules of Golf 2023: 3.3b two people certify a card; 22.2, 23.1 either partner acts.

import { describe, expect, it } from 'vitest'
import { sidesOfOneBall } from '@/lib/boards/card-holders'
import { matchesOfDay } from '@/lib/boards/day-of-record'
import { groupPack } from '@/lib/boards/group-pack'
import { besideMatches } from '@/lib/boards/match-cards'
import type { DayRecord, SignatureRecord } from '@/lib/facts/day-record'
import type { CardId, EntryId } from '@/lib/facts/ids'
import type { DeviceFact } from '@/lib/facts/score-fact'
import { cardsNow } from '@/lib/outbox/card-now'
import { mayNotSign } from '@/lib/outbox/signing'
import { type GroupCards, takeFact } from '@/lib/society/take-fact'
import { asId } from '../setup/ids'
import { smallRecord } from './small-record'

const ROLES = ['player', 'marker'] as const
const round = (score: number, holes = 18) => Array.from({ length: holes }, () => score)
const AT = '2031-06-14T16:00:00.000Z'

function onServer(record: DayRecord): GroupCards {
  const group = record.groups[0]!
  return {
    status: 'in-play',
    holes: 18,
    firstHole: 1,
    entryIds: group.entryIds,
    nameOf: Object.fromEntries(record.entries.map((one) => [one.id, one.familyName])),
    cards: record.cards.filter((card) => group.entryIds.includes(card.entryId)),
    facts: record.facts,
    rulings: [],
    signatures: record.signatures,
    signing: {
      matches: matchesOfDay(record).map((one) => one.match),
      beside: Object.fromEntries(record.entries.map(({ id }) => [id, besideMatches(record, id)])),
      shared: sidesOfOneBall(record).map((side) => side.entryIds),
      pairings: [],
    },
  }
}

/** Everybody of the group who may sign this card, by both, as "player Storrey". */
function maySign(record: DayRecord, cardOf: string): { readonly phone: string[]; readonly server: string[] } {
  const group = record.groups[0]!
  const card = cardsNow(groupPack(record, group), [], 'phone').find((one) => one.card.entryId === `d-${cardOf}`)!
  const server = onServer(record)
  const scores = card.holes.map((hole) => hole.score)
  const all = ROLES.flatMap((role) => group.entryIds.map((writer) => ({ role, writer })))
  const signature = (role: (typeof ROLES)[number], writer: EntryId): DeviceFact => ({
    kind: 'signature',
    seq: 1,
    cardId: card.card.cardId,
    writer,
    writtenAt: AT,
    role,
    scores,
  })
  const words = ({ role, writer }: (typeof all)[number]) => `${role} ${writer.replace('d-', '')}`
  const open = all.filter(({ role }) => !card.signatures.some((one) => one.role === role))
  return {
    phone: open.filter(({ role, writer }) => mayNotSign(card, role, writer) === null).map(words),
    server: open
      .filter(({ role, writer }) => takeFact(server, signature(role, writer), asId('phone')).kind === 'signature')
      .map(words),
  }
}

/** One card a side, in the hands of its first player, as the draw makes it. */
function oneBall(record: DayRecord, markers: Readonly<Record<string, string | null>>): DayRecord {
  const holders = Object.keys(markers).map((name) => `d-${name}`)
  const cards = record.cards
    .filter((card) => holders.includes(card.entryId))
    .map((card) => {
      const marker = markers[card.entryId.replace('d-', '')]
      return { ...card, markerId: marker ? asId<EntryId>(`d-${marker}`) : null }
    })
  return { ...record, cards }
}

const signedBy = (record: DayRecord, cardOf: string, name: string, scores: SignatureRecord['scores']): DayRecord => ({
  ...record,
  signatures: [
    {
      cardId: asId<CardId>(`card-d-${cardOf}`),
      role: 'player',
      entryId: asId(`d-${name}`),
      scores,
      signedAt: new Date(AT),
      withdrawnAt: null,
    },
  ],
})

describe('a match that ended early', () => {
  const day = smallRecord({
    people: ['Storrey', 'Haldane'],
    competitions: [{ format: 'match', pairings: [{ a: 'Storrey', b: 'Haldane' }] }],
    scores: { Storrey: round(4, 10), Haldane: round(5, 10) },
  })

  it('is signed after its last hole', () => {
    const both = ['player Storrey', 'marker Haldane']
    expect(maySign(day, 'Storrey')).toEqual({ phone: both, server: both })
  })

  it('is not signed while a hole before its end is blank, nor one hole too early', () => {
    const none = { phone: [], server: [] }
    const gap = { ...day, facts: day.facts.filter((fact) => fact.hole !== 3) }
    expect(maySign(gap, 'Storrey')).toEqual(none)
    const early = { ...day, facts: day.facts.filter((fact) => fact.hole < 10) }
    expect(maySign(early, 'Storrey')).toEqual(none)
  })
})

describe('the one card of a side', () => {
  const people = ['Ashgill', 'Verrow', 'Coldfen', 'Garrowby']

  it('is signed by any partner and by anybody of the side that marks it', () => {
    const day = oneBall(
      smallRecord({
        people,
        competitions: [{ format: 'foursomes-medal', sides: [people.slice(0, 2), people.slice(2)] }],
        scores: { Ashgill: round(4), Coldfen: round(5) },
      }),
      { Ashgill: 'Coldfen', Coldfen: 'Ashgill' },
    )
    const may = ['player Ashgill', 'player Verrow', 'marker Coldfen', 'marker Garrowby']
    expect(maySign(day, 'Ashgill')).toEqual({ phone: may, server: may })
  })

  it('is marked by another of its players where the side is alone in its group, never twice by one', () => {
    const day = oneBall(
      smallRecord({
        people,
        competitions: [{ format: 'scramble-4', sides: [people] }],
        scores: { Ashgill: round(4) },
      }),
      { Ashgill: null },
    )
    const everybody = ROLES.flatMap((role) => people.map((name) => `${role} ${name}`))
    expect(maySign(day, 'Ashgill')).toEqual({ phone: everybody, server: everybody })
    const others = ['marker Ashgill', 'marker Coldfen', 'marker Garrowby']
    expect(maySign(signedBy(day, 'Ashgill', 'Verrow', round(4)), 'Ashgill')).toEqual({ phone: others, server: others })
  })

  it('names its players by id on every phone of the group', () => {
    const day = oneBall(smallRecord({ people, competitions: [{ format: 'scramble-4', sides: [people] }] }), {
      Ashgill: null,
    })
    expect(groupPack(day, day.groups[0]!).cards[0]!.sharedWith?.map((one) => one.entryId)).toEqual([
      'd-Verrow',
      'd-Coldfen',
      'd-Garrowby',
    ])
  })
})
