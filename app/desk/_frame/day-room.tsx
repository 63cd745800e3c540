import 'server-only'
import type { ReactNode } from 'react'
import type { DeskDay } from '@/lib/boards/desk-views'
import type { Actor } from '@/lib/facts/actor'
import { deskDay } from '@/lib/society/desk-day'
import { CalledOffNotice } from './called-off-notice'
import { DayAhead } from './day-ahead'
import { DeskFrame, DeskRefusal, dayTabs } from './desk-frame'
import { NextJob } from './next-job'
import { officerOr } from './officer'

export interface DayRoom {
  readonly society: string
  readonly day: string
  /** Address of the day at the desk. */
  readonly at: string
  readonly actor: Actor
  readonly desk: DeskDay
}

/** Who is asking, and which day: every room of a day begins with the two, or with the page that says why not. */
export async function dayRoom(
  params: Promise<{ society: string; day: string }>,
  room: string,
): Promise<DayRoom | { readonly refusal: ReactNode }> {
  const { society, day } = await params
  const at = `/desk/${society}/days/${day}`
  const actor = await officerOr(society, `${at}/${room}`)
  const found = await deskDay(actor, day)
  if (!found.ok) return { refusal: <DeskRefusal answer={found} back={`/desk/${society}`} /> }
  return { society, day, at, actor, desk: found.value }
}

interface Props {
  readonly room: DayRoom
  readonly current: string
  readonly mainClass?: string
  readonly children: ReactNode
}

export function DayFrame({ room: { society, day, at, desk }, current, mainClass, children }: Props) {
  return (
    <DeskFrame
      societySlug={society}
      societyName={desk.record.society.name}
      tabs={dayTabs(society, day)}
      current={current}
      folio={`Day ${desk.record.number}`}
      {...(mainClass ? { mainClass } : {})}
    >
      <CalledOffNotice record={desk.record} at={`/desk/${society}/days/${day}`} />
      {current === 'returns' || current === 'result' ? <DayAhead desk={desk} where={{ society, day }} /> : null}
      {children}
      <NextJob desk={desk} at={at} current={current} />
    </DeskFrame>
  )
}
