// Open event streams of this process. A server that is told to stop waits for its answers to end, and a stream never
// ends by itself: so they are closed here.

const kept = globalThis as { daybookStreams?: Set<() => void> }

export function openStreams(): Set<() => void> {
  if (!kept.daybookStreams) {
    const streams = new Set<() => void>()
    kept.daybookStreams = streams
    for (const signal of ['SIGTERM', 'SIGINT'] as const)
      process.once(signal, () => {
        for (const close of [...streams]) close()
      })
  }
  return kept.daybookStreams
}
