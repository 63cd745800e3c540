// Light checks for the phone, where the full schemas would weigh more than the card itself. A test holds each of them
// against its schema in lib/facts, on good values and on broken ones.

import type { CardPack } from '@/lib/facts/card-pack'
import { PLAY_STOP_KINDS, type PlayNow } from '@/lib/facts/play-stop'
import type { DeliveryAnswer, DeviceFact, FactAnswer, WrittenScore } from '@/lib/facts/score-fact'

type Unknown = Readonly<Record<string, unknown>>

const isObject = (value: unknown): value is Unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isWhole = (value: unknown, from: number, to = Number.MAX_SAFE_INTEGER): value is number =>
  Number.isSafeInteger(value) && (value as number) >= from && (value as number) <= to
const isText = (value: unknown, from: number, to: number): value is string =>
  typeof value === 'string' && value.length >= from && value.length <= to
const hasOnly = (value: Unknown, keys: readonly string[]) =>
  Object.keys(value).length === keys.length && keys.every((key) => key in value)

export const isWrittenScore = (value: unknown): value is WrittenScore =>
  value === null || value === 'x' || isWhole(value, 1, 30)

// The form in which a phone writes a time (`toISOString`); the server's schema takes this and a little more.
const TIME = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/

const isReplaced = (value: unknown) =>
  Array.isArray(value) &&
  value.length <= 8 &&
  value.every(
    (one: unknown) =>
      isObject(one) && hasOnly(one, ['phone', 'seq']) && isText(one.phone, 1, 40) && isWhole(one.seq, 1),
  )

const COMMON = ['kind', 'seq', 'cardId', 'writer', 'writtenAt']

export function isDeviceFact(value: unknown): value is DeviceFact {
  if (!isObject(value)) return false
  if (!isWhole(value.seq, 1) || !isText(value.cardId, 1, 40) || !isText(value.writer, 1, 40)) return false
  if (typeof value.writtenAt !== 'string' || !TIME.test(value.writtenAt)) return false
  if (value.kind === 'score') {
    const replacing = value.replaces !== undefined
    return (
      hasOnly(value, [...COMMON, 'hole', 'score', ...('replaces' in value ? ['replaces'] : [])]) &&
      isWhole(value.hole, 1, 18) &&
      isWrittenScore(value.score) &&
      (!replacing || isReplaced(value.replaces))
    )
  }
  if (value.kind === 'signature') {
    return (
      hasOnly(value, [...COMMON, 'role', 'scores']) &&
      (value.role === 'player' || value.role === 'marker') &&
      Array.isArray(value.scores) &&
      isWhole(value.scores.length, 9, 18) &&
      value.scores.every(isWrittenScore)
    )
  }
  if (value.kind === 'drive' || value.kind === 'ball-lost') {
    const own = value.kind === 'drive' ? 'entryId' : 'lost'
    return (
      hasOnly(value, [...COMMON, 'sideId', 'hole', own]) &&
      isText(value.sideId, 1, 40) &&
      isWhole(value.hole, 1, 18) &&
      (value.kind === 'drive'
        ? value.entryId === null || isText(value.entryId, 1, 40)
        : typeof value.lost === 'boolean')
    )
  }
  if (value.kind === 'concession') {
    return (
      hasOnly(value, [...COMMON, 'matchId', 'hole', 'by']) &&
      isText(value.matchId, 1, 40) &&
      (value.hole === null || isWhole(value.hole, 1, 18)) &&
      (value.by === null || value.by === 'a' || value.by === 'b')
    )
  }
  return false
}

function isFactAnswer(value: unknown): value is FactAnswer {
  if (!isObject(value) || !isWhole(value.seq, 1)) return false
  if (value.answer === 'received') return true
  if (value.answer === 'late') return typeof value.sentence === 'string'
  return value.answer === 'refused' && typeof value.code === 'string' && typeof value.sentence === 'string'
}

/** Anything but a proper answer (a hotel's sign-in page, half an answer, another program) settles nothing. */
export function isDeliveryAnswer(value: unknown): value is DeliveryAnswer {
  return (
    isObject(value) &&
    isWhole(value.lastSeq, 0) &&
    isWhole(value.scoreVersion, 0) &&
    Array.isArray(value.answers) &&
    value.answers.every(isFactAnswer)
  )
}

const KINDS: readonly unknown[] = PLAY_STOP_KINDS

export const isPlayNow = (value: unknown): value is PlayNow =>
  isObject(value) &&
  isWhole(value.number, 1) &&
  KINDS.includes(value.kind) &&
  typeof value.reason === 'string' &&
  typeof value.toldAt === 'string'

const READINGS: readonly unknown[] = ['points', 'net', 'gross', 'par']

export function isCardPack(value: unknown): value is CardPack {
  if (!isObject(value) || value.packVersion !== 1) return false
  if (!isObject(value.group) || !isWhole(value.scoreVersion, 0) || !READINGS.includes(value.reading)) return false
  return (
    Array.isArray(value.cards) &&
    value.cards.length > 0 &&
    value.cards.every(
      (card: unknown) =>
        isObject(card) &&
        isText(card.cardId, 1, 40) &&
        isText(card.entryId, 1, 40) &&
        isObject(card.written) &&
        isObject(card.ruled) &&
        Array.isArray(card.signatures) &&
        Array.isArray(card.holes) &&
        card.holes.length > 0,
    )
  )
}

export interface SaidNo {
  readonly code: string
  readonly sentence: string
  /** With the code `gap`: the number the server wants next. */
  readonly expected: number | null
}

/** A refusal in our own form. Only this ends a link; a bare 404 may come from anything between here and the server. */
export function saidNo(value: unknown): SaidNo | null {
  if (!isObject(value) || typeof value.code !== 'string' || typeof value.sentence !== 'string') return null
  return { code: value.code, sentence: value.sentence, expected: isWhole(value.expected, 1) ? value.expected : null }
}
