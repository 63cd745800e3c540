// How old the figures are once the line is down: "as of 2.41 pm, seven minutes ago".

import { timeInWords } from '@/lib/boards/dates-in-words'
import { counted } from '@/lib/boards/in-words'

export function barAge(countedAt: string, now: Date, zone: string): string {
  const minutes = Math.floor((now.getTime() - new Date(countedAt).getTime()) / 60_000)
  const at = `as of ${timeInWords(countedAt, zone)}`
  if (minutes < 1) return at
  if (minutes < 120) return `${at}, ${counted(minutes, 'minute')} ago`
  return `${at}, ${counted(Math.floor(minutes / 60), 'hour')} ago`
}
