// Sends malformed requests many at a time over kept connections, and looks at every answer.
import { Agent, request as ask } from 'node:http'
import { connect } from 'node:net'
import { dice, type Ground, type Malformed, malformed } from './malformed'

export interface Found {
  readonly what: string
  readonly n: number
  readonly request: string
  readonly answer: string
}

// Milliseconds. A request that hangs is never answered; one that waits its turn on a busy machine is.
const HANG = Number(process.env.DAYBOOK_HANG_MS ?? 30_000)
/** A line on which nothing whole was said is kept open by a server that waits for more: how long that is looked at. */
const SILENCE = 5_000
const TRACE = /\n\s+at .+:\d+:\d+|node_modules[\\/]|SqliteError|PrismaClient|\/lib\/store\//

interface Got {
  readonly status: number
  readonly text: string
}

export async function sendMany(
  base: URL,
  ground: Ground,
  seed: number,
  many: number,
  atOnce: number,
): Promise<{ found: readonly Found[]; statuses: ReadonlyMap<number, number> }> {
  const agent = new Agent({ keepAlive: true, maxSockets: atOnce })
  const found: Found[] = []
  const statuses = new Map<number, number>()
  let next = 0
  const worker = async () => {
    while (next < many && found.length < 100) {
      const n = next++
      // A seed for each: one request can be sent again by its number.
      const one = malformed(dice(seed * 1_000_003 + n), ground)
      const got = one.raw ? await overTheWire(base, one.raw) : await over(base, agent, one)
      statuses.set(got.status, (statuses.get(got.status) ?? 0) + 1)
      const what =
        got.status === 0
          ? 'no answer'
          : got.status >= 500
            ? String(got.status)
            : TRACE.test(got.text)
              ? 'stack trace'
              : null
      if (what) found.push({ what, n, request: inWords(one), answer: got.text.slice(0, 300) })
    }
  }
  await Promise.all(Array.from({ length: atOnce }, worker))
  agent.destroy()
  return { found, statuses }
}

export function inWords({ method, path, headers, body, raw }: Malformed): string {
  if (raw) return JSON.stringify(raw.toString('latin1').slice(0, 200))
  const told = Object.entries(headers).map(([name, value]) => `${name}: ${value.slice(0, 60)}`)
  return `${method} ${path.slice(0, 200)} [${told.join(' | ')}] ${JSON.stringify(body?.toString('latin1').slice(0, 300) ?? '')}`
}

function over(base: URL, agent: Agent, one: Malformed): Promise<Got> {
  return new Promise((resolve) => {
    const headers = Object.fromEntries(
      Object.entries(one.headers).map(([name, value]) => [
        name,
        Buffer.from(value)
          .toString('latin1')
          .replace(/[^\t\x20-\x7e\x80-\xff]/g, ''),
      ]),
    )
    const path = one.path.replace(/[^\x21-\x7e]/g, (sign) => encodeURIComponent(sign))
    const sent = ask({
      host: base.hostname,
      port: base.port,
      agent,
      method: one.method,
      path,
      headers: { ...headers, ...(one.body ? { 'content-length': one.body.length } : {}) },
      timeout: HANG,
    })
    const late = setTimeout(() => sent.destroy(new Error('late')), HANG)
    const end = (got: Got) => {
      clearTimeout(late)
      resolve(got)
    }
    sent.on('response', (answer) => {
      const pieces: Buffer[] = []
      answer.on('data', (piece: Buffer) => pieces.push(piece))
      answer.on('end', () => end({ status: answer.statusCode ?? 0, text: Buffer.concat(pieces).toString('utf8') }))
      answer.on('error', () => end({ status: 0, text: 'the answer was cut' }))
    })
    sent.on('error', (cause) => {
      // A body that is refused may be cut off while it is still being sent: the server said so before.
      end({ status: /late/.test(cause.message) ? 0 : 499, text: cause.message })
    })
    sent.end(one.body)
  })
}

function overTheWire(base: URL, raw: Buffer): Promise<Got> {
  return new Promise((resolve) => {
    const socket = connect(Number(base.port), base.hostname)
    const pieces: Buffer[] = []
    const late = setTimeout(() => socket.destroy(), SILENCE)
    socket.on('data', (piece) => pieces.push(piece))
    socket.on('error', () => {})
    socket.on('close', () => {
      clearTimeout(late)
      const text = Buffer.concat(pieces).toString('latin1')
      const status = Number(/^HTTP\/1\.\d (\d{3})/.exec(text)?.[1] ?? 499)
      resolve({ status, text })
    })
    socket.end(raw)
  })
}
