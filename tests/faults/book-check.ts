// Reads the book's file beside the program: what is in it, by device and number, and whether the file is whole.

import Database from 'better-sqlite3'
import type { CardId, DeviceId, EntryId } from '@/lib/facts/ids'
import type { WrittenScore } from '@/lib/facts/score-fact'
import type { FactDraft, KeptFact } from '@/lib/outbox/kept-fact'

export interface Row {
  readonly id: number
  readonly cardId: CardId
  readonly hole: number
  readonly score: WrittenScore
  readonly writer: string
  readonly deviceId: DeviceId
  readonly seq: number
  readonly late: boolean
}

export interface OfDevice {
  readonly lastSeq: number
  readonly scores: readonly Row[]
  readonly signatures: readonly {
    readonly seq: number
    readonly cardId: CardId
    readonly role: string
    readonly entryId: EntryId
    readonly scores: string
  }[]
  readonly refused: readonly { readonly seq: number; readonly code: string }[]
}

export interface OpenedBook {
  readonly ofDevice: (device: string) => OfDevice
  /** Score facts of these cards in the order of their arrival. */
  readonly ofCards: (cardIds: readonly CardId[]) => readonly Row[]
  /** Every sentence SQLite has about the file; empty when it is whole. */
  readonly damage: () => readonly string[]
  readonly close: () => void
}

const scoreOf = (row: { strokes: number | null; outcome: string }): WrittenScore =>
  row.outcome === 'holed' ? row.strokes : row.outcome === 'no-score' ? 'x' : null

export function openedBook(file: string): OpenedBook {
  const db = new Database(file, { readonly: true })
  const columns = `"id", "cardId", "hole", "strokes", "outcome", coalesce("writerId", 'desk') AS writer, "deviceId", "seq", "late"`
  const scores = (where: string, ...values: unknown[]) =>
    (
      db.prepare(`SELECT ${columns} FROM "ScoreFact" WHERE ${where} ORDER BY "id"`).all(...values) as (Omit<
        Row,
        'score' | 'late'
      > & { strokes: number | null; outcome: string; late: number })[]
    ).map(({ strokes, outcome, late, ...row }) => ({ ...row, score: scoreOf({ strokes, outcome }), late: late === 1 }))
  return {
    ofDevice: (device) => {
      const known = db.prepare(`SELECT "lastSeq" FROM "Device" WHERE "id" = ?`).get(device) as
        | { lastSeq: number }
        | undefined
      return {
        lastSeq: known?.lastSeq ?? 0,
        scores: scores(`"deviceId" = ?`, device),
        signatures: db
          .prepare(
            `SELECT "seq", "cardId", "role", "entryId", "scores" FROM "Signature" WHERE "deviceId" = ? ORDER BY "seq"`,
          )
          .all(device) as OfDevice['signatures'],
        refused: db
          .prepare(`SELECT "seq", "code" FROM "RefusedFact" WHERE "deviceId" = ? ORDER BY "seq"`)
          .all(device) as OfDevice['refused'],
      }
    },
    ofCards: (cardIds) => scores(`"cardId" IN (${cardIds.map(() => '?').join(',')})`, ...cardIds),
    damage: () => [
      ...(db.pragma('integrity_check') as { integrity_check: string }[])
        .map((one) => one.integrity_check)
        .filter((one) => one !== 'ok'),
      ...(db.pragma('foreign_key_check') as { table: string }[]).map((one) => `a loose end in ${one.table}`),
    ],
    close: () => db.close(),
  }
}

/** Ways in which the book and one phone's outbox contradict each other; empty when the promise holds. */
export function contradictions(
  of: OfDevice,
  wrote: readonly { readonly seq: number; readonly draft: FactDraft }[],
  kept: readonly KeptFact[],
): readonly string[] {
  const found: string[] = []
  const lines = new Map<number, string[]>()
  const line = (seq: number, text: string) => lines.set(seq, [...(lines.get(seq) ?? []), text])
  for (const row of of.scores)
    line(row.seq, `score ${row.cardId} ${row.writer} ${row.hole} ${row.score}${row.late ? ' late' : ''}`)
  for (const one of of.signatures)
    line(one.seq, `signature ${one.cardId} ${one.entryId} ${one.role} ${one.scores.replace(/\s/g, '')}`)
  for (const { seq, code } of of.refused) line(seq, `refused ${code}`)

  if (kept.map((one) => one.seq).join() !== wrote.map((one) => one.seq).join())
    found.push(`the outbox holds ${kept.length} facts of the ${wrote.length} that were written`)
  for (const [at, { seq, draft }] of wrote.entries()) {
    const written =
      draft.kind === 'score'
        ? `score ${draft.cardId} ${draft.writer} ${draft.hole} ${draft.score}`
        : draft.kind === 'signature'
          ? `signature ${draft.cardId} ${draft.writer} ${draft.role} ${JSON.stringify(draft.scores)}`
          : draft.kind === 'concession'
            ? `concession ${draft.matchId} ${draft.hole} ${draft.by}`
            : `${draft.kind} ${draft.sideId} ${draft.hole}`
    const there = lines.get(seq) ?? []
    lines.delete(seq)
    const fact = kept[at]
    const may = (text: string) => there.length === 1 && there[0] === text
    switch (fact?.state) {
      case 'received':
        if (!may(written)) found.push(`${seq} was called received; the book has [${there.join(' | ')}], not ${written}`)
        break
      case 'late':
        if (!may(`${written} late`)) found.push(`${seq} was called late; the book has [${there.join(' | ')}]`)
        break
      case 'refused':
        if (!may(`refused ${fact.code}`)) found.push(`${seq} was refused; the book has [${there.join(' | ')}]`)
        break
      default:
        // Still in the outbox: the book may have it already, when only the answer was lost; never twice, never otherwise.
        if (there.length > 1) found.push(`${seq} waits and is in the book ${there.length} times: ${there.join(' | ')}`)
        if (there.length === 1 && !there[0]!.startsWith('refused') && there[0]!.replace(/ late$/, '') !== written)
          found.push(`${seq} waits as ${written} and is in the book as ${there[0]}`)
        if (there.length === 1 && seq > of.lastSeq) found.push(`${seq} is in the book beyond the number ${of.lastSeq}`)
        if (there.length === 0 && seq <= of.lastSeq) found.push(`${seq} is passed and is nowhere`)
    }
  }
  for (const [seq, there] of lines) found.push(`the book has a number ${seq} nobody wrote: ${there.join(' | ')}`)
  return found
}
