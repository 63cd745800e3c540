import type { CardId, DayId, RoundId } from '@/lib/facts/ids'
import 'server-only'
import { z } from 'zod'
import type { CardRecord, FactRecord, RulingRecord, SignatureRecord } from '@/lib/facts/day-record'
import { replacedScores, type WrittenScore, writtenScore } from '@/lib/facts/score-fact'
import type { Tx } from './client'
import { kindFromBook } from './rulings'

export async function cardsOf(tx: Tx, roundId: RoundId): Promise<CardRecord[]> {
  const rows = await tx.card.findMany({
    where: { roundId },
    select: { id: true, entryId: true, markerId: true, state: true, takenInAt: true, ...PAPER_COLUMNS },
    orderBy: { id: 'asc' },
  })
  return rows.map(cardOf)
}

export const PAPER_COLUMNS = { paperOut: true, paperIn: true, paperTotal: true } as const

interface CardRow extends Omit<CardRecord, 'state' | 'paper'> {
  readonly state: string
  readonly paperOut: number | null
  readonly paperIn: number | null
  readonly paperTotal: number | null
}

export function cardOf({ paperOut, paperIn, paperTotal, ...row }: CardRow): CardRecord {
  const paper = { out: paperOut, in: paperIn, total: paperTotal }
  return { ...row, state: row.state as CardRecord['state'], paper }
}

/** In the order of arrival. */
export async function factsOf(tx: Tx, cardIds: readonly CardId[]): Promise<FactRecord[]> {
  const rows = await tx.scoreFact.findMany({
    where: { cardId: { in: [...cardIds] } },
    select: {
      id: true,
      cardId: true,
      hole: true,
      strokes: true,
      outcome: true,
      writerId: true,
      deviceId: true,
      seq: true,
      replaces: true,
      writtenAt: true,
      receivedAt: true,
      late: true,
    },
    orderBy: { id: 'asc' },
  })
  return rows.map(({ strokes, outcome, writerId, replaces, ...row }) => ({
    ...row,
    replaces: replaces === null ? null : replacedScores.parse(JSON.parse(replaces)),
    score: outcome === 'holed' ? strokes : outcome === 'no-score' ? 'x' : null,
    writer: writerId ?? 'desk',
  }))
}

export async function signaturesOf(tx: Tx, cardIds: readonly CardId[]): Promise<SignatureRecord[]> {
  const rows = await tx.signature.findMany({
    where: { cardId: { in: [...cardIds] } },
    select: { cardId: true, role: true, entryId: true, scores: true, signedAt: true, withdrawnAt: true },
    orderBy: [{ receivedAt: 'asc' }, { id: 'asc' }],
  })
  return rows.map((row) => ({
    ...row,
    role: row.role as SignatureRecord['role'],
    scores: scoresOf(row.scores),
  }))
}

function scoresOf(json: string): readonly WrittenScore[] {
  return z.array(writtenScore).parse(JSON.parse(json))
}

/** Of the whole day, or of some of its cards. */
export async function rulingsOf(tx: Tx, dayId: DayId, cardIds?: readonly CardId[]): Promise<RulingRecord[]> {
  const rows = await tx.ruling.findMany({
    where: { dayId, ...(cardIds ? { cardId: { in: [...cardIds] } } : {}) },
    select: {
      id: true,
      number: true,
      cardId: true,
      kind: true,
      hole: true,
      value: true,
      clause: true,
      reason: true,
      byName: true,
      ruledAt: true,
      replaces: true,
      sets: true,
    },
    orderBy: { number: 'asc' },
  })
  return rows.map(({ sets, ...row }) => ({ ...row, kind: kindFromBook(row.kind, sets) }))
}
