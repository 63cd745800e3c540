// A day as the secretary sees it, with the links of its groups put back where the phones of the demonstration look for them.
import type { Actor } from '@/lib/facts/actor'
import type { DayRecord } from '@/lib/facts/day-record'
import { deskDay } from '@/lib/society/desk-day'
import { must } from './must'

export async function dayWithKeys(secretary: Actor, slug: string): Promise<DayRecord> {
  const { record, groupKeys } = must(await deskDay(secretary, slug), `reading ${slug}`)
  const groups = record.groups.map((group) => {
    const key = groupKeys?.find((one) => one.id === group.id)
    if (!key) throw new Error(`The secretary is not given the link of group ${group.number}.`)
    return { ...group, code: key.code, linkKey: key.linkKey }
  })
  return { ...record, groups }
}
