import { addDays, daysBetween, isDate } from '@/lib/facts/calendar'

/**
 * Last day of entries after the date of the day was changed: as many days before it as it was, but not in the past while
 * the day itself is still to come. What cannot be read as a date moves nothing.
 */
export function closingWith(closesOn: string, was: string, now: string, today: string): string {
  if (![closesOn, was, now].every(isDate)) return closesOn
  const moved = addDays(closesOn, daysBetween(was, now))
  return moved < today && today <= now ? today : moved
}
