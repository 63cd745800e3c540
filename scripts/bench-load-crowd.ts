// The crowd of the load bench: phones that deliver scores, and watchers on the event stream who do what the board's page
// does (lib of the page: apply what changed, ask for the whole board when that is not possible).

import { Agent, type ClientRequest, get, request } from 'node:http'
import type { DeviceId } from '@/lib/facts/ids'
import type { LoadDay, LoadGroup } from './bench-load-book'

const agent = new Agent({ keepAlive: true, maxSockets: 20_000 })

export interface Delivered {
  readonly day: string
  readonly sentAt: number
  readonly answeredAt: number
  readonly scoreVersion: number
}

export class Phone {
  readonly #deviceId: DeviceId
  #seq = 0
  #busy: Promise<unknown> = Promise.resolve()

  constructor(
    readonly base: string,
    readonly day: string,
    readonly group: LoadGroup,
    readonly place: number,
  ) {
    this.#deviceId = `load-phone-${day}-${group.link.slice(0, 8)}-${place}` as DeviceId
  }

  /** Delivers so many scores in one go; again until it is answered, as the outbox does. */
  deliver(scores: number, chance: () => number): Promise<Delivered> {
    const facts = Array.from({ length: scores }, () => ({
      kind: 'score',
      seq: ++this.#seq,
      cardId: this.group.cardIds[Math.floor(chance() * 4)],
      writer: this.group.entryIds[this.place],
      writtenAt: new Date().toISOString(),
      hole: 1 + Math.floor(chance() * 18),
      score: 3 + Math.floor(chance() * 4),
    }))
    const body = JSON.stringify({ deviceId: this.#deviceId, facts })
    const sent = this.#busy.then(async () => {
      const sentAt = performance.now()
      for (;;) {
        const answer = await this.#post(body)
        if (answer) return { day: this.day, sentAt, answeredAt: performance.now(), scoreVersion: answer.scoreVersion }
        await new Promise((resolve) => setTimeout(resolve, 500))
      }
    })
    this.#busy = sent
    return sent
  }

  get delivered(): number {
    return this.#seq
  }

  #post(body: string): Promise<{ scoreVersion: number } | null> {
    return new Promise((resolve) => {
      const headers = { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) }
      const path = `${this.base}/api/group/${this.group.link}/facts`
      const sent = request(path, { method: 'POST', agent, headers }, (response) => {
        let text = ''
        response.setEncoding('utf8')
        response.on('data', (part: string) => {
          text += part
        })
        response.on('end', () => resolve(response.statusCode === 200 ? JSON.parse(text) : null))
        response.on('error', () => resolve(null))
      })
      sent.on('error', () => resolve(null))
      sent.end(body)
    })
  }
}

/** When a watcher first had a board of at least this score version. */
interface Seen {
  readonly scoreVersion: number
  readonly at: number
}

const scoreOf = (version: string) => Number(version.split('.')[1])

export class Watcher {
  readonly seen: Seen[] = []
  /** Boards fetched whole because the changes did not fit. */
  asked = 0
  #holds = ''
  #asking = false
  #stream: ClientRequest | null = null

  constructor(
    readonly base: string,
    readonly society: string,
    readonly day: string,
  ) {}

  watch(): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#stream = get(`${this.base}/api/live/${this.society}/${this.day}`, { agent: false }, (response) => {
        let rest = ''
        response.setEncoding('utf8')
        response.on('data', (part: string) => {
          rest += part
          const events = rest.split('\n\n')
          rest = events.pop() ?? ''
          for (const event of events) this.#hear(event)
        })
        response.on('error', () => {})
        resolve()
      })
      this.#stream.on('error', reject)
    })
  }

  /** The page's first board. */
  async begin(): Promise<void> {
    await this.#ask()
  }

  end(): void {
    this.#stream?.on('error', () => {})
    this.#stream?.destroy()
  }

  #hear(event: string): void {
    const version = /^id: (\S+)/m.exec(event)?.[1]
    if (!version || version === this.#holds) return
    const from = /"from":"([^"]+)"/.exec(event.slice(0, 200))?.[1]
    if (from !== undefined && from === this.#holds && !this.#asking) this.#has(version)
    else if (this.#holds) void this.#ask()
  }

  #has(version: string): void {
    if (version === this.#holds) return
    this.#holds = version
    this.seen.push({ scoreVersion: scoreOf(version), at: performance.now() })
  }

  async #ask(): Promise<void> {
    if (this.#asking) return
    this.#asking = true
    this.asked++
    const etag = await new Promise<string>((resolve) => {
      const headers = { 'if-none-match': `"${this.#holds}"`, 'accept-encoding': 'gzip' }
      get(`${this.base}/api/board/${this.society}/${this.day}`, { agent, headers }, (response) => {
        response.resume()
        response.on('end', () => resolve(response.headers.etag ?? ''))
        response.on('error', () => resolve(''))
      }).on('error', () => resolve(''))
    })
    this.#asking = false
    const version = /"([^"]+)"/.exec(etag)?.[1]
    if (version) this.#has(version)
  }
}

export interface Crowd {
  readonly phones: readonly Phone[]
  readonly watchers: readonly Watcher[]
}

export function crowdOf(base: string, society: string, days: readonly LoadDay[], watchersADay: number): Crowd {
  return {
    phones: days.flatMap(({ slug, groups }) =>
      groups.flatMap((group) => group.entryIds.map((_, place) => new Phone(base, slug, group, place))),
    ),
    watchers: days.flatMap(({ slug }) => Array.from({ length: watchersADay }, () => new Watcher(base, society, slug))),
  }
}

/** How long after a delivery was sent each watcher of its day had it on the board. Infinity: never. */
export function delays(delivered: readonly Delivered[], watchers: readonly Watcher[]): number[] {
  const found: number[] = []
  for (const { day, sentAt, scoreVersion } of delivered)
    for (const watcher of watchers) {
      if (watcher.day !== day) continue
      const seen = watcher.seen.find((one) => one.scoreVersion >= scoreVersion)
      found.push(seen ? seen.at - sentAt : Number.POSITIVE_INFINITY)
    }
  return found
}
