// Promise: a code is read however it is typed, ends with the day or at a renewal, and cannot be tried at a useful rate:
// not from one address, and not from many together.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { renewGroupLink } from '@/lib/society/publish-start'
import { groupLinkOfCode, scorerOf } from '@/lib/society/who-is-asking'
import { type DayInPlay, dayInPlay, got } from '../scoring/day-in-play'

let day: DayInPlay
beforeAll(async () => {
  day = await dayInPlay()
})
afterAll(() => day.close())

const at = (minutes: number) => new Date(Date.parse('2031-06-14T09:00:00Z') + minutes * 60_000)

describe('a group’s code', () => {
  it('has a word and six figures, and is taken as people type it', async () => {
    const { code, linkKey } = (await day.record()).groups[0]!
    expect(code).toMatch(/^[a-z]+ \d{6}$/)
    const [word = '', figures = ''] = code.split(' ')
    for (const typed of [
      code,
      code.toUpperCase(),
      `${word}${figures}`,
      ` ${word}-${figures.slice(0, 3)} ${figures.slice(3)} `,
    ])
      expect(got(await groupLinkOfCode(typed, 'the first tee', at(0))).linkKey).toBe(linkKey)
  })

  it('ends with the day after, and at once when the desk renews it', async () => {
    const [first, second] = (await day.record()).groups
    expect(await groupLinkOfCode(second!.code, 'home', new Date('2031-06-16T00:30:00Z'))).toMatchObject({
      code: 'link-ended',
    })
    got(await renewGroupLink(day.w.actor, { dayId: day.dayId, groupId: first!.id }))
    expect(await groupLinkOfCode(first!.code, 'here', at(20))).toMatchObject({ code: 'no-such-code' })
    expect(await scorerOf(first!.linkKey, at(20))).toMatchObject({ code: 'no-such-link' })
  })

  it('is refused after thirty tries from one place, right or wrong, for ten minutes', async () => {
    const { code } = (await day.record()).groups[1]!
    for (let tried = 0; tried < 30; tried++) await groupLinkOfCode(`fern ${tried}`, 'one place', at(40))
    expect(await groupLinkOfCode(code, 'one place', at(41))).toMatchObject({ code: 'too-many-tries' })
    expect((await groupLinkOfCode(code, 'another place', at(41))).ok).toBe(true)
    expect((await groupLinkOfCode(code, 'one place', at(52))).ok).toBe(true)
  })

  it('is refused to everybody after 120 wrong ones from anywhere, while the link on the sheet still opens', async () => {
    const { code, linkKey } = (await day.record()).groups[1]!
    for (let tried = 0; tried < 120; tried++) await groupLinkOfCode(`fern ${tried}`, `made up ${tried}`, at(100))
    expect(await groupLinkOfCode(code, 'a player', at(101))).toMatchObject({ code: 'too-many-tries' })
    expect((await scorerOf(linkKey, at(101))).ok).toBe(true)
    expect((await groupLinkOfCode(code, 'a player', at(111))).ok).toBe(true)
  })

  it('is taken by its figures where the word is nearly right, or missing', async () => {
    const { code, linkKey } = (await day.record()).groups[1]!
    const [word = '', figures = ''] = code.split(' ')
    const slips = [`${word.slice(0, -1)}`, `${word}e`, `${word.slice(0, -1)}q`].map((slip) => `${slip} ${figures}`)
    for (const typed of [...slips, figures, `${figures.slice(0, 3)} ${figures.slice(3)}`])
      expect(got(await groupLinkOfCode(typed, 'the second tee', at(200))).linkKey, typed).toBe(linkKey)
    const wrong = `${figures.startsWith('0') ? '1' : '0'}${figures.slice(1)}`
    for (const typed of [`${word} ${wrong}`, wrong, figures.slice(1)])
      expect(await groupLinkOfCode(typed, 'the second tee', at(200))).toMatchObject({ code: 'no-such-code' })
  })

  it('does not help somebody who guesses: after a few wrong figures the word is asked for, from everybody', async () => {
    const { code, linkKey } = (await day.record()).groups[1]!
    const [word = '', figures = ''] = code.split(' ')
    const guesses = Array.from({ length: 12 }, (_, tried) => `${900_000 + tried}`).filter((guess) => guess !== figures)
    for (const [tried, guess] of guesses.entries()) await groupLinkOfCode(guess, `guessing from ${tried}`, at(400))
    expect(await groupLinkOfCode(figures, 'a player', at(401))).toMatchObject({
      code: 'no-such-code',
      sentence: expect.stringContaining('Type the word'),
    })
    expect(got(await groupLinkOfCode(code, 'a player', at(401))).linkKey).toBe(linkKey)
    expect(got(await groupLinkOfCode(`${word}e ${figures}`, 'a player', at(401))).linkKey).toBe(linkKey)
    expect((await groupLinkOfCode(figures, 'a player', at(465))).ok).toBe(true)
  })

  it('does not open an ended or unpublished group by its figures', async () => {
    const { code } = (await day.record()).groups[1]!
    const figures = code.split(' ')[1]!
    expect(await groupLinkOfCode(figures, 'home', new Date('2031-06-16T00:30:00Z'))).toMatchObject({ ok: false })
    const later = at(60 * 24 * 30)
    expect(await groupLinkOfCode(`heron ${figures}`, 'home', later)).toMatchObject({ code: 'no-such-code' })
  })
})
