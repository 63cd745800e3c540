// Promise: a hole or a match conceded on a phone stands in the book once, from whichever phone and however often it comes,
// with who wrote it; after a card is handed in it is kept and does not count.
import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { groupPack } from '@/lib/boards/group-pack'
import type { CompetitionInput } from '@/lib/facts/commands'
import type { DeviceId, EntryId } from '@/lib/facts/ids'
import type { DeviceFact } from '@/lib/facts/score-fact'
import { PUBLISHED_COUNTBACK } from '@/lib/facts/terms'
import { endMatch } from '@/lib/society/end-match'
import { deliverFacts } from '@/lib/society/enter-score'
import { readRecord } from '@/lib/society/read-record'
import { asId } from '../../setup/ids'
import { type DayInPlay, dayInPlay, got } from '../scoring/day-in-play'

const NOW = new Date('2031-06-14T14:05:00Z')
const singles: CompetitionInput = {
  name: 'Singles',
  format: 'match',
  terms: { allowance: 100, allowanceFrom: 'house-choice', ties: PUBLISHED_COUNTBACK, guests: 'guest-prize-only' },
  prizes: [],
}

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay({ competitions: [singles] })
}, 60_000)
afterAll(() => day.close())

const pairing = async (at = 0) => (await day.record()).competitions[0]!.pairings[at]!
const newPhone = () => asId<DeviceId>(`phone-${randomUUID()}`)

interface Said {
  readonly hole: number | null
  readonly by: 'a' | 'b' | null
}

async function conceded(seq: number, { hole, by }: Said, at = 0, writer?: EntryId): Promise<DeviceFact> {
  const { id, a } = await pairing(at)
  return {
    kind: 'concession',
    seq,
    cardId: asId(day.cardOf(asId(a))),
    writer: writer ?? asId(a),
    writtenAt: '2031-06-14T10:00:00Z',
    matchId: id,
    hole,
    by,
  }
}

const send = (deviceId: DeviceId, facts: readonly DeviceFact[], group = 1) =>
  deliverFacts(day.scorer(group), { deviceId, facts: [...facts] }, NOW).then(got)

describe('conceding on a phone', () => {
  const phone = newPhone()

  it('writes the hole into the ending of the match, for board, desk and every phone', async () => {
    const fact = await conceded(1, { hole: 4, by: 'a' })
    expect((await send(phone, [fact])).answers).toEqual([{ seq: 1, answer: 'received' }])
    expect((await pairing()).ending).toEqual({ concededHoles: [{ hole: 4, to: 'b' }] })
    const record = await day.record()
    const [first] = groupPack(record, record.groups[0]!).matches!
    expect(first!.match.conceded).toEqual([[4, -1]])
  })

  it('is told again without being done again', async () => {
    const before = (await day.record()).scoreVersion
    const fact = await conceded(1, { hole: 4, by: 'a' })
    expect((await send(phone, [fact])).answers).toEqual([{ seq: 1, answer: 'received' }])
    expect((await day.record()).scoreVersion).toBe(before)
  })

  it('counts once from two phones, and the newest word counts', async () => {
    const other = newPhone()
    const { b } = await pairing()
    await send(other, [await conceded(1, { hole: 4, by: 'a' }, 0, asId(b))])
    expect((await pairing()).ending).toEqual({ concededHoles: [{ hole: 4, to: 'b' }] })
    await send(other, [
      await conceded(2, { hole: 4, by: null }, 0, asId(b)),
      await conceded(3, { hole: null, by: 'b' }),
    ])
    expect((await pairing()).ending).toEqual({ concededBy: 'b' })
  })

  it('says in the record of acts who wrote it, and once where two phones said the same', async () => {
    const { lines } = got(await readRecord(day.w.actor, {}))
    const ended = lines.filter((one) => one.act === 'end-match')
    expect(ended).toHaveLength(3)
    const { a } = await pairing()
    const name = (await day.record()).entries.find((one) => one.id === a)!.familyName
    expect(ended.at(-1)).toMatchObject({ who: 'Group 1', did: 'changed how a match ended' })
    const written = ended.at(-1)!.changes.map(({ what, after }) => `${what}: ${after}`)
    expect(written[0]).toMatch(/^Ending: hole 4 to /)
    expect(written[1]).toMatch(new RegExp(`^Written by: .*${name}`))
  })

  it('makes the cards complete: conceded, signed and handed in without a signal between', async () => {
    const { a, b } = await pairing(1)
    const alone = newPhone()
    const scores = Array.from({ length: 18 }, () => null)
    const signed = (seq: number, entryId: EntryId, role: 'player' | 'marker', by: EntryId): DeviceFact => ({
      kind: 'signature',
      seq,
      cardId: asId(day.cardOf(entryId)),
      writer: by,
      writtenAt: '2031-06-14T14:00:00Z',
      role,
      scores,
    })
    const [one, two] = [asId<EntryId>(a), asId<EntryId>(b)]
    const marker = (await day.record()).cards.find((card) => card.entryId === one)!.markerId!
    const answers = (
      await send(alone, [
        await conceded(1, { hole: null, by: 'a' }, 1),
        signed(2, one, 'player', one),
        signed(3, one, 'marker', marker),
      ])
    ).answers
    expect(answers.map((each) => each.answer)).toEqual(['received', 'received', 'received'])
    expect((await day.record()).cards.find((card) => card.entryId === one)?.state).toBe('handed-in')
    expect(two).not.toBe(one)
  })

  it('comes late once a card of the match is handed in, and leaves the ending alone', async () => {
    const late = newPhone()
    const fact = await conceded(1, { hole: null, by: null }, 1)
    const [answer] = (await send(late, [fact])).answers
    expect(answer).toMatchObject({ answer: 'late', sentence: expect.stringMatching(/handed in/) })
    expect((await send(late, [fact])).answers).toMatchObject([{ answer: 'late' }])
    expect((await pairing(1)).ending).toEqual({ concededBy: 'a' })
  })

  it('is refused for a match of another group, for a hole that is not there, and where the desk ended the match', async () => {
    const phoneThere = newPhone()
    const elsewhere = await pairing(2)
    const mine = await conceded(1, { hole: 5, by: 'a' })
    const refusals = await send(phoneThere, [
      { ...mine, matchId: elsewhere.id } as DeviceFact,
      { ...mine, seq: 2, matchId: 'nowhere' } as DeviceFact,
    ])
    expect(refusals.answers).toMatchObject([{ code: 'no-such-match' }, { code: 'no-such-match' }])
    const { id } = await pairing()
    got(
      await endMatch(day.w.actor, {
        dayId: day.dayId,
        version: await day.version(),
        competitionId: (await day.record()).competitions[0]!.id,
        matchId: id,
        ending: { walkover: 'b' },
      }),
    )
    expect((await send(phoneThere, [await conceded(3, { hole: 5, by: 'a' })])).answers).toMatchObject([
      { code: 'match-ended' },
    ])
  })

  it('is not written over by a form of the desk that was filled before it', async () => {
    const { id, ending } = await pairing(2)
    const was = JSON.stringify(ending)
    const { a } = await pairing(2)
    await send(newPhone(), [await conceded(1, { hole: 2, by: 'a' }, 2, asId(a))], 2)
    const form = { dayId: day.dayId, version: await day.version(), matchId: id, ending: { abandoned: true } }
    const competitionId = (await day.record()).competitions[0]!.id
    expect(await endMatch(day.w.actor, { ...form, competitionId, was })).toMatchObject({
      ok: false,
      code: 'match-moved-on',
      sentence: expect.stringContaining('hole 2 to '),
    })
    expect((await pairing(2)).ending).toEqual({ concededHoles: [{ hole: 2, to: 'b' }] })
  })
})
