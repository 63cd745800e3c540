// The words a society sorts its people by: "senior", "first-timer". Kept as a JSON list; divisions may rest on them.

import { z } from 'zod'

const kept = z.array(z.string())

export const labelsOf = (json: string): readonly string[] => kept.parse(JSON.parse(json))

/** "Senior, first-timer" as it is typed: small letters, each word once. */
export function labelsIn(written: string): readonly string[] {
  const words = written
    .split(/[,;\n]+/)
    .map((word) => word.trim().replace(/\s+/g, ' ').toLowerCase())
    .filter((word) => word !== '')
  return [...new Set(words)]
}
