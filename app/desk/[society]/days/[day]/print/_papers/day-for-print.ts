import 'server-only'
import { headers } from 'next/headers'
import { officerOr, shown } from '@/app/desk/_frame/officer'
import { deskDay } from '@/lib/society/desk-day'
import { ownAddress } from '@/lib/society/own-address'

export interface PrintParams {
  params: Promise<{ society: string; day: string }>
  searchParams: Promise<Record<string, string | string[] | undefined>>
}

/** The day as the desk has it, where the printed papers are kept, and the address the codes on them lead to. */
export async function dayForPrint(params: PrintParams['params'], paper = '') {
  const { society, day } = await params
  const at = `/desk/${society}/days/${day}/print`
  const actor = await officerOr(society, paper ? `${at}/${paper}` : at)
  const desk = shown(await deskDay(actor, day))
  return { actor, desk, record: desk.record, at, society, day, address: ownAddress(await headers()) }
}
