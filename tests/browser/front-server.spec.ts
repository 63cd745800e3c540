// Promise: the files for a server in front, as docs/running.md prints them, load in the nginx and the Caddy of the machine and
// do what the text says of them: a board's stream comes at once, a members' list of the stated size goes through, a visitor
// cannot say where he comes from, and the key of a card stands in no log, also while Daybook is being started again.

import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { type IncomingMessage, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freePort } from '@/scripts/bench-server'
import { send } from './day-walk'
import { type OwnBook, startOwnBook } from './own-book'
import { quietGroups } from './quiet-groups'
import { expect, type Page, test } from './walk'

test.describe.configure({ mode: 'serial', timeout: 120_000 })

/** Every program that is here; .ci/run installs both. */
const FRONTS = [
  { name: 'nginx', program: '/usr/sbin/nginx', start: startNginx, tooLarge: 413 },
  // Caddy 2.6 hangs up on what is behind it when a body is too large, and tells the visitor so.
  { name: 'Caddy', program: '/usr/bin/caddy', start: startCaddy, tooLarge: 502 },
].filter(({ program }) => existsSync(program))

const MEGABYTE = 1_000_000
/** Of the sign-in library's limit: tries a minute of one address. */
const TRIES_A_MINUTE = 20

let book: OwnBook
let folder: string
let page: Page

test.beforeAll(async ({ browser }) => {
  test.setTimeout(240_000)
  folder = mkdtempSync(join(tmpdir(), 'daybook-front-'))
  process.env.DAYBOOK_BEHIND_PROXY = '1'
  book = await startOwnBook('demo')
  delete process.env.DAYBOOK_BEHIND_PROXY
  page = await (await browser.newContext({ baseURL: book.origin })).newPage()
})
test.afterAll(async () => {
  await page?.context().close()
  await book?.stop()
  rmSync(folder, { recursive: true, force: true })
})

/** The block of docs/running.md that begins with these words, on this port and in front of this book. */
function printed(begins: string, changes: readonly (readonly [from: string | RegExp, to: string])[]): string {
  const blocks = readFileSync('docs/running.md', 'utf8').match(/^```\w*\n[\s\S]*?^```/gm) ?? []
  const block = blocks.map((one) => one.replace(/^```.*$/gm, '').trim()).find((one) => one.startsWith(begins))
  let text = block ?? ''
  expect(text, `docs/running.md prints a block that begins with ${begins}`).not.toBe('')
  for (const [from, to] of [['127.0.0.1:3000', new URL(book.origin).host] as const, ...changes]) {
    expect(text).toMatch(from)
    text = text.replaceAll(from, to)
  }
  return text
}

interface Front {
  readonly port: number
  readonly process: ChildProcess
  /** Everything it wrote anywhere. */
  readonly logs: () => string
}

async function startNginx(port: number): Promise<Front> {
  const here = mkdtempSync(join(folder, 'nginx-'))
  const server = printed('server {', [[/listen 443 ssl http2;/g, `listen 127.0.0.1:${port};`]])
  const temporary = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi']
    .map((kind) => `${kind}_temp_path ${here}/${kind};`)
    .join('\n')
  writeFileSync(
    join(here, 'nginx.conf'),
    `daemon off;\npid ${here}/pid;\nerror_log ${here}/error.log info;\nevents {}\nhttp {\n${temporary}\naccess_log ${here}/access.log;\n${server}\n}\n`,
  )
  const running = spawn('/usr/sbin/nginx', ['-c', join(here, 'nginx.conf'), '-p', here], { stdio: 'ignore' })
  const logs = () =>
    readdirSync(here)
      .filter((file) => file.endsWith('.log'))
      .map((file) => readFileSync(join(here, file), 'utf8'))
      .join('')
  return { port, process: running, logs }
}

async function startCaddy(port: number): Promise<Front> {
  const here = mkdtempSync(join(folder, 'caddy-'))
  // Another Caddy may hold the port of its own administration.
  const text = printed('{\n  log', [
    [/^\{\n/g, '{\n  admin off\n'],
    ['days.example.org', `http://127.0.0.1:${port}`],
  ])
  writeFileSync(join(here, 'Caddyfile'), text)
  const running = spawn('/usr/bin/caddy', ['run', '--config', join(here, 'Caddyfile'), '--adapter', 'caddyfile'], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, HOME: here, XDG_DATA_HOME: here, XDG_CONFIG_HOME: here },
  })
  let said = ''
  for (const stream of [running.stdout, running.stderr])
    stream.on('data', (piece) => {
      said += piece
    })
  return { port, process: running, logs: () => said }
}

interface Asked {
  readonly method?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: string
  /** The visitor's own address, one of the machine's. */
  readonly from?: string
}

function ask(front: Front, path: string, { method = 'GET', headers = {}, body, from }: Asked = {}) {
  return new Promise<IncomingMessage>((resolve, reject) => {
    const asking = request(
      {
        host: '127.0.0.1',
        port: front.port,
        path,
        method,
        headers: { ...headers, ...(body === undefined ? {} : { 'content-length': String(Buffer.byteLength(body)) }) },
        ...(from ? { localAddress: from } : {}),
      },
      resolve,
    )
    asking.on('error', reject)
    asking.end(body)
  })
}

async function statusOf(front: Front, path: string, asked: Asked = {}): Promise<number> {
  const answer = await ask(front, path, asked)
  answer.resume()
  return answer.statusCode ?? 0
}

const tryToSignIn = (front: Front, at: number, from: string) =>
  statusOf(front, '/api/auth/sign-in/email', {
    method: 'POST',
    from,
    headers: {
      'content-type': 'application/json',
      origin: `http://127.0.0.1:${front.port}`,
      // What a visitor says of himself, other each time.
      'x-forwarded-for': `192.0.2.${at}`,
    },
    body: JSON.stringify({ email: `nobody-${front.port}-${at}@example.org`, password: 'not the one of anybody' }),
  })

const BIG = (bytes: number) => ({
  method: 'POST',
  headers: { 'content-type': 'application/x-www-form-urlencoded' },
  body: 'x'.repeat(bytes),
})

for (const [nth, { name, start, tooLarge }] of FRONTS.entries())
  test(`${name} in front: streams, sizes, addresses and logs are as the text says`, async () => {
    const front = await start(await freePort())
    try {
      await expect(async () => expect(await statusOf(front, '/api/health')).toBe(200)).toPass()
      const group = quietGroups(book.file)[0]!
      const card = `/card/${group.link}`
      expect(await statusOf(front, card)).toBe(200)

      await test.step('a score is on the stream of the board at once', async () => {
        const stream = await ask(front, `/api/live/${group.society}/${group.day}`)
        const heard = new Promise<string>((resolve) => {
          let text = ''
          stream.on('data', (piece) => {
            text += piece
            if (/^id: /m.test(text)) resolve(text)
          })
        })
        await send(
          page,
          card,
          () => 5,
          (hole) => hole === nth + 1,
          false,
        )
        expect(await Promise.race([heard, new Promise((resolve) => setTimeout(resolve, 10_000, 'nothing'))])).toMatch(
          /^id: /m,
        )
        stream.destroy()
      })

      await test.step('a list of the stated size goes through, a larger one does not', async () => {
        expect([413, 502]).not.toContain(await statusOf(front, '/desk/fernbrake/members/import', BIG(2.8 * MEGABYTE)))
        expect(await statusOf(front, `/api/group/${group.link}/facts`, BIG(3.4 * MEGABYTE))).toBe(tooLarge)
      })

      await test.step('whatever a visitor says of himself, tries are counted by the address he has', async () => {
        const statuses = []
        for (let at = 0; at <= TRIES_A_MINUTE; at += 1)
          statuses.push(await tryToSignIn(front, at, `127.0.0.${10 + nth}`))
        expect(statuses.slice(0, TRIES_A_MINUTE)).toEqual(Array.from({ length: TRIES_A_MINUTE }, () => 401))
        expect(statuses.at(-1)).toBe(429)
        expect(await tryToSignIn(front, 99, `127.0.0.${20 + nth}`)).toBe(401)
      })

      await test.step('the key of a card stands in no log, also while nothing answers behind', async () => {
        const keyed = [card, `/api/group/${group.link}`, `/member/${group.link}`, `/sign-in/first/${group.link}`]
        for (const path of keyed) await statusOf(front, path)
        expect(front.logs()).not.toContain(group.link)
        const away = { ...front, ...(await inFrontOfNothing(start)) }
        for (const path of keyed) expect(await statusOf(away, path)).toBe(502)
        expect(await statusOf(away, '/an-address-without-a-key')).toBe(502)
        away.process.kill('SIGTERM')
        expect(away.logs()).not.toContain(group.link)
      })
    } finally {
      front.process.kill('SIGTERM')
    }
  })

/** The same file before a port on which nothing answers. */
async function inFrontOfNothing(start: (port: number) => Promise<Front>): Promise<Front> {
  const real = book
  book = { ...book, origin: `http://127.0.0.1:${await freePort()}` }
  const front = await start(await freePort())
  book = real
  await expect(async () => expect(await statusOf(front, '/')).toBe(502)).toPass()
  return front
}
