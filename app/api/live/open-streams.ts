// Open event streams of this process. A server that is told to stop waits for its answers to end, and a stream never
// ends by itself: so they are closed here. They are also counted: each holds about 130 kB, and whoever opens thousands
// must not take the memory that phones need to deliver.

/** Of one address. A club house is one address to the outside: all its phones, members and screens. */
export const MOST_OF_ONE = 300
/** Of all addresses: about half a gigabyte. */
export const MOST_IN_ALL = 4_000
/** Milliseconds until somebody whose stream was given up may ask again. */
const COME_BACK = 60_000

export interface OpenStream {
  /** The address it was opened from; undefined on the machine itself, where a front server may stand for everybody. */
  readonly from: string | undefined
  readonly say: (text: string) => void
  readonly close: () => void
}

const kept = globalThis as { daybookStreams?: Set<OpenStream> }

export function openStreams(): Set<OpenStream> {
  if (!kept.daybookStreams) {
    const streams = new Set<OpenStream>()
    kept.daybookStreams = streams
    for (const signal of ['SIGTERM', 'SIGINT'] as const)
      process.once(signal, () => {
        for (const one of [...streams]) one.close()
      })
  }
  return kept.daybookStreams
}

/** Adds a stream; beyond a limit the oldest one of the address, or of all, is given up. */
export function addStream(stream: OpenStream, mostOfOne = MOST_OF_ONE, mostInAll = MOST_IN_ALL): void {
  const streams = openStreams()
  streams.add(stream)
  const ofOne = stream.from === undefined ? [] : [...streams].filter((one) => one.from === stream.from)
  if (ofOne.length > mostOfOne) giveUp(ofOne[0]!)
  const [oldest] = streams
  if (oldest && streams.size > mostInAll) giveUp(oldest)
}

function giveUp(stream: OpenStream): void {
  stream.say(`retry: ${COME_BACK}\n\n`)
  stream.close()
  openStreams().delete(stream)
}

/** Where a stream is opened from, for counting. */
export function streamFrom(headers: Headers): string | undefined {
  const from = headers.get('x-forwarded-for')?.split(',')[0]?.trim()
  return from === undefined || /^(127\.|::1$|::ffff:127\.)/.test(from) ? undefined : from
}
