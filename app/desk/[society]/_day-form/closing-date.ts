import { addDays, daysBetween, isDate } from '@/lib/facts/calendar'

/**
 * Last day of entries after the date of the day was changed: as many days before it as it was. What cannot be read as a
 * date moves nothing.
 */
export function closingWith(closesOn: string, was: string, now: string): string {
  return [closesOn, was, now].every(isDate) ? addDays(closesOn, daysBetween(was, now)) : closesOn
}
