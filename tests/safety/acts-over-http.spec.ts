// Promise: over the real wire, every act is open to the duties of the table and to nobody else, in one's own society and
// nowhere else; and no answer holds a name, a link or a code of another society.

import { execFileSync } from 'node:child_process'
import { expect, test } from '@playwright/test'
import Database from 'better-sqlite3'
import type { CardId } from '@/lib/facts/ids'
import { ACTS, type Act } from '@/lib/society/acts'
import { type Answer, builtActions, get, postJson, sendAction, signIn } from './http/client'
import { OFFICERS, type OfficerDuty, PASSWORD, type Prepared } from './http/prepared'
import { DESK_PAGES, PUBLIC_PAGES, READS } from './http/reads'
import { ACTIONS, NOT_WALKED, WALKED_ELSEWHERE } from './http/rows'

const BOOK = process.env.BROWSER_BOOK ?? 'data/browser/book.db'
const DUTIES = Object.keys(OFFICERS) as OfficerDuty[]

let base: string
let known: Prepared
const cookies = new Map<OfficerDuty | 'other', string>()

test.beforeAll(async ({ baseURL }) => {
  base = baseURL!
  const said = execFileSync(
    process.execPath,
    ['--conditions=react-server', '--import', 'tsx', 'tests/safety/http/prepare.ts', 'fernbrake'],
    { env: { ...process.env, DATABASE_URL: `file:${BOOK}` }, encoding: 'utf8', maxBuffer: 1 << 26 },
  )
  known = JSON.parse(said) as Prepared
  for (const duty of DUTIES) cookies.set(duty, await signIn(base, OFFICERS[duty], PASSWORD))
  cookies.set('other', await signIn(base, 'secretary@example.org', 'fernbrake since 1987'))
})

/** Links and codes of the groups, and links of own pages. */
function keysOf(societyId: string): { readonly groups: readonly string[]; readonly pages: readonly string[] } {
  const book = new Database(BOOK, { readonly: true })
  try {
    const groups = book
      .prepare(`SELECT "linkKey", "code" FROM "Group" WHERE "societyId" = ?`)
      .raw()
      .all(societyId) as string[][]
    const pages = book
      .prepare(`SELECT "pageKey" FROM "Person" WHERE "societyId" = ?`)
      .pluck()
      .all(societyId) as string[]
    return { groups: groups.flat(), pages }
  } finally {
    book.close()
  }
}

const may = (duty: OfficerDuty, act: Act) => (ACTS[act] as readonly string[]).includes(duty)

/** What was sent may come back in the form; anything else of the other society may not. */
function holdsNothingOf(secrets: readonly string[], answer: Answer, asked: string): void {
  const leaked = secrets.filter((secret) => answer.text.includes(secret))
  expect.soft(leaked, `${asked} gives away`).toEqual([])
}

test('every act has its row, and every form of the build is walked', () => {
  const rows = new Set<string>([
    ...ACTIONS.map((row) => row.act),
    ...READS.map((row) => row.act),
    ...Object.keys(WALKED_ELSEWHERE),
  ])
  expect(Object.keys(ACTS).filter((act) => !rows.has(act))).toEqual([])
  const walked = new Set([...ACTIONS.map((row) => row.action), ...Object.keys(NOT_WALKED)])
  expect(
    builtActions()
      .filter((action) => !walked.has(action.name))
      .map((action) => `${action.name} of ${action.file}`),
  ).toEqual([])
})

// One test for all rows: a test that fails starts a new process, which would have to sign everybody in again.
test('the forms of the desk: for the duties of the table, on the rows of one’s own society', async () => {
  test.setTimeout(240_000)
  const built = builtActions()
  for (const row of ACTIONS) {
    const action = built.find((one) => one.name === row.action && one.file.includes(row.file ?? ''))
    if (!action) throw new Error(`${row.action} is not in the build`)
    const { here, there } = known
    const send = (who: OfficerDuty | 'other' | null, of: typeof here) =>
      sendAction(
        base,
        `/desk/${here.slug}`,
        action.id,
        row.bound(here, of),
        row.form(of),
        who ? cookies.get(who) : undefined,
      )

    const [nobody, other] = await Promise.all([send(null, here), send('other', here)])
    expect.soft(nobody.outcome, `${row.action}, signed out`).toBe(row.signedOut ?? 'signed-out')
    holdsNothingOf(known.secretsHere, nobody, 'signed out')
    expect.soft(other.outcome, `${row.action}, the other society’s secretary`).toBe(row.signedOut ?? 'signed-out')
    holdsNothingOf(known.secretsHere, other, 'the other society’s secretary')

    const walk = async (duty: OfficerDuty) => {
      const own = await send(duty, here)
      if (may(duty, row.act))
        expect
          .soft(
            ['not-allowed', 'signed-out', '500', ...(row.neverUnderstood ? [] : ['not-understood'])],
            `${row.action}, ${duty}`,
          )
          .not.toContain(own.outcome)
      else expect.soft(own.outcome, `${row.action}, ${duty}`).toBe('not-allowed')
      holdsNothingOf(known.secretsThere, own, duty)
      if (row.namesNothing) return
      const theirs = await send(duty, there)
      if (may(duty, row.act))
        expect
          .soft(theirs.outcome, `${row.action}, ${duty}, of the other society`)
          .toMatch(/^(not-found|no-such-[a-z]+)$/)
      else
        expect
          .soft(theirs.outcome, `${row.action}, ${duty}, of the other society`)
          .toMatch(/^(not-allowed|not-found|no-such-[a-z]+)$/)
      holdsNothingOf(known.secretsThere, theirs, `${duty}, of the other society`)
    }
    // Five people at five desks at once.
    await Promise.all(DUTIES.map(walk))
  }
})

test('the readings of the desk: for the duties of the table', async () => {
  for (const row of READS) {
    const { here } = known
    const path = row.path(`/desk/${here.slug}`, here)
    const nobody = await get(base, path)
    expect([307, 401]).toContain(nobody.status)
    holdsNothingOf(known.secretsHere, nobody, 'signed out')
    const other = await get(base, path, cookies.get('other'))
    expect([307, 401]).toContain(other.status)
    holdsNothingOf(known.secretsHere, other, 'the other society’s secretary')
    for (const duty of DUTIES) {
      const own = await get(base, path, cookies.get(duty))
      const shown = own.status === 200 && !own.text.includes('Not on this desk')
      expect.soft(shown, `${path} for ${duty}: ${own.status}`).toBe(may(duty, row.act))
      holdsNothingOf(known.secretsThere, own, duty)
    }
  }
})

test('the pages of the desk: for the officers of the society, with their own rows only', async () => {
  const { here, there } = known
  const { groups, pages } = keysOf(here.societyId)
  const shown = { groups: new Set<OfficerDuty>(), pages: new Set<OfficerDuty>() }
  for (const path of DESK_PAGES.map((page) => page(here))) {
    const asked = `/desk/${here.slug}${path}`
    for (const cookie of [undefined, cookies.get('other')]) {
      const stranger = await get(base, asked, cookie)
      expect([307, 401], `${asked} for a stranger`).toContain(stranger.status)
      holdsNothingOf(known.secretsHere, stranger, asked)
    }
    for (const duty of DUTIES) {
      const own = await get(base, asked, cookies.get(duty))
      expect([200, 403, 404], `${asked} for ${duty}`).toContain(own.status)
      holdsNothingOf(known.secretsThere, own, asked)
      // What opens a card writes scores, and what opens an own page acts as the member: for duties that may do so.
      if (groups.some((key) => own.text.includes(key))) shown.groups.add(duty)
      if (pages.some((key) => own.text.includes(key))) shown.pages.add(duty)
    }
  }
  // The other society's days, people and courses under one's own address.
  for (const path of DESK_PAGES.map((page) => page(there))) {
    const answer = await get(base, `/desk/${here.slug}${path}`, cookies.get('secretary'))
    expect(answer.status, path).toBeLessThan(500)
    holdsNothingOf(known.secretsThere, answer, path)
  }
  expect([...shown.groups].sort()).toEqual(DUTIES.filter((duty) => may(duty, 'enter-score')).sort())
  expect([...shown.pages].sort()).toEqual(DUTIES.filter((duty) => may(duty, 'renew-page-key')).sort())
})

test('read-board: for everybody, a society at a time', async () => {
  const { here, there } = known
  const links = [here, there].flatMap((of) => [of.link, of.pageKey])
  for (const path of PUBLIC_PAGES.map((page) => page(here))) {
    const answer = await get(base, path)
    expect(answer.status, path).toBeLessThan(500)
    holdsNothingOf([...known.secretsThere, ...links], answer, path)
  }
  for (const path of PUBLIC_PAGES.map((page) => page({ ...there, slug: here.slug }))) {
    const answer = await get(base, path)
    expect(answer.status, path).toBeLessThan(500)
    holdsNothingOf(known.secretsThere, answer, path)
  }
})

test('read-group, enter-score and sign-card: with the group’s link, for that group alone', async () => {
  const { here, there } = known
  const pack = await get(base, `/api/group/${here.link}`)
  expect(pack.status).toBe(200)
  expect(pack.text).toContain(here.cardId)
  holdsNothingOf(known.secretsThere, pack, 'the pack')
  for (const link of ['no-such-link-at-all', here.groupId, here.pageKey]) {
    expect((await get(base, `/api/group/${link}`)).status).toBe(404)
    expect((await postJson(base, `/api/group/${link}/facts`, {})).status).toBe(404)
  }
  const fact = (seq: number, cardId: CardId, more: object) => ({
    seq,
    cardId,
    writer: here.entryId,
    writtenAt: '2031-06-14T10:00:00.000Z',
    ...more,
  })
  const deliver = (facts: object[]) =>
    postJson(base, `/api/group/${here.link}/facts`, { deviceId: `walk-${Date.now()}-0000000000`, facts })
  const own = await deliver([fact(1, here.cardId, { kind: 'score', hole: 1, score: 4 })])
  expect(own.status).toBe(200)
  expect(own.text).toContain('"received"')
  const scores = Array(18).fill(4)
  const others = await deliver([
    fact(1, there.cardId, { kind: 'score', hole: 1, score: 4 }),
    fact(2, there.cardId, { kind: 'signature', role: 'player', scores }),
  ])
  expect(others.text).not.toContain('"received"')
  expect(others.text.match(/"refused"/g)).toHaveLength(2)
  holdsNothingOf(known.secretsThere, others, 'a delivery for another society')
})

test('read-own-page and what a member may do there: with the member’s link alone', async () => {
  const { here } = known
  const own = await get(base, `/member/${here.pageKey}`)
  expect(own.status).toBe(200)
  holdsNothingOf(known.secretsThere, own, 'the member’s page')
  for (const key of ['no-such-key', here.personId, here.link]) {
    const answer = await get(base, `/member/${key}`, cookies.get('secretary'))
    expect([200, 404]).toContain(answer.status)
    const others = [...known.secretsHere, ...known.secretsThere].filter((secret) => secret !== key)
    holdsNothingOf(others, answer, 'a wrong key')
  }
  const built = builtActions()
  for (const name of ['correct', 'ask', 'leave', 'renewOwnLink']) {
    const { id } = built.find((one) => one.name === name)!
    for (const key of ['no-such-key', here.personId, here.link]) {
      const answer = await sendAction(
        base,
        `/member/${here.pageKey}`,
        id,
        [key],
        { what: 'My name' },
        cookies.get('secretary'),
      )
      expect.soft(answer.outcome, `${name} with ${key}`).toBe('no-such-page')
    }
  }
  const { id } = built.find((one) => one.name === 'correct')!
  const kept = await sendAction(base, `/member/${here.pageKey}`, id, [here.pageKey], {
    email: '',
    phone: '01632 960000',
  })
  expect(kept.outcome).toBe('done')
})
