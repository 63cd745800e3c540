export interface DrawnPlayer {
  readonly entryId: string
  readonly name: string
  readonly playing: string
  readonly note: string | null
}
