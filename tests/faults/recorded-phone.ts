// A phone that still runs the first version of the page: its deliveries as they were recorded from that version, byte
// for byte but for the names of the cards, and its own idea of an answer.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { DeviceId } from '@/lib/facts/ids'
import type { OfDevice } from './book-check'
import type { PreparedGroup } from './prepared-book'

const RECORDED = readFileSync(join(import.meta.dirname, 'recorded', 'page-of-2026-11-24.jsonl'), 'utf8')
  .trim()
  .split('\n')

interface OldAnswer {
  readonly lastSeq: number
  readonly answers: readonly { readonly seq: number; readonly answer: string; readonly sentence?: string }[]
  readonly scoreVersion: number
}

export class RecordedPhone {
  readonly #bodies: readonly string[]
  readonly told = new Map<number, string>()
  #next = 0

  constructor(
    readonly deviceId: DeviceId,
    readonly group: PreparedGroup,
  ) {
    this.#bodies = RECORDED.map((body) =>
      body
        .replace('"the-device"', JSON.stringify(deviceId))
        .replace(/card-of-(\d)/g, (_, place: string) => group.cardIds[Number(place)]!)
        .replace(/entry-(\d)/g, (_, place: string) => group.entryIds[Number(place)]!)
        .replace(/marker-of-(\d)/g, (_, place: string) => group.markerIds[Number(place)]!),
    )
  }

  /** Sends its next delivery, the same one until it is answered; true when all are. */
  async talk(): Promise<boolean> {
    const body = this.#bodies[this.#next]
    if (body === undefined) return true
    const headers = { 'content-type': 'application/json' }
    const answer = await fetch(`/api/group/${this.group.link}/facts`, { method: 'POST', headers, body })
      .then((response) => (response.status === 200 ? (response.json() as Promise<unknown>) : null))
      .catch(() => null)
    if (!isOldAnswer(answer)) return false
    for (const one of answer.answers) this.told.set(one.seq, one.answer)
    this.#next++
    return this.#next === this.#bodies.length
  }

  missing(of: OfDevice): readonly string[] {
    const there = [...of.scores.filter((row) => !row.late), ...of.signatures].map((one) => one.seq)
    return [...this.told]
      .filter(([seq, answer]) => answer === 'received' && there.filter((one) => one === seq).length !== 1)
      .map(([seq]) => `${seq} of the recorded phone is not in the book once`)
  }
}

function isOldAnswer(value: unknown): value is OldAnswer {
  const answer = value as Partial<OldAnswer> | null
  return (
    Number.isInteger(answer?.lastSeq) &&
    Number.isInteger(answer?.scoreVersion) &&
    Array.isArray(answer?.answers) &&
    answer.answers.every(
      (one) =>
        Number.isInteger(one.seq) &&
        (one.answer === 'received' || (['late', 'refused'].includes(one.answer) && typeof one.sentence === 'string')),
    )
  )
}
