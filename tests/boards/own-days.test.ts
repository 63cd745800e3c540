// Promise: every partner of a side has the day on the own page, with what the figure is; a day of matches says how they
// ended. Invented players.

import { describe, expect, it } from 'vitest'
import { boardOf } from '@/lib/boards/board'
import { cardWorkingOf } from '@/lib/boards/card-working'
import { cardsOnBoard, type MemberSource, matchesOnBoard, memberPageOf, othersOnBoard } from '@/lib/boards/member-page'
import { printedCards } from '@/lib/boards/printed-cards'
import type { DayRecord } from '@/lib/facts/day-record'
import type { EntryId, SideId } from '@/lib/facts/ids'
import { asId } from '../setup/ids'
import { smallRecord } from './small-record'

const people = ['Ashgill', 'Verrow', 'Coldfen', 'Garrowby']
const round = (score: number, holes = 18) => Array.from({ length: holes }, () => score)

function pageOf(record: DayRecord, entryId: EntryId, sideIds: readonly SideId[]) {
  const board = boardOf(record, new Date('2031-06-14T18:00:00Z'))
  const matches = matchesOnBoard(board)
  const others = othersOnBoard(board)
  const source: MemberSource = {
    societySlug: 'fernbrake',
    societyName: 'Fernbrake',
    seasonName: '2031',
    firstName: 'V',
    familyName: 'Verrow',
    memberSince: null,
    source: 'society',
    records: [],
    days: [
      {
        entryId,
        sideIds,
        slug: 'd',
        name: 'Autumn Day',
        date: '2031-06-14',
        courseName: 'Aldermoss Park',
        status: 'closed',
      },
    ],
  }
  return memberPageOf(
    source,
    new Map([
      [
        entryId,
        {
          card: cardsOnBoard(board).get(entryId) ?? null,
          matches: [entryId, ...sideIds].flatMap((end) => matches.get(end) ?? []),
          ...(others.has(entryId) ? { others: others.get(entryId)! } : {}),
        },
      ],
    ]),
  )
}

describe('the own page', () => {
  const foursomes = smallRecord({
    people,
    status: 'closed',
    competitions: [{ format: 'foursomes-medal', sides: [people.slice(0, 2), people.slice(2)] }],
    scores: { Ashgill: round(4), Coldfen: round(5) },
  })

  it('gives the second partner the day of the side, with both names and the unit', () => {
    const page = pageOf(foursomes, asId('d-Verrow'), [foursomes.competitions[0]!.sides[0]!.id])
    expect(page.cards[0]).toMatchObject({ score: '72', reading: 'net', side: 'Ashgill and Verrow', place: 1 })
    expect(page.sentence).toBe('Net 72 for Ashgill and Verrow at Aldermoss Park, first.')
  })

  it('has every competition of the day, each with its place', () => {
    const both = smallRecord({
      people,
      status: 'closed',
      competitions: [
        { format: 'medal' },
        { format: 'four-ball-stableford', sides: [people.slice(0, 2), people.slice(2)] },
      ],
      scores: Object.fromEntries(people.map((name, at) => [name, round(4 + at)])),
    })
    const [, pairs] = both.competitions
    const [card] = pageOf(both, asId('d-Verrow'), [pairs!.sides[0]!.id]).cards
    // Fives on every hole of par 72: the second of the medal; the better ball of the pair makes fours, two points a hole.
    expect(card).toMatchObject({ score: '90', place: 2 })
    expect(card!.others).toEqual({ in: both.competitions[0]!.name, lines: [`${pairs!.name} 36 points, 1st`] })
    const live = { ...both, status: 'in-play' as const }
    expect(pageOf(live, asId('d-Verrow'), []).cards[0]!.others!.lines).toEqual([`${pairs!.name} 36 points`])
  })

  it('says how the matches of a day ended, singles and sides', () => {
    const matches = smallRecord({
      people,
      status: 'closed',
      competitions: [
        { format: 'match', pairings: [{ a: 'Ashgill', b: 'Verrow' }] },
        { format: 'four-ball-match', sides: [people.slice(0, 2), people.slice(2)] },
      ],
      scores: Object.fromEntries(people.map((name, at) => [name, round(4 + at, 10)])),
    })
    const [, fourBall] = matches.competitions
    const [one, two] = fourBall!.sides
    const paired: DayRecord = {
      ...matches,
      competitions: [
        matches.competitions[0]!,
        { ...fourBall!, pairings: [{ id: asId('m'), number: 1, a: one!.id, b: two!.id, ending: {} }] },
      ],
    }
    const page = pageOf(paired, asId('d-Verrow'), [one!.id])
    expect(page.cards[0]).toMatchObject({ score: null, matches: ['lost 10 and 8', 'won 10 and 8'] })
    expect(page.sentence).toBe('Lost 10 and 8 and won 10 and 8 at Aldermoss Park.')
  })

  it('opens the working of a one-ball card for either partner, with whose figures it counts', () => {
    for (const name of ['Ashgill', 'Verrow']) {
      const working = cardWorkingOf(foursomes, asId(`d-${name}`), { competition: 1, hole: 3 }, 'Europe/London')
      const gross = working?.steps.find((step) => step.label === 'Gross')
      expect(gross?.sentence).toContain('Written by the desk')
      const figures = working?.steps.filter((step) => step.label === 'Handicap figure') ?? []
      expect(figures.map((step) => step.sentence.split(':')[0])).toEqual(['A Ashgill', 'V Verrow'])
      expect(figures.every((step) => step.sentence.includes('Frozen on'))).toBe(true)
    }
  })
})

describe('the printed card', () => {
  it('is one a side on one ball, with all its players, and drives where the terms ask for them', () => {
    const one = smallRecord({ people, competitions: [{ format: 'scramble-4', sides: [people] }] })
    const scramble = {
      ...one,
      competitions: one.competitions.map((each) => ({ ...each, terms: { ...each.terms, minimumDrives: 4 } })),
    }
    expect(printedCards(scramble).cards).toMatchObject([
      {
        name: 'Ashgill, Verrow, Coldfen and Garrowby',
        side: ['A Ashgill', 'V Verrow', 'C Coldfen', 'G Garrowby'],
        drivesNeeded: 4,
      },
    ])
    const pairs = smallRecord({
      people,
      competitions: [{ format: 'foursomes-medal', sides: [people.slice(0, 2), people.slice(2)] }],
    })
    expect(printedCards(pairs).cards).toMatchObject([
      { name: 'Ashgill and Verrow', teesOff: 'in-turn' },
      { name: 'Coldfen and Garrowby', teesOff: 'in-turn' },
    ])
  })

  it('is everybody’s own where each plays a ball', () => {
    const own = smallRecord({ people, competitions: [{ format: 'stableford' }] })
    expect(printedCards(own).cards.map((card) => card.side)).toEqual([undefined, undefined, undefined, undefined])
  })
})
