import type { Metadata } from 'next'
import { headers } from 'next/headers'
import { cache } from 'react'
import { Empty } from '@/app/_parts/empty'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { houseZone } from '@/lib/society/house-zone'
import { ownAddress } from '@/lib/society/own-address'
import { publicStartSheet } from '@/lib/society/publish-start'
import { dayBoard } from '@/lib/society/read-board'
import { found } from '../../../../_board/answer'
import { NothingHere } from '../../../../_board/nothing-here'
import { PageFrame } from '../../../../_board/page-frame'
import { headOf } from '../../../../_board/screen-board'
import { StartSheetPage } from '../../../../_board/start-sheet-page'
import '../../../../_styles/start.css'

interface Props {
  params: Promise<{ society: string; day: string }>
}

const read = cache(publicStartSheet)

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { society, day } = await params
  const sheet = await read(society, day)
  if (!sheet.ok) return { title: 'Start sheet' }
  const { dayName, societyName, courseName, date } = sheet.value
  return { title: `Start sheet: ${dayName} · ${societyName}`, description: `${courseName}, ${dateInWords(date)}.` }
}

export default async function StartPage({ params }: Props) {
  const { society, day } = await params
  const { value: board, refusal } = found(await dayBoard(society, day))
  if (refusal) return <NothingHere society={society} refusal={refusal} />
  const sheet = await read(society, day)
  return (
    <PageFrame head={headOf(board)} here="start">
      {sheet.ok && sheet.value.published ? (
        <StartSheetPage
          sheet={sheet.value}
          course={board.course}
          zone={houseZone()}
          address={ownAddress(await headers())}
        />
      ) : (
        <>
          <div className="title">
            <p className="sc second">{board.dayName}</p>
            <h1>Start sheet</h1>
          </div>
          <Empty first="The start sheet is not published yet.">
            It stands here as soon as the groups are drawn and handicaps are frozen.
          </Empty>
        </>
      )}
    </PageFrame>
  )
}
