// What a bench answers with, and the two ways every bench measures.

export interface Figure {
  readonly what: string
  readonly measured: string
  /** "under 2 ms"; a dash where nothing was promised. */
  readonly target: string
  /** Null where nothing was promised. */
  readonly held: boolean | null
}

/** What was measured, or why nothing was. */
export type Figures = readonly Figure[] | { readonly leftOut: string }

export interface Bench {
  readonly measure: () => Promise<Figures>
}

export function median(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b)
  const middle = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

/** Milliseconds of each of many runs, after as many to warm up. */
export function timed(run: () => unknown, times: number): number[] {
  for (let at = 0; at < times; at += 1) run()
  return Array.from({ length: times }, () => {
    const start = performance.now()
    run()
    return performance.now() - start
  })
}
