import type { HoleLine } from '@/lib/rules/standings'

/** Sums of a card as its foot shows them. A hole not finished leaves the gross open, and a dash stands for it. */
export function sumsOf(lines: readonly HoleLine[]) {
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
  const gross = lines.map((line) => line.gross)
  const whole = gross.every((score): score is number => typeof score === 'number')
  return {
    par: sum(lines.map((line) => line.par)),
    strokes: sum(lines.map((line) => line.strokes)),
    gross: whole ? sum(gross) : null,
    value: lines.some((line) => line.value !== null) ? sum(lines.map((line) => line.value ?? 0)) : null,
  }
}

const UNIT_WORDS = {
  points: ['point', 'points'],
  strokes: ['stroke', 'strokes'],
  holes: ['hole', 'holes'],
  skins: ['skin', 'skins'],
} as const
export type CardUnit = keyof typeof UNIT_WORDS

export const COLUMN_WORDS: Record<CardUnit, string> = { points: 'Points', strokes: 'Net', holes: 'Par', skins: 'Skins' }

export function inWords(value: number, unit: CardUnit): string {
  return `${value} ${UNIT_WORDS[unit][Math.abs(value) === 1 ? 0 : 1]}`
}

/** Against par a hole is won, halved or lost: +, 0 or −. */
export function valueFigure(value: number | null, unit: CardUnit): string {
  if (value === null) return ''
  if (unit !== 'holes') return String(value)
  return value > 0 ? '+' : value < 0 ? '−' : '0'
}

export function grossFigure(gross: HoleLine['gross']): string {
  return gross === null ? '' : gross === 'x' ? '–' : String(gross)
}
