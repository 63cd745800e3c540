// A hundred thousand spoilt day files: reading one never throws and never hangs; it is refused with every fault in its
// place, or it is a day that makes sense and can be scored.
import { describe, expect, test } from 'vitest'
import { parseDayFile, writeDayFile } from '@/lib/facts/day-file'
import type { Day } from '@/lib/rules/day'
import { FORMATS } from '@/lib/rules/formats/catalogue'
import { scoreDay } from '@/lib/rules/score-day'
import { fourCards } from './four-cards'
import { chanceFrom } from './reference/chance'
import { randomDay } from './reference/random-day'
import { richDay } from './rich-day'
import { type Json, spoil } from './spoil'

const MUTATIONS = Number(process.env.FUZZ_MUTATIONS ?? 20_000)
/** Generous, because the machine may be busy with something else. */
const SECONDS_A_FILE = 20

/** Small valid files of every kind, as text, so that each mutation starts from a fresh copy. */
function goodFiles(): string[] {
  const singles = ['stableford', 'medal', 'maximum-score'].map((format) => ({ id: format, format }))
  const match = { id: 'match', format: 'match', matches: [{ id: 'm1', a: 'p1', b: 'p2' }] }
  const pairs = ['four-ball-stableford', 'four-ball-par'].map((format) => ({ id: format, format }))
  const made = Array.from({ length: 16 }, (_, at) =>
    randomDay(
      at + 1,
      at % 2 === 0 ? { competitions: [...singles, match], sideSize: 1 } : { competitions: pairs, sideSize: 2 },
    ),
  )
  const short = made.filter((day) => day.tees[0]!.holes.length === 9)
  // The rich one three times, so that rare terms are spoilt often enough.
  const rich = JSON.stringify(richDay())
  return [JSON.stringify(fourCards()), rich, rich, rich, ...short.map((day) => JSON.stringify(writeDayFile(day)))]
}

/** Everything that would make a day nonsense, found without the reader's help. */
function nonsense(day: Day): string[] {
  const found: string[] = []
  const say = (when: boolean, what: string) => when && found.push(what)
  const ids = (list: readonly { readonly id: string }[]) => list.map((one) => one.id)
  const twice = (list: readonly string[]) => new Set(list).size !== list.length
  const tees = new Map(day.tees.map((tee) => [tee.id, tee]))
  const players = new Set(ids(day.players))
  const sides = new Set(ids(day.sides))
  const absent = new Set(ids(day.absent ?? []))
  say(
    [...absent].some((one) => players.has(one) || sides.has(one)),
    'somebody absent who plays',
  )
  const whole = (n: unknown, low: number, high: number) => Number.isInteger(n) && Number(n) >= low && Number(n) <= high
  say(
    twice(ids(day.tees)) || twice(ids(day.players)) || twice(ids(day.sides)) || twice(ids(day.competitions)),
    'an id twice',
  )
  for (const tee of day.tees) {
    const indexes = tee.holes.map((hole) => hole.strokeIndex)
    say(tee.holes.length !== 9 && tee.holes.length !== 18, 'a tee of neither 9 nor 18 holes')
    say(twice(indexes.map(String)) || !indexes.every((one) => whole(one, 1, 18)), 'stroke indexes that are no order')
    say(!tee.holes.every((hole) => whole(hole.par, 3, 6)), 'a par that is none')
    say(!whole(tee.slopeRating, 55, 155) || !Number.isInteger(tee.courseRatingTenths), 'a rating that is none')
  }
  for (const player of day.players) {
    say(!tees.has(player.tee), 'a player on no tee')
    say(!whole(player.indexTenths, -150, 540), 'an index that is none')
  }
  say(new Set(day.players.map((player) => tees.get(player.tee)?.holes.length)).size > 1, 'rounds of two lengths')
  say(twice(day.cards.map((card) => `${card.player} ${card.round ?? 1}`)), 'two cards of a player for one round')
  for (const card of day.cards) {
    say(!players.has(card.player) && !sides.has(card.player), 'a card of nobody')
    const tee = tees.get(card.tee ?? day.players.find((one) => one.id === card.player)?.tee ?? '')
    say(tee !== undefined && card.scores.length > tee.holes.length, 'a card with more scores than holes')
    say(!card.scores.every((one) => one === null || one === 'x' || whole(one, 1, 30)), 'a score that is none')
  }
  for (const side of day.sides)
    say(!side.players.every((one) => players.has(one) || absent.has(one)) || twice(side.players), 'a side of nobody')
  const formats = new Set(FORMATS.map((one) => one.id))
  for (const competition of day.competitions) {
    say(!formats.has(competition.format) && competition.custom === undefined, 'a format that is none')
    say(!(competition.entrants ?? []).every((one) => players.has(one) || sides.has(one)), 'an entrant who is not there')
    for (const match of competition.matches ?? []) {
      say(
        match.a === match.b ||
          ![match.a, match.b].every((one) => players.has(one) || sides.has(one) || absent.has(one)),
        'a match of nobody',
      )
      say(
        [match.a, match.b].some((one) => absent.has(one)) && !match.walkover && !match.concededBy,
        'a match to be played by somebody absent',
      )
    }
  }
  return found
}

function places(document: Json, place: string): boolean {
  // A place is a path into what was read, or into a key that is missing there; or the document itself.
  return place === 'day file' || /^[^\s.[\]:]/.test(place) || Object.hasOwn(Object(document), place.split('.')[0]!)
}

describe(`${MUTATIONS} spoilt day files`, () => {
  test('are refused in their place, or make sense', () => {
    const good = goodFiles()
    for (const text of good) {
      const read = parseDayFile(JSON.parse(text))
      expect(read.ok ? [] : read.faults).toEqual([])
    }
    const wrong: string[] = []
    let refused = 0
    for (let seed = 1; seed <= MUTATIONS && wrong.length < 5; seed += 1) {
      const chance = chanceFrom(seed)
      const file = JSON.parse(chance.pick(good)) as Json
      for (let times = chance.pick([1, 1, 1, 2, 4]); times > 0; times -= 1) spoil(file, chance)
      const started = performance.now()
      try {
        const read = parseDayFile(file)
        if (read.ok) {
          const results = scoreDay(read.value)
          if (results.length !== read.value.competitions.length)
            wrong.push(`seed ${seed}: a competition without a result`)
          for (const what of nonsense(read.value)) wrong.push(`seed ${seed}: took ${what}`)
        } else {
          refused += 1
          if (read.faults.length === 0) wrong.push(`seed ${seed}: refused without a fault`)
          for (const { place, sentence } of read.faults) {
            if (!places(file, place) || sentence.length < 5)
              wrong.push(`seed ${seed}: a fault nowhere: ${place}: ${sentence}`)
            if (/undefined|\[object|NaN|Invalid input/.test(sentence.replace(/“.*?”/gs, '')))
              wrong.push(`seed ${seed}: not for a golfer: ${place}: ${sentence}`)
          }
        }
      } catch (failure) {
        wrong.push(`seed ${seed}: threw ${failure instanceof Error ? failure.message : String(failure)}`)
      }
      if (performance.now() - started > SECONDS_A_FILE * 1000)
        wrong.push(`seed ${seed}: took more than ${SECONDS_A_FILE} s`)
    }
    expect(wrong).toEqual([])
    // Spoiling must have been worth the name, and must have left something to score.
    expect(refused).toBeGreaterThan(MUTATIONS / 2)
    expect(refused).toBeLessThan(MUTATIONS)
    expect(Object.getOwnPropertyNames(Object.prototype)).not.toContain('polluted')
  }, 300_000)
})

describe('documents that are no day file at all', () => {
  const deep = JSON.parse(`${'['.repeat(5000)}${']'.repeat(5000)}`) as Json
  test.each([null, true, 0, '', 'day', [], {}, [[]], { dayFile: 1 }, deep].map((one) => [one]))('%#', (document) => {
    const read = parseDayFile(document)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.faults.length).toBeGreaterThan(0)
  })
})
