// Promise: a body is counted while it comes in. What is too long is refused after the limit and not read to the end,
// whether its sender said how long it is or not; what may be sent arrives whole.
import { gzipSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodyOf } from '@/app/api/group/delivery-body'
import { readAtMost } from '@/lib/facts/read-body'

/** A body without a stated length, of pieces of 64 kB; `given` counts how many were asked for. */
function streamed(pieces: number) {
  let given = 0
  const body = new ReadableStream<Uint8Array>({
    pull(controller) {
      if (given++ === pieces) controller.close()
      else controller.enqueue(new Uint8Array(65_536).fill(32))
    },
  })
  const init = { method: 'POST', body, duplex: 'half' }
  return { request: new Request('http://days.example.org/', init), given: () => given }
}

describe('a body', () => {
  it('without a length ends at the limit', async () => {
    const { request, given } = streamed(10_000)
    expect(request.headers.has('content-length')).toBe(false)
    expect(await readAtMost(request, 200_000)).toBe('too-long')
    expect(given()).toBeLessThan(10)
  })

  it('that says it is too long is not read at all', async () => {
    const { request, given } = streamed(10)
    request.headers.set('content-length', '200001')
    expect(await readAtMost(request, 200_000)).toBe('too-long')
    // The one piece a stream has ready before anybody asks.
    expect(given()).toBeLessThanOrEqual(1)
  })

  it('that says it is shorter than it is, is counted all the same', async () => {
    const { request } = streamed(10)
    request.headers.set('content-length', '12')
    expect(await readAtMost(request, 200_000)).toBe('too-long')
  })

  it('arrives whole, to the last byte of the limit', async () => {
    const { request } = streamed(3)
    expect(await readAtMost(request, 3 * 65_536)).toHaveLength(3 * 65_536)
    expect(await readAtMost(streamed(3).request, 3 * 65_536 - 1)).toBe('too-long')
    expect(await readAtMost(new Request('http://days.example.org/'), 10)).toHaveLength(0)
  })

  it('of a delivery is JSON of 128 kB at the most', async () => {
    const sent = (text: string) => new Request('http://days.example.org/', { method: 'POST', body: text })
    expect(await bodyOf(sent('{"facts":[]}'))).toEqual({ json: { facts: [] } })
    expect(await bodyOf(sent('{"facts":'))).toBe('not-json')
    expect(await bodyOf(sent(`"${'x'.repeat(131_071)}"`))).toBe('too-long')
    expect(await bodyOf(streamed(10_000).request)).toBe('too-long')
  })

  it('packed small to unpack large is not unpacked: it is no JSON', async () => {
    const body = gzipSync(Buffer.alloc(50 * 1024 * 1024, 0x20))
    const headers = { 'content-encoding': 'gzip', 'content-type': 'application/json' }
    const before = process.memoryUsage().rss
    const sent = () => new Request('http://days.example.org/', { method: 'POST', body, headers })
    expect(await bodyOf(sent())).toBe('not-json')
    expect(await readAtMost(sent(), 128 * 1024)).toHaveLength(body.byteLength)
    expect(process.memoryUsage().rss - before).toBeLessThan(40 * 1024 * 1024)
  })

  it('in any pieces, at any pace, under any stated length, is whole or is not read further than one piece', async () => {
    const piece = fc.record({ size: fc.integer({ min: 0, max: 5000 }), waits: fc.boolean() })
    await fc.assert(
      fc.asyncProperty(
        fc.array(piece, { maxLength: 12 }),
        fc.integer({ min: 0, max: 20_000 }),
        fc.option(fc.constantFrom('0', '-1', '7', '20001', '999999999999', 'many', '1e3', '')),
        async (pieces, most, says) => {
          let given = 0
          let at = 0
          const body = new ReadableStream<Uint8Array>(
            {
              async pull(controller) {
                const next = pieces[at++]
                if (!next) return controller.close()
                if (next.waits) await new Promise((resolve) => setImmediate(resolve))
                given += next.size
                controller.enqueue(new Uint8Array(next.size).fill(65))
              },
            },
            { highWaterMark: 0 },
          )
          const init = { method: 'POST', body, duplex: 'half' }
          const request = new Request('http://days.example.org/', init)
          if (says !== null) request.headers.set('content-length', says)
          const read = await readAtMost(request, most)
          const whole = pieces.reduce((sum, one) => sum + one.size, 0)
          if (read === 'too-long') {
            expect(whole > most || Number(says) > most).toBe(true)
            expect(given).toBeLessThanOrEqual(most + 5000)
          } else expect(read).toHaveLength(whole)
        },
      ),
      { numRuns: 200 },
    )
  })
})
