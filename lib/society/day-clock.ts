// When the links and codes of a day's groups end.

import { addDays, momentIn } from '@/lib/facts/calendar'
import { zoneOfInstallation } from '@/lib/store/settings'

/** With the day after: a phone that was switched off at the bar can still deliver the next morning. */
export function codesUntil(date: string): Date {
  return momentIn(addDays(date, 2), '00:00', zoneOfInstallation())
}
