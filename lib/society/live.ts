import 'server-only'

/** Tells watchers of a day that it has moved on. What they read is the board of that version. */
export interface Live {
  announce(dayId: string, version: string): void
  /** Calls `told` with each new version; the answer ends the watching. */
  watch(dayId: string, told: (version: string) => void): () => void
}
