import { ok, type Result, refused } from '@/lib/result'

/** "18.4", "18,4", "+2.1" and "18.4*" as tenths; a plus figure is negative. */
export function readFigure(written: string, place = 'claimedTenths'): Result<number, 'not-understood'> {
  const match = /^(\+|-|−)?\s*(\d{1,2})(?:[.,](\d))?\s*\*?$/.exec(written.trim())
  if (!match) {
    const sentence = written.trim()
      ? `“${written.trim()}” is no handicap. Write 18.4, or +2.1 for a plus figure.`
      : 'A figure is needed: write 18.4, or +2.1 for a plus figure.'
    return refused('not-understood', sentence, [{ place, sentence }])
  }
  const tenths = Number(match[2]) * 10 + Number(match[3] ?? 0)
  if (match[1] === '+') return ok(tenths === 0 ? 0 : -tenths)
  if (match[1]) {
    const sentence = `Is “${written.trim()}” a plus figure? Then write it as +${match[2]}.${match[3] ?? 0}.`
    return refused('not-understood', sentence, [{ place, sentence }])
  }
  return ok(tenths)
}
