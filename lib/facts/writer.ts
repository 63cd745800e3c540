// Who wrote a score: a name on a phone. Two phones under one name are two writers, so that neither overwrites what was
// entered on the other; the desk is one writer, whoever sits there.

import type { DeviceId, GroupId } from './ids'
import type { WrittenScore } from './score-fact'

export const DESK = 'desk'

/** A score another phone wrote under the same name, which this one takes the place of: everything up to that number. */
export interface ReplacedScore {
  /** Mark of the other phone. */
  readonly phone: string
  readonly seq: number
}

/** A phone as the book names it: its numbers run per group. */
export function deviceIn(groupId: GroupId, deviceId: DeviceId): DeviceId {
  return `${groupId}.${deviceId}` as DeviceId
}

/** Tells the phones of a group apart without giving their ids away. The server and the phone itself work out the same. */
export function phoneMark(device: string): string {
  return half(device, 0x811c9dc5) + half(device, 0x2f0b4a31)
}

/** FNV-1a, 32 bits: no secret, only a short sign. */
function half(text: string, start: number): string {
  let hash = start
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return (hash >>> 0).toString(16).padStart(8, '0')
}

export const writerKey = (writer: string, phone: string) => (writer === DESK ? DESK : `${writer}~${phone}`)

/** A pack kept by an older build names no phone. */
export function writerOfKey(key: string): { readonly writer: string; readonly phone: string } {
  const at = key.indexOf('~')
  return at < 0 ? { writer: key, phone: '' } : { writer: key.slice(0, at), phone: key.slice(at + 1) }
}

export interface Said {
  readonly writer: string
  readonly seq: number
  readonly score: WrittenScore
  /** Null: written before phones were told apart, or at the desk. It takes the place of whatever this name said. */
  readonly replaces: readonly ReplacedScore[] | null
}

/** What each writer says of one hole in the end, from the facts about it in the order of arrival; a cleared one is none. */
export function standingOpinions<T extends Said>(facts: readonly T[], phoneOf: (fact: T) => string): readonly T[] {
  const standing = new Map<string, T>()
  const replaced = new Map<string, number>()
  for (const fact of facts) {
    const key = writerKey(fact.writer, phoneOf(fact))
    // A server put back from a copy gets old facts once more, after what took their place.
    if (fact.seq <= (replaced.get(key) ?? 0)) continue
    if (fact.replaces === null) {
      for (const [other, one] of standing) if (one.writer === fact.writer) standing.delete(other)
    } else {
      for (const { phone, seq } of fact.replaces) {
        const other = writerKey(fact.writer, phone)
        if (other === key) continue
        replaced.set(other, Math.max(seq, replaced.get(other) ?? 0))
        if ((standing.get(other)?.seq ?? Number.POSITIVE_INFINITY) <= seq) standing.delete(other)
      }
    }
    // Taken out first: the newest stands last.
    standing.delete(key)
    standing.set(key, fact)
  }
  return [...standing.values()].filter((fact) => fact.score !== null)
}
