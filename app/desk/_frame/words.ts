// Figures and money as the desk says them.

/** 184 is "18.4", -21 is "+2.1": a plus figure gives strokes back. */
export const figure = (tenths: number | null) =>
  tenths === null ? '–' : `${tenths < 0 ? '+' : ''}${(Math.abs(tenths) / 10).toFixed(1)}`

/** Playing handicaps: -2 is "+2". */
export const handicap = (whole: number | null) => (whole === null ? '–' : whole < 0 ? `+${-whole}` : String(whole))

export const money = (pence: number) => (pence % 100 === 0 ? `£${pence / 100}` : `£${(pence / 100).toFixed(2)}`)

export const count = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']
export const inWords = (n: number) => SMALL[n] ?? String(n)

export function list(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? ''
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
