// The server under test, as a process of its own: the very route handlers of app/api on the real database, behind
// node:http instead of Next. Starting Next takes seconds and a build; what is killed and repeated here is the handlers,
// the use cases and the store, and those are the same files. tests/browser does it again on the built application.
//
// A request may say where the process dies: header `x-dies: <n> <how>`, before the n-th write from its arrival on (a
// commit is a write too). If the answer is ready before that, it dies before the answer goes out. How: `sigkill`, the
// process kills itself; or a file name, the plug is pulled: the book's files are copied there as they lie at that
// moment, which is what a killed process leaves behind, every open request is cut, and the server goes on with the copy
// as a fresh one would. A test holds the two against each other.

import { copyFileSync, existsSync, writeSync } from 'node:fs'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import Database from 'better-sqlite3'
import { GET as boardOfDay } from '@/app/api/board/[society]/[day]/route'
import { POST as takeDelivery } from '@/app/api/group/[link]/facts/route'
import { GET as packOfGroup } from '@/app/api/group/[link]/route'
import type { DeviceId } from '@/lib/facts/ids'
import { type Book, bookFile, openBook } from '@/lib/store/client'

export interface Said {
  readonly port?: number
  /** The plug is pulled: the book is this file now. */
  readonly file?: string
}

const kept = globalThis as {
  daybookBook?: Book
  daybookReader?: { book: Book }
  daybookLive?: unknown
  daybookPacks?: unknown
}

// Every life opens new database clients, and each would compile the same engine again.
let engine: WebAssembly.Module | null = null
WebAssembly.Module = new Proxy(WebAssembly.Module, {
  construct(compile, [bytes]: [BufferSource]) {
    engine ??= new compile(bytes)
    return engine
  },
})

let dies: { writes: number; how: string } | null = null
let dying: string | null = null
let open = new Set<ServerResponse>()
let atWork = 0

const say = (said: Said) => process.send?.(said)

function die(where: string): void {
  const { how } = dies!
  dies = null
  // Straight to the pipe: what a stream still holds is lost with the process.
  writeSync(1, `${where}\n`)
  if (how === 'sigkill') process.kill(process.pid, 'SIGKILL')
  const from = bookFile()
  for (const part of ['', '-wal']) if (existsSync(from + part)) copyFileSync(from + part, how + part)
  dying = how
  for (const response of open) response.destroy()
  open = new Set()
}

/** A new life begins when nothing of the old one is at work any more: it writes into files nobody reads again. */
function born(): void {
  if (dying === null || atWork > 0) return
  openOn(dying)
  say({ file: dying })
  dying = null
}

function openOn(file: string): void {
  process.env.DATABASE_URL = `file:${file}`
  for (const old of [kept.daybookBook, kept.daybookReader?.book]) void old?.$disconnect()
  kept.daybookReader = undefined
  kept.daybookLive = undefined
  kept.daybookPacks = undefined
  kept.daybookBook = openBook(file)
}

const statement = Object.getPrototypeOf(new Database(':memory:').prepare('SELECT 1')) as Record<
  'run' | 'all',
  (this: { source: string }, ...values: unknown[]) => unknown
>
for (const way of ['run', 'all'] as const) {
  const plain = statement[way]
  statement[way] = function (...values) {
    if (dies && /^\s*(?:INSERT|UPDATE|DELETE|COMMIT)/i.test(this.source) && --dies.writes < 0)
      die(
        `before ${/^\s*(?:COMMIT|\w+(?:\s+INTO)?\s+[^\s(]+)/i.exec(this.source)?.[0].replace(/[`"]/g, '').replace('main.', '')}`,
      )
    return plain.apply(this, values)
  }
}

async function answerTo(request: IncomingMessage): Promise<Response> {
  const body: Buffer[] = []
  for await (const part of request) body.push(part as Buffer)
  const path = (request.url ?? '').split('/').map(decodeURIComponent)
  const asked = new Request(`http://book${request.url}`, {
    method: request.method,
    headers: {
      'content-type': request.headers['content-type'] ?? 'text/plain',
      'if-none-match': request.headers['if-none-match'] ?? '',
    },
    body: request.method === 'POST' ? Buffer.concat(body) : undefined,
  })
  const [, , what, a = '', b = ''] = path
  if (what === 'board') return boardOfDay(asked, { params: Promise.resolve({ society: a, day: b }) })
  if (what !== 'group') return new Response('nothing here', { status: 404 })
  const params = Promise.resolve({ link: a })
  if (request.method !== 'POST') return packOfGroup(asked, { params })
  return (await planted(asked, a)) ?? takeDelivery(asked, { params })
}

// Faults on purpose, to prove that the harness sees them: PLANTED names one.
async function planted(asked: Request, link: string): Promise<Response | null> {
  const params = Promise.resolve({ link })
  if (process.env.PLANTED === 'answers-before-commit') {
    const { facts } = (await asked.clone().json()) as { facts: { seq: number }[] }
    setTimeout(() => void takeDelivery(asked, { params }), 30)
    const answers = facts.map(({ seq }) => ({ seq, answer: 'received' }))
    return Response.json({ lastSeq: facts.at(-1)!.seq, answers, scoreVersion: 1 })
  }
  if (process.env.PLANTED === 'forgets-numbers') {
    const delivery = (await asked.json()) as { deviceId: DeviceId }
    const deviceId = `${delivery.deviceId.slice(0, 40)}-${Math.floor(performance.now() * 1000)}`
    const again = new Request(asked.url, { method: 'POST', body: JSON.stringify({ ...delivery, deviceId }) })
    return takeDelivery(again, { params })
  }
  return null
}

const server = createServer(async (request, response) => {
  if (dying !== null) return response.destroy()
  open.add(response)
  atWork++
  const order = /^(\d+) (.+)$/.exec(String(request.headers['x-dies'] ?? ''))
  if (order) dies = { writes: Number(order[1]), how: order[2]! }
  try {
    const answer = await answerTo(request)
    const text = await answer.text()
    if (order && dies) die('before the answer')
    if (open.delete(response)) response.writeHead(answer.status, Object.fromEntries(answer.headers)).end(text)
  } catch (cause) {
    // An exception is a bug, and Next would answer it so; the test sees the status and the reason.
    writeSync(2, `${cause instanceof Error ? cause.stack : cause}\n`)
    if (open.delete(response)) response.writeHead(500).end()
  } finally {
    atWork--
    born()
  }
})

process.on('message', ({ file }: { file: string }) => {
  openOn(file)
  say({ file })
})
process.on('disconnect', () => process.exit(0))
server.listen(0, '127.0.0.1', async () => {
  // The first query loads the engine: ready means ready to answer.
  openOn(bookFile())
  await kept.daybookBook!.society.count()
  say({ port: (server.address() as AddressInfo).port })
})
