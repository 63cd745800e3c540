// Promise: three people who have never met their machines before see one truth. The secretary watches the returns at the
// desk, a player enters on a phone 360 px wide, somebody at home watches the board; a score is on the board within a
// second of being received, the card is signed and accepted, and the score command agrees with the board on the day file.

import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { DayBoard } from '@/lib/boards/views'
import type { CardPack } from '@/lib/facts/card-pack'
import { OFFICERS, PASSWORD } from '@/seed/members'
import { chooseHolder } from './holder'
import { quietGroups } from './quiet-groups'
import { scoreFile } from './score-file'
import { expect, type Page, test } from './walk'

interface Scored {
  readonly results: readonly {
    readonly competition: string
    readonly standings: readonly {
      readonly place: number | null
      readonly tied: boolean
      readonly entrant: string
      readonly playingHandicap: number | null
      readonly score: number | null
      readonly holesPlayed: number
    }[]
  }[]
}

const holesPlayed = (board: Page, name: string) =>
  board.getByRole('row').filter({ hasText: name }).getByRole('cell').nth(3)

test('a score goes from the phone to the board and the desk, and the card is accepted', async ({ browser }) => {
  test.setTimeout(240_000)
  const { link, society, day } = quietGroups()[0]!
  const desk = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  const phone = await (
    await browser.newContext({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true })
  ).newPage()
  const board = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage()

  await desk.goto(`/sign-in?next=/desk/${society}/days/${day}/returns`)
  await desk.getByLabel('E-mail').fill(OFFICERS[0].email)
  await desk.getByLabel('Password').fill(PASSWORD)
  await desk.getByRole('button', { name: 'Sign in', exact: true }).click()
  await desk.waitForURL(/\/returns/)

  const pack = (await (await phone.request.get(`/api/group/${link}`)).json()) as CardPack
  const [card] = pack.cards
  if (!card) throw new Error('a group without cards')
  const name = `${card.firstName} ${card.familyName}`

  await board.goto(`/${society}/days/${day}`)
  await phone.goto(`/card/${link}`)
  await chooseHolder(phone, name)

  await test.step('the board moves within a second', async () => {
    const first = card.holes[pack.group.startHole - 1]!
    const radio = phone.getByRole('radiogroup', { name }).locator(`input[value="${first.par + first.strokes}"]`)
    await radio.click()
    await expect(phone.getByRole('status')).toContainText('All sent')
    // Generous for a busy machine that runs three browsers and the server on two cores; the bench measures the figure.
    await expect(holesPlayed(board, name)).toHaveText('1', { timeout: 5_000 })
  })

  await test.step('the rest of the card comes from the phone, both sign, the desk accepts it', async () => {
    const writer = card.entryId
    const marker = pack.cards[1]!.entryId
    const scores = card.holes.map((hole) => hole.par + hole.strokes + (hole.hole % 5 === 0 ? 1 : 0))
    const common = { cardId: card.cardId, writtenAt: new Date().toISOString() }
    const facts = [
      ...scores.map((score, at) => ({ ...common, kind: 'score', seq: at + 1, writer, hole: at + 1, score })),
      { ...common, kind: 'signature', seq: 19, writer: marker, role: 'marker', scores },
      { ...common, kind: 'signature', seq: 20, writer, role: 'player', scores },
    ]
    const sent = await phone.request.post(`/api/group/${link}/facts`, {
      data: { deviceId: 'a-second-phone-of-the-story', facts },
    })
    expect(sent.status()).toBe(200)
    expect(
      ((await sent.json()) as { answers: { answer: string }[] }).answers.every((one) => one.answer === 'received'),
    ).toBe(true)
    await expect(holesPlayed(board, name)).toHaveText('18')

    await desk.goto(`/desk/${society}/days/${day}/returns`)
    await desk
      .getByRole('link', { name: new RegExp(card.familyName) })
      .first()
      .click()
    await desk.getByRole('button', { name: 'Accept', exact: true }).click()
    await expect(desk.getByRole('link', { name: `${name}, accepted` })).toBeVisible()
  })

  await test.step('a score after that is a late fact for the desk, not lost and not counted', async () => {
    const late = await phone.request.post(`/api/group/${link}/facts`, {
      data: {
        deviceId: 'a-second-phone-of-the-story',
        facts: [
          {
            kind: 'score',
            seq: 21,
            cardId: card.cardId,
            writer: card.entryId,
            writtenAt: new Date().toISOString(),
            hole: 3,
            score: 12,
          },
        ],
      },
    })
    expect(((await late.json()) as { answers: { answer: string }[] }).answers[0]?.answer).toBe('late')
  })

  await test.step('the score command agrees with the board', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'daybook-')), 'day.json')
    writeFileSync(file, await (await desk.request.get(`/desk/${society}/days/${day}/export`)).body())
    const scored = JSON.parse(await scoreFile(file)) as Scored
    const shown = (await (await board.request.get(`/api/board/${society}/${day}`)).json()) as DayBoard
    expect(scored.results).toHaveLength(shown.competitions.length)
    for (const [at, competition] of shown.competitions.entries())
      expect(
        scored.results[at]!.standings.map(({ place, tied, playingHandicap, score, holesPlayed }) => ({
          place,
          tied,
          playingHandicap,
          score,
          holesPlayed,
        })),
      ).toEqual(
        competition.rows.map(({ place, tied, playingHandicap, score, holesPlayed }) => ({
          place,
          tied,
          playingHandicap,
          score,
          holesPlayed,
        })),
      )
  })
})
