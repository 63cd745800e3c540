// How long to wait before the next try: quickly at first, then seldom enough to spare the battery of a phone in a valley.

const STEPS = [2, 4, 8, 15, 30, 60]

/** Seconds before try number `failures + 1`. `chance` in [0, 1) spreads phones that lost the signal together. */
export function waitSeconds(failures: number, chance: number, asked = 0): number {
  const step = STEPS[Math.min(Math.max(failures, 1), STEPS.length) - 1] ?? 60
  return Math.max(asked, step * (0.75 + chance / 2))
}
