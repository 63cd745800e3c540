import { describe, expect, it } from 'vitest'
import { ASK_EVERY_MS, type LineParts, type LineState, openLine } from '@/app/(board)/_board/live-line'
import { changesBetweenBoards, type Json } from '@/lib/boards/board-changes'
import type { DayBoard } from '@/lib/boards/views'
import { boardAt } from './day-of-four'

/** A server, a stream and a clock in the hand of the test. */
function world(withStream = true) {
  const board = (version: string): DayBoard => ({ ...boardAt(), version })
  const state = { now: 0, served: board('1'), reachable: true, asked: [] as string[] }
  const timers: { at: number; run: () => void; live: boolean }[] = []
  const streams: FakeStream[] = []
  class FakeStream {
    readyState = 0
    listeners = new Map<string, (event: { data?: string }) => void>()
    constructor(readonly url: string) {
      streams.push(this)
    }
    addEventListener(type: string, heard: (event: { data?: string }) => void) {
      this.listeners.set(type, heard)
    }
    close() {
      this.readyState = 2
    }
    say(type: string) {
      if (type === 'open') this.readyState = 1
      this.listeners.get(type)?.(type === 'version' ? { data: JSON.stringify({ version: state.served.version }) } : {})
    }
  }
  const parts: LineParts = {
    fetch: async (_url, init) => {
      const known = new Headers(init.headers).get('if-none-match') ?? ''
      state.asked.push(known)
      if (!state.reachable) throw new TypeError('network down')
      if (known === `"${state.served.version}"`) return new Response(null, { status: 304 })
      return Response.json(state.served)
    },
    open: withStream ? (url) => new FakeStream(url) : null,
    after: (ms, run) => {
      const timer = { at: state.now + ms, run, live: true }
      timers.push(timer)
      return () => {
        timer.live = false
      }
    },
    chance: () => 0,
  }
  const settle = () => new Promise<void>((resolve) => setImmediate(resolve))
  async function pass(ms: number) {
    const end = state.now + ms
    for (;;) {
      const next = timers.filter((timer) => timer.live && timer.at <= end).sort((a, b) => a.at - b.at)[0]
      if (!next) break
      state.now = next.at
      next.live = false
      next.run()
      await settle()
    }
    state.now = end
  }
  const heard: string[] = []
  const states: LineState[] = []
  const line = openLine(
    {
      society: 'fernbrake',
      day: 'spring-cup',
      version: '1',
      heard: (one) => heard.push(one.version),
      state: (one) => states.push(one),
    },
    parts,
  )
  return {
    state,
    streams,
    heard,
    states,
    line,
    pass,
    settle,
    serve: (version: string) => (state.served = board(version)),
  }
}

describe('the line of the board', () => {
  it('fetches a newer board when the stream says so, and only then', async () => {
    const { streams, heard, serve, settle, state } = world()
    streams[0]!.say('open')
    await settle()
    expect(state.asked).toEqual([])
    serve('2')
    streams[0]!.say('version')
    await settle()
    expect(heard).toEqual(['2'])
  })

  it('does not ask when the stream begins with the version it has', async () => {
    const { streams, state, settle } = world()
    expect(streams[0]!.url).toBe('/api/live/fernbrake/spring-cup')
    streams[0]!.say('open')
    streams[0]!.say('version')
    await settle()
    expect(state.asked).toEqual([])
  })

  it('hands the same board over once', async () => {
    const { streams, heard, serve, settle } = world()
    serve('2')
    streams[0]!.say('version')
    streams[0]!.say('version')
    await settle()
    await settle()
    expect(heard).toEqual(['2'])
  })

  it('makes the next board of what changed, without asking again', async () => {
    const { streams, heard, serve, settle, state } = world()
    serve('2')
    streams[0]!.say('version')
    await settle()
    const before = state.served
    const after = { ...serve('3'), lead: 'Somebody leads' }
    const changes = changesBetweenBoards(before as unknown as Json, after as unknown as Json)
    streams[0]!.listeners.get('version')!({ data: JSON.stringify({ version: '3', from: '2', changes }) })
    expect(heard).toEqual(['2', '3'])
    expect(state.asked).toHaveLength(1)
    // Changes of a board we do not hold are no use: then it asks.
    serve('5')
    streams[0]!.listeners.get('version')!({ data: JSON.stringify({ version: '5', from: '4', changes }) })
    await settle()
    expect(heard).toEqual(['2', '3', '5'])
    expect(state.asked).toHaveLength(2)
  })

  it('asks when it is told what it cannot read', async () => {
    const { streams, heard, serve, settle, state } = world()
    serve('2')
    streams[0]!.say('version')
    await settle()
    serve('3')
    streams[0]!.listeners.get('version')!({
      data: JSON.stringify({ version: '3', from: '2', changes: { of: { version: { at: {} } } } }),
    })
    await settle()
    streams[0]!.listeners.get('version')!({ data: 'nonsense' })
    await settle()
    expect(heard).toEqual(['2', '3'])
    expect(state.asked).toHaveLength(3)
  })

  it('does not miss what came while it was asking', async () => {
    const { streams, heard, serve, settle } = world()
    serve('2')
    streams[0]!.say('version')
    serve('3')
    streams[0]!.say('version')
    await settle()
    await settle()
    expect(heard.at(-1)).toBe('3')
  })

  it('asks by itself where there is no stream', async () => {
    const { heard, serve, pass, states } = world(false)
    await pass(0)
    serve('2')
    await pass(ASK_EVERY_MS)
    expect(heard).toEqual(['2'])
    expect(states.at(-1)).toBe('asking')
  })

  it('asks by itself when the stream never opens', async () => {
    const { heard, serve, pass } = world()
    serve('2')
    await pass(6_000)
    expect(heard).toEqual(['2'])
  })

  it('says the line is down when nobody answers, and comes back by itself', async () => {
    const { streams, state, states, heard, serve, pass } = world()
    streams[0]!.say('open')
    state.reachable = false
    streams[0]!.say('error')
    await pass(2_000)
    expect(states.at(-1)).toBe('down')
    serve('7')
    state.reachable = true
    await pass(ASK_EVERY_MS)
    expect(heard).toEqual(['7'])
    expect(states.at(-1)).toBe('asking')
  })

  it('catches up at once when the stream opens again', async () => {
    const { streams, heard, serve, settle, states } = world()
    streams[0]!.say('open')
    streams[0]!.say('error')
    serve('4')
    streams[0]!.say('open')
    await settle()
    expect(heard).toEqual(['4'])
    expect(states.at(-1)).toBe('live')
  })

  it('opens a new stream after the browser gave the old one up', async () => {
    const { streams, pass } = world()
    streams[0]!.say('open')
    streams[0]!.readyState = 2
    streams[0]!.say('error')
    await pass(2_000)
    expect(streams).toHaveLength(2)
  })

  it('is silent once it is closed', async () => {
    const { line, streams, heard, serve, pass } = world()
    line.close()
    serve('2')
    streams[0]!.say('version')
    await pass(60_000)
    expect(heard).toEqual([])
    expect(streams[0]!.readyState).toBe(2)
  })
})
