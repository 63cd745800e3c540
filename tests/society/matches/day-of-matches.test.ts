// Promise: what the desk arranges of a match day stands in the book and on the board: pairings from the draw and by hand,
// endings off the course, teams; sides keep their rows and with them their matches, drives and lost balls.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { strokesSaid } from '@/app/card/_phone/match-words'
import { boardOf } from '@/lib/boards/board'
import { groupPack } from '@/lib/boards/group-pack'
import { strokesInWords, strokesOf } from '@/lib/boards/match-strokes'
import { printedCards } from '@/lib/boards/printed-cards'
import { startSheetOf } from '@/lib/boards/start-sheet'
import type { CompetitionInput } from '@/lib/facts/commands'
import { parseDayFile } from '@/lib/facts/day-file'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { scoreDay } from '@/lib/rules/score-day'
import { arrangePairings } from '@/lib/society/arrange-pairings'
import { arrangeSides, makeSides } from '@/lib/society/arrange-sides'
import { arrangeTeams, makeTeams } from '@/lib/society/arrange-teams'
import { endMatch } from '@/lib/society/end-match'
import { enterPlayers } from '@/lib/society/enter-players'
import { deliverFacts, keyCard } from '@/lib/society/enter-score'
import { dayFileOf } from '@/lib/society/export-day'
import { handicapTable } from '@/lib/society/freeze-handicaps'
import { keyBall } from '@/lib/society/key-ball'
import { arrangeGroups } from '@/lib/society/make-draw'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got, LEVEL, over, published } from '../scoring/day-in-play'

const NOW = new Date('2031-06-14T15:00:00Z')

const competition = (name: string, format: string, more: object = {}): CompetitionInput => ({
  name,
  format,
  terms: {
    allowance: 100,
    allowanceFrom: 'house-choice',
    ties: PUBLISHED_COUNTBACK,
    guests: 'guest-prize-only',
    ...more,
  },
  prizes: [],
})

async function fileAndBoardAgree(day: Pick<DayInPlay, 'w' | 'dayId' | 'record'>) {
  const { dayFile } = got(await dayFileOf(day.w.actor, day.dayId))
  const read = parseDayFile(JSON.parse(JSON.stringify(dayFile)))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  const board = boardOf(await day.record(), NOW)
  const results = scoreDay(read.value)
  for (const [at, one] of board.competitions.entries()) {
    expect(one.rows.map((row) => [row.entrant, row.score])).toEqual(
      results[at]!.standings.map((standing) => [standing.entrant, standing.score]),
    )
    expect(one.matches.map((match) => [match.id, match.winner, match.holes])).toEqual(
      (results[at]!.matches ?? []).map((match) => [match.id, match.winner, match.holes]),
    )
  }
  return board
}

let day: DayInPlay
const at = async () => ({ dayId: day.dayId, version: await day.version() })

beforeAll(async () => {
  day = await dayInPlay({
    competitions: [competition('Singles match', 'match'), competition('Four-ball match', 'four-ball-match')],
  })
}, 60_000)
afterAll(() => day.close())

describe('a day of matches', () => {
  it('is paired by its draw: the two sides of a group in four-ball, in singles nobody against the own partner', async () => {
    const [singles, four] = (await day.record()).competitions
    const [first] = [day.players(1)]
    expect(singles!.sides).toEqual([])
    expect(singles!.pairings.slice(0, 2).map(({ a, b }) => [a, b])).toEqual([
      [first[0], first[2]],
      [first[1], first[3]],
    ])
    expect(four!.sides.slice(0, 2).map((side) => side.entryIds)).toEqual([first.slice(0, 2), first.slice(2, 4)])
    expect(four!.pairings.map(({ a, b }) => [a, b])).toEqual([
      [four!.sides[0]!.id, four!.sides[1]!.id],
      [four!.sides[2]!.id, four!.sides[3]!.id],
    ])
  })

  it('says on the start sheet who plays against whom, and gives the card the strokes of the match', async () => {
    const record = await day.record()
    const [one] = startSheetOf(record, { withCodes: false }).groups[0]!.players
    expect(one!.side).toMatch(/^against \S+/)
    const { a, b } = record.competitions[0]!.pairings[0]!
    const strokes = printedCards(record)
      .cards.filter(({ entryId }) => entryId === a || entryId === b)
      .map((card) => card.playingHandicap)
    expect(Math.min(...strokes)).toBe(0)
  })

  it('says on paper and phone where strokes fall in the four-ball: the dots are those of the singles', async () => {
    const record = await day.record()
    const [group] = record.groups
    const pack = groupPack(record, group!)
    const four = pack.matches!.find((one) => one.competition === 'Four-ball match')!
    const { cards } = printedCards(record)
    const table = got(await handicapTable(day.w.actor, day.dayId))
    const off = (id: string) => Number(table.rows.find((row) => row.entryId === id)!.unrounded)
    // The lowest of the four plays off nothing, the others receive the whole difference (Rules of Golf 23.2; allowance of this
    // day 100 %), rounded at the end. On tees of different par the engine's own figure stands: it has cases of its own.
    const parOf = (id: string) => cards.find((one) => one.entryId === id)!.holes.reduce((sum, { par }) => sum + par, 0)
    const isLevel = new Set(group!.entryIds.map(parOf)).size === 1
    const lowest = Math.min(...group!.entryIds.map(off))
    for (const id of group!.entryIds) {
      const more = Math.round(off(id) - lowest)
      const paper = cards.find((one) => one.entryId === id)!
      const line = paper.matchStrokes?.find((one) => one.startsWith('Four-ball match, against '))
      const phone = strokesSaid(four, pack.cards.find((one) => one.entryId === id)!)
      const byHand = paper.holes.map((hole) => Math.floor(more / 18) + (hole.strokeIndex <= more % 18 ? 1 : 0))
      const on = isLevel ? byHand : strokesOf(four.match, id)!
      if (on.every((one, at) => one === paper.holes[at]!.strokes)) {
        expect(phone).toEqual([])
        continue
      }
      const words = strokesInWords(
        on,
        paper.holes.map(({ hole }) => hole),
      )
      expect(line).toContain(`: ${words}.`)
      expect(phone).toEqual([`Four-ball match: ${words}.`])
      expect(paper.matchStrokes).toHaveLength(2)
    }
    expect(cards.filter((one) => one.matchStrokes).length).toBeGreaterThan(1)
  })

  it('is repaired by hand, and a pairing that stays keeps its end', async () => {
    const record = await day.record()
    const singles = record.competitions[0]!
    const [kept] = singles.pairings
    got(
      await endMatch(day.w.actor, {
        ...(await at()),
        competitionId: singles.id,
        matchId: kept!.id,
        ending: { concededHoles: [{ hole: 1, to: 'a' }] },
      }),
    )
    const [, , c, d] = day.players(1)
    const [e, f] = day.players(2)
    const twisted = [
      { a: kept!.a, b: kept!.b },
      { a: c!, b: e! },
      { a: d!, b: f! },
    ]
    got(await arrangePairings(day.w.actor, { ...(await at()), competitionId: singles.id, pairings: twisted }))
    const after = (await day.record()).competitions[0]!.pairings
    expect(after.map(({ a, b }) => ({ a, b }))).toEqual(twisted)
    expect(after[0]).toMatchObject({ id: kept!.id, ending: { concededHoles: [{ hole: 1, to: 'a' }] } })
    const refusedTwice = await arrangePairings(day.w.actor, {
      ...(await at()),
      competitionId: singles.id,
      pairings: [twisted[0]!, { a: kept!.b, b: kept!.a }],
    })
    expect(refusedTwice).toMatchObject({ ok: false, faults: [{ place: 'pairings[1]' }] })
    got(await arrangePairings(day.w.actor, { ...(await at()), competitionId: singles.id, pairings: null }))
    expect((await day.record()).competitions[0]!.pairings).toHaveLength(4)
  })

  it('counts one and a half for the teams, and the day file says the same', async () => {
    const first = (await day.record()).competitions[0]!.pairings
    got(
      await arrangeTeams(day.w.actor, {
        ...(await at()),
        teams: [
          { name: 'Heath', entryIds: first.map((one, at) => asId(at % 2 === 0 ? one.a : one.b)) },
          { name: 'Links', entryIds: first.map((one, at) => asId(at % 2 === 0 ? one.b : one.a)) },
        ],
      }),
    )
    for (const [number, { a, b }] of first.entries()) {
      got(
        await keyCard(day.w.actor, { dayId: day.dayId, cardId: asId(day.cardOf(asId(a))), scores: over(number * 30) }),
      )
      got(await keyCard(day.w.actor, { dayId: day.dayId, cardId: asId(day.cardOf(asId(b))), scores: over(45) }))
    }
    const endings = [{ concededBy: 'a' as const }, { walkover: 'b' as const }, { abandoned: true }, {}]
    for (const [number, ending] of endings.entries())
      got(
        await endMatch(day.w.actor, {
          ...(await at()),
          competitionId: (await day.record()).competitions[0]!.id,
          matchId: first[number]!.id,
          ending,
        }),
      )
    const board = await fileAndBoardAgree(day)
    const matches = board.competitions[0]!.matches
    expect(matches.slice(0, 2).map((match) => [match.winner, match.result])).toEqual([
      [first[0]!.b, 'conceded'],
      [first[1]!.b, 'walkover'],
    ])
    const links = board.competitions[0]!.teams!.find((one) => one.name === 'Links')!
    expect(links.halfPoints).toBe(
      matches.reduce(
        (sum, match, at) =>
          sum +
          (match.winner === (at % 2 === 0 ? match.b : match.a) ? 2 : match.winner === null && match.finished ? 1 : 0),
        0,
      ),
    )
    const both = board.competitions[0]!.teams!.reduce((sum, team) => sum + team.halfPoints, 0)
    expect(both).toBe(2 * matches.filter((one) => one.finished && one.result !== 'no result').length)
    // Pairs drawn before there were teams have a player of each: their matches count for neither.
    expect(board.teams!.map((team) => team.halfPoints).sort()).toEqual(
      board.competitions[0]!.teams!.map((team) => team.halfPoints).sort(),
    )
    expect(board.sentence).toMatch(/leads|level|won the match|halve/)
  })

  it('shares the field out the same way for the same number', async () => {
    const shared = async (seed: number) => {
      got(await makeTeams(day.w.actor, { ...(await at()), names: ['Heath', 'Links'], seed }))
      return (await day.record()).teams.map((team) => team.entryIds)
    }
    const once = await shared(7)
    expect(once.map((ids) => ids.length)).toEqual([4, 4])
    expect(await shared(7)).toEqual(once)
  })

  it('refuses an end that contradicts itself and a match that is not there', async () => {
    const { id, pairings } = (await day.record()).competitions[0]!
    const end = async (matchId: string, ending: object) =>
      endMatch(day.w.actor, { ...(await at()), competitionId: id, matchId, ending })
    expect(await end(pairings[0]!.id, { walkover: 'a', concededBy: 'a' })).toMatchObject({ code: 'not-understood' })
    expect(await end('nobody', {})).toMatchObject({ code: 'not-found' })
  })
})

describe('sides and their ball', () => {
  it('a scramble has one card a side, counts its drives and says when the minimum is out of reach', async () => {
    const scramble = await published(day.w, 'fernbrake', {
      name: 'Scramble',
      competitions: [competition('Texas', 'scramble-4', { allowance: [25, 20, 15, 10], minimumDrives: 4 })],
    })
    const record = await scramble.record()
    expect(new Set(record.cards.map((card) => card.entryId))).toEqual(
      new Set(record.competitions[0]!.sides.map((side) => side.entryIds[0])),
    )
    const side = record.competitions[0]!.sides[0]!
    const [first, second, third, fourth] = side.entryIds
    const cardId = scramble.cardOf(first!)
    const common = { cardId, sideId: side.id, writer: second!, writtenAt: '2031-06-14T10:00:00Z' }
    const phone = { deviceId: 'a-phone-of-the-scramble' }
    const answer = got(
      await deliverFacts(scramble.scorer(1), {
        ...phone,
        facts: [
          { kind: 'score', seq: 1, cardId, writer: second, writtenAt: common.writtenAt, hole: 1, score: 4 },
          { kind: 'drive', seq: 2, ...common, hole: 1, entryId: second },
          { kind: 'drive', seq: 3, ...common, hole: 2, entryId: 'nobody of the side' },
          { kind: 'drive', seq: 4, ...common, sideId: 'another side', hole: 2, entryId: third },
          { kind: 'drive', seq: 5, ...common, hole: 18, entryId: third },
        ],
      }),
    )
    expect(answer.answers.map((one) => one.answer)).toEqual(['received', 'received', 'refused', 'refused', 'received'])
    const repeat = got(
      await deliverFacts(scramble.scorer(1), {
        ...phone,
        facts: [{ kind: 'drive', seq: 3, ...common, hole: 2, entryId: 'nobody of the side' }],
      }),
    )
    expect(repeat.answers).toEqual([answer.answers[2]])
    const pack = groupPack(await scramble.record(), record.groups[0]!)
    expect(pack.cards).toHaveLength(1)
    expect(pack.cards[0]!.sharedWith).toHaveLength(3)
    expect(pack.balls).toMatchObject([{ kind: 'drives', minimum: 4, sideId: side.id }])
    expect(pack.balls![0]!.drives[0]).toBe(second)

    got(await keyBall(day.w.actor, { dayId: scramble.dayId, sideId: side.id, drives: Array(15).fill(fourth) }))
    const board = await fileAndBoardAgree(scramble)
    const drives = board.competitions[0]!.rows.find((row) => row.entrant === side.id)!.drives!
    expect(drives.counts.map((one) => one.taken)).toEqual([0, 0, 1, 15])
    expect(drives).toMatchObject({ minimum: 4, outOfReach: true })
    expect(drives.sentence).toMatch(/cannot be reached/)
  })

  it('a yellow ball goes round in the side’s order and is lost from the hole on', async () => {
    const yellow = await published(day.w, 'fernbrake', {
      name: 'Yellow',
      competitions: [competition('Ball', 'yellow-ball', { allowance: 85 })],
    })
    const record = await yellow.record()
    const side = record.competitions[0]!.sides[0]!
    for (const entryId of side.entryIds)
      got(await keyCard(day.w.actor, { dayId: yellow.dayId, cardId: asId(yellow.cardOf(entryId)), scores: [...LEVEL] }))
    const scoreOf = async () =>
      (await fileAndBoardAgree(yellow)).competitions[0]!.rows.find((row) => row.entrant === side.id)!.score!
    const home = await scoreOf()
    got(await keyBall(day.w.actor, { dayId: yellow.dayId, sideId: side.id, ballLostOn: 10 }))
    const lost = await scoreOf()
    expect(lost).toBeLessThan(home)
    const [ball] = groupPack(await yellow.record(), record.groups[0]!).balls!
    expect(ball).toMatchObject({ lost: [10], cost: expect.stringMatching(/^Once the named ball is lost/) })
    // Four in the side: the 10th is the second's again. Said on board and card page, and before it on the printed card.
    const second = record.entries.find((one) => one.id === side.entryIds[1])!.familyName
    const rowNow = async () =>
      boardOf(await yellow.record(), NOW).competitions[0]!.rows.find((row) => row.entrant === side.id)!
    expect((await rowNow()).note).toMatch(new RegExp(`^yellow ball lost on the 10th by .*${second}$`))
    const printed = printedCards(record).cards.find((card) => side.entryIds.includes(card.entryId))!
    expect(printed.carriers?.[9]).toContain(second)
    expect(printed.carriers?.[13]).toBe(printed.carriers?.[1])
    got(await keyBall(day.w.actor, { dayId: yellow.dayId, sideId: side.id, ballLostOn: null }))
    expect(await scoreOf()).toBe(home)
    expect((await rowNow()).note).toBe('yellow ball still in play')
    // The other order of the same players is the same side: its ball stays with it.
    got(await keyBall(day.w.actor, { dayId: yellow.dayId, sideId: side.id, ballLostOn: 4 }))
    const others = record.competitions[0]!.sides.slice(1).map((one) => [...one.entryIds])
    got(
      await arrangeSides(day.w.actor, {
        dayId: yellow.dayId,
        version: await yellow.version(),
        competitionId: record.competitions[0]!.id,
        sides: [[...side.entryIds].reverse(), ...others],
      }),
    )
    const after = (await yellow.record()).competitions[0]!.sides[0]!
    expect(after).toMatchObject({ id: side.id, entryIds: [...side.entryIds].reverse() })
    // Called something by the desk: on the board with its players beside it, on the phone and in the day file.
    const { competitions, version } = await yellow.record()
    const sides = competitions[0]!.sides.map((one) => [...one.entryIds])
    const named = { dayId: yellow.dayId, version, competitionId: competitions[0]!.id, sides }
    const twice = await arrangeSides(day.w.actor, { ...named, names: ['Larks', 'Larks'] })
    expect(twice).toMatchObject({ ok: false, faults: [{ place: 'name-2' }] })
    got(await arrangeSides(day.w.actor, { ...named, names: ['Larks', ''] }))
    expect((await rowNow()).name).toBe('Larks')
    expect((await rowNow()).note).toContain(second)
    const { dayFile } = got(await dayFileOf(day.w.actor, yellow.dayId))
    expect(JSON.stringify(dayFile)).toContain('"name":"Larks"')
    expect(groupPack(await yellow.record(), record.groups[0]!).balls![0]!.name).toBe('Larks')
  })

  it('sides of six stand across two groups, even by handicap and the same for the same number', async () => {
    const six = await published(day.w, 'fernbrake', {
      name: 'Six',
      competitions: [competition('Best three', 'best-3-of-6-stableford'), competition('Skins', 'skins')],
    })
    const made = async (seed: number) => {
      const { competitions, version } = await six.record()
      got(await makeSides(day.w.actor, { dayId: six.dayId, version, competitionId: competitions[0]!.id, seed }))
      return (await six.record()).competitions[0]!.sides.map((side) => side.entryIds)
    }
    const once = await made(3)
    expect(once.map((ids) => ids.length)).toEqual([4, 4])
    expect(await made(3)).toEqual(once)
    // Two of each in every group: such sides are not made inside the groups, and stay.
    const [one, two] = once
    got(
      await arrangeGroups(day.w.actor, {
        dayId: six.dayId,
        version: await six.version(),
        groups: [0, 2].map((from) => ({ entryIds: [...one!.slice(from, from + 2), ...two!.slice(from, from + 2)] })),
      }),
    )
    expect((await six.record()).competitions[0]!.sides.map((side) => side.entryIds)).toEqual(once)
    for (const entryId of once.flat())
      got(
        await keyCard(day.w.actor, {
          dayId: six.dayId,
          cardId: asId(six.cardOf(entryId)),
          scores: over(once.flat().indexOf(entryId) * 4),
        }),
      )
    const board = await fileAndBoardAgree(six)
    expect(board.competitions[1]!.shared!.map((one) => one.groupNumber)).toEqual([1, 2])
  })
})

describe('a walkover that was given', () => {
  it('stays when the loser is taken out, of a pair as of a single player, and when groups and pairings are kept again', async () => {
    const away = await published(day.w, 'fernbrake', {
      name: 'Walkovers',
      competitions: [competition('Singles', 'match'), competition('Four-ball', 'four-ball-match')],
    })
    const at = async () => ({ dayId: away.dayId, version: await away.version() })
    const before = await away.record()
    const [singles, pairs] = before.competitions
    const lost = singles!.pairings[0]!
    const lostPair = pairs!.pairings.find(({ a, b }) =>
      pairs!.sides.some((side) => [a, b].includes(side.id) && side.entryIds.includes(asId(lost.b))),
    )!
    const losing = pairs!.sides.find((side) => side.entryIds.includes(asId(lost.b)))!
    const end = losing.id === lostPair.a ? 'b' : 'a'
    got(
      await endMatch(day.w.actor, {
        ...(await at()),
        competitionId: singles!.id,
        matchId: lost.id,
        ending: { walkover: 'a' },
      }),
    )
    got(
      await endMatch(day.w.actor, {
        ...(await at()),
        competitionId: pairs!.id,
        matchId: lostPair.id,
        ending: { walkover: end },
      }),
    )
    const stays = async () => {
      const record = await away.record()
      const [one, two] = boardOf(record, NOW).competitions
      expect(one!.matches.find(({ id }) => id === lost.id)).toMatchObject({ winner: lost.a, result: 'walkover' })
      expect(two!.matches.find(({ id }) => id === lostPair.id)).toMatchObject({
        winner: lostPair[end],
        result: 'walkover',
      })
      return record
    }
    await stays()
    const gone = before.entries.filter((entry) => losing.entryIds.includes(entry.id)).map((entry) => entry.id)
    got(await enterPlayers(day.w.actor, { ...(await at()), enter: [], withdraw: gone }))
    const after = await stays()
    got(
      await arrangeGroups(day.w.actor, {
        ...(await at()),
        groups: [...after.groups].reverse().map(({ entryIds }) => ({ entryIds: [...entryIds] })),
      }),
    )
    const moved = await stays()
    const again = moved.competitions[0]!.pairings.map(({ a, b }) => ({ a, b }))
    expect(again).toContainEqual({ a: lost.a, b: lost.b })
    got(await arrangePairings(day.w.actor, { ...(await at()), competitionId: singles!.id, pairings: again }))
    await stays()
  })
})
