// What lies between a phone and the server: every request meets a fate rolled from the run's seed. It stands in place of
// the browser's fetch, so that the outbox's own way to the server (lib/outbox/post.ts) is what runs.

import { AsyncLocalStorage } from 'node:async_hooks'
import type { DeviceId } from '@/lib/facts/ids'
import type { DeliveryAnswer, FactAnswer } from '@/lib/facts/score-fact'
import { nextFile } from './next-file'
import type { ServerProcess } from './server-process'

const FATES = [
  'lost',
  'answer-lost',
  'answer-cut-short',
  'repeated',
  'held-back',
  'hotel-page',
  'bad-gateway',
  'server-dies',
  'server-dies',
  'server-dies',
] as const
type Fate = (typeof FATES)[number] | 'through'

/** A server that can be told to die is needed only where the run may meet a death. */
type Reached = Pick<ServerProcess, 'base'> & Partial<Pick<ServerProcess, 'plugPulled' | 'gone' | 'start'>>

type Roll = (sides: number) => number
type Asked = { readonly path: string; readonly init: RequestInit }

export interface Deaths {
  /** How many of them the run may meet. */
  left: number
  /** True: the process is killed; false: the plug is pulled, which leaves the same files and costs less. */
  readonly sigkill: boolean
}

/** Deliveries that never reached the server, or whose answer never came back. */
const LOST = () => new TypeError('fetch failed')

export class Network {
  /** From now on everything goes through. */
  good = false
  /** Copies of deliveries that some box on the way still holds, to be delivered after newer ones. */
  readonly held: Asked[] = []
  /** Everything the server ever answered, whether or not it reached a phone: an answer never changes. */
  readonly said = new Map<string, FactAnswer>()
  readonly broken: string[] = []

  constructor(
    readonly server: Reached,
    readonly roll: Roll,
    readonly deaths: Deaths,
  ) {}

  async fetch(path: string, init: RequestInit): Promise<Response> {
    const asked = { path, init }
    switch (init.method === 'POST' ? this.#fate() : 'through') {
      case 'through':
        return this.send(asked)
      case 'lost':
        throw LOST()
      case 'answer-lost':
        await this.send(asked)
        throw LOST()
      case 'answer-cut-short': {
        const text = await (await this.send(asked)).text()
        return new Response(text.slice(0, this.roll(text.length)))
      }
      case 'repeated':
        return (await Promise.all([this.send(asked), this.send(asked)]))[this.roll(2)]!
      case 'held-back':
        this.held.push(asked)
        throw LOST()
      case 'hotel-page':
        return new Response('<html><title>Welcome</title>Sign in to use the network</html>')
      case 'bad-gateway':
        return new Response('Bad gateway', { status: 502 })
      case 'server-dies':
        return this.#dies(asked)
    }
  }

  /** One of the copies on the way arrives, long after its phone gave up on it. */
  async deliverHeld(): Promise<void> {
    const [asked] = this.held.splice(this.roll(this.held.length), 1)
    if (asked) await this.send(asked)
  }

  #fate(): Fate {
    if (this.good || this.roll(5) < 2) return 'through'
    const fate = FATES[this.roll(FATES.length)]!
    if (fate !== 'server-dies') return fate
    return this.deaths.left-- > 0 ? fate : 'through'
  }

  async send({ path, init }: Asked, headers: Record<string, string> = {}): Promise<Response> {
    const response = await fetch(`${this.server.base}${path}`, {
      ...init,
      // The phone's patience is no part of this: a slow machine must not change what a seed does.
      signal: null,
      headers: { ...(init.headers as Record<string, string>), ...headers },
    })
    const text = await response.text()
    this.#listen(init, response.status, text)
    // The answer "as you have it" has no body, not even an empty one.
    return new Response(response.status === 304 ? null : text, { status: response.status, headers: response.headers })
  }

  /** Somewhere between two writes of this delivery; sometimes with a second copy of it in hand. */
  async #dies(asked: Asked): Promise<Response> {
    const { server, deaths } = this
    const at = `${this.roll(9)} ${deaths.sigkill ? 'sigkill' : nextFile()}`
    const back = deaths.sigkill ? null : server.plugPulled!()
    const sent = [this.send(asked, { 'x-dies': at })]
    if (this.roll(3) === 0) sent.push(this.send(asked))
    await Promise.allSettled(sent)
    if (back) await back
    else {
      await server.gone!()
      await server.start!()
    }
    throw LOST()
  }

  #listen(init: RequestInit, status: number, text: string): void {
    if (init.method !== 'POST') return
    if (status !== 200 && status !== 409) this.broken.push(`a delivery was answered ${status}: ${text.slice(0, 300)}`)
    if (status !== 200) return
    const { deviceId } = JSON.parse(String(init.body)) as { deviceId: DeviceId }
    for (const one of (JSON.parse(text) as DeliveryAnswer).answers) {
      const key = `${deviceId} ${one.seq}`
      const before = this.said.get(key)
      if (before && before.answer !== one.answer)
        this.broken.push(`${key} was answered ${before.answer}, then ${one.answer}`)
      this.said.set(key, before ?? one)
    }
  }
}

const around = new AsyncLocalStorage<Network>()
const plain = globalThis.fetch

/** Runs with the outbox's requests (addresses of our own house) going through this network. */
export function withNetwork<T>(network: Network, run: () => Promise<T>): Promise<T> {
  return around.run(network, run)
}

globalThis.fetch = ((input: RequestInfo | URL, init?: RequestInit) => {
  const network = around.getStore()
  if (network && typeof input === 'string' && input.startsWith('/')) return network.fetch(input, init ?? {})
  return plain(input, init)
}) as typeof fetch
