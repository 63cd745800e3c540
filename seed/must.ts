// The demonstration may not meet a refusal: one stops it with its sentence.

import type { Result } from '@/lib/result'

export function must<T>(result: Result<T>, what: string): T {
  if (result.ok) return result.value
  const faults = result.faults.map((fault) => `\n  ${fault.place}: ${fault.sentence}`).join('')
  throw new Error(`${what}: ${result.sentence} (${result.code})${faults}`)
}
