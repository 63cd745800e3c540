// A fact as the phone keeps it, with what has become of it.

import type { CardId, DeviceId, EntryId, SideId } from '@/lib/facts/ids'
import type { DeviceFact, WrittenScore } from '@/lib/facts/score-fact'
import type { ReplacedScore } from '@/lib/facts/writer'

/** kept: only on this phone. Everything else is the server's word, and final. */
export type FactState = 'kept' | 'received' | 'late' | 'refused'

/** A fact before it has its number. */
export type FactDraft =
  | {
      readonly kind: 'score'
      readonly cardId: CardId
      readonly writer: EntryId
      readonly hole: number
      readonly score: WrittenScore
      /** Scores of another phone under this name that it takes the place of. */
      readonly replaces?: readonly ReplacedScore[]
    }
  | {
      readonly kind: 'signature'
      readonly cardId: CardId
      readonly writer: EntryId
      readonly role: 'player' | 'marker'
      readonly scores: readonly WrittenScore[]
    }
  | {
      readonly kind: 'drive'
      readonly cardId: CardId
      readonly writer: EntryId
      readonly sideId: SideId
      readonly hole: number
      readonly entryId: EntryId | null
    }
  | {
      readonly kind: 'ball-lost'
      readonly cardId: CardId
      readonly writer: EntryId
      readonly sideId: SideId
      readonly hole: number
      readonly lost: boolean
    }
  | {
      readonly kind: 'concession'
      readonly cardId: CardId
      readonly writer: EntryId
      readonly matchId: string
      readonly hole: number | null
      readonly by: 'a' | 'b' | null
    }

/** What a holder writes about a side's ball; the writer is whoever holds the phone. */
export type BallWritten =
  | Omit<Extract<FactDraft, { kind: 'drive' }>, 'writer'>
  | Omit<Extract<FactDraft, { kind: 'ball-lost' }>, 'writer'>

/** A hole or the match that an end of it concedes, or what is taken back. */
export type ConcessionWritten = Omit<Extract<FactDraft, { kind: 'concession' }>, 'writer' | 'kind'>

export interface KeptFact {
  /** The group's link it was written under, the only one it is ever sent to. */
  readonly link: string
  readonly seq: number
  readonly fact: DeviceFact
  readonly state: FactState
  /** What the holder had on the hole before, here or on a phone that was taken over: undo writes it again. */
  readonly before: WrittenScore
  /** Number of the fact this one takes back. */
  readonly undoes: number | null
  /** The server's sentence on a late or refused fact. */
  readonly sentence: string | null
  readonly code: string | null
  /** The server's score version when it was settled: a pack at least as new holds it already. */
  readonly settledVersion: number | null
  readonly settledAt: string | null
  /** The holder has read the sentence. */
  readonly seen: boolean
}

/** A phone whose name was taken over on this one, on purpose, and its newest number the server had by then. */
export interface TakenOver {
  readonly entryId: EntryId
  readonly phone: string
  readonly since: string
  readonly seq: number
}

/** Whose phone this is, as it is written down. */
export type Hold = Required<Pick<QueueRecord, 'holds' | 'tookOver'>> & { readonly holder: EntryId }

/** One queue for each link, so that the numbers of a device run without a gap on the server. */
export interface QueueRecord {
  readonly link: string
  readonly deviceId: DeviceId
  readonly nextSeq: number
  readonly lastReceivedAt: string | null
  /** Entry id of whoever holds the phone. */
  readonly holder: EntryId | null
  /** How often it was asked whose phone this is: the server tells a new answer from an old one by it. */
  readonly holds?: number
  readonly tookOver?: readonly TakenOver[]
  /** The holder has read that another phone took the name over: since when that one has it. */
  readonly readTaken?: string
  /** Set when the server says that the link has ended: nothing more is sent. */
  readonly ended: { readonly code: string; readonly sentence: string; readonly at: string } | null
  /** Number of the newest word about play that the holder has read. */
  readonly playRead?: number
  /** One sender at a time where the browser has no locks: who sends, until when (ms). */
  readonly lease: { readonly by: string; readonly until: number } | null
}

/** What is written, before it has its number. */
export interface ToKeep {
  readonly draft: FactDraft
  readonly before: WrittenScore
  readonly undoes?: number
}

export function freshQueue(link: string, deviceId: DeviceId): QueueRecord {
  return { link, deviceId, nextSeq: 1, lastReceivedAt: null, holder: null, ended: null, lease: null }
}

/** A fact with its number, and no answer yet. */
export function unanswered(link: string, seq: number, { draft, before, undoes }: ToKeep, writtenAt: string): KeptFact {
  return {
    link,
    seq,
    fact: numbered(draft, seq, writtenAt),
    state: 'kept',
    before,
    undoes: undoes ?? null,
    sentence: null,
    code: null,
    settledVersion: null,
    settledAt: null,
    seen: false,
  }
}

/** Drafts and settled facts are turned into records in one place, so that both stores do the same. */
export function numbered(draft: FactDraft, seq: number, writtenAt: string): DeviceFact {
  const common = { seq, cardId: draft.cardId, writer: draft.writer, writtenAt }
  switch (draft.kind) {
    case 'score': {
      const { hole, score, replaces } = draft
      return { kind: 'score', ...common, hole, score, ...(replaces?.length ? { replaces: [...replaces] } : {}) }
    }
    case 'signature':
      return { kind: 'signature', ...common, role: draft.role, scores: [...draft.scores] }
    case 'drive':
      return { kind: 'drive', ...common, sideId: draft.sideId, hole: draft.hole, entryId: draft.entryId }
    case 'ball-lost':
      return { kind: 'ball-lost', ...common, sideId: draft.sideId, hole: draft.hole, lost: draft.lost }
    case 'concession':
      return { kind: 'concession', ...common, matchId: draft.matchId, hole: draft.hole, by: draft.by }
  }
}
