import Link from '@/app/_parts/link'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { momentOf } from '@/app/desk/_frame/moments'
import { fullName } from '@/lib/facts/person-name'
import { nextSheet } from '@/lib/society/next-sheet'
import { dayBoard, resultSheet } from '@/lib/society/read-board'
import { returns } from '@/lib/society/returns'
import { CloseDay, Publish } from './acts'
import { BoardTable } from './board-table'
import { DayRulings } from './day-rulings'
import { DivisionTables } from './division-tables'
import { PrizeList } from './prize-list'

export default async function Result({ params }: { params: Promise<{ society: string; day: string }> }) {
  const room = await dayRoom(params, 'result')
  if ('refusal' in room) return room.refusal
  const { society, day, at, actor, desk } = room
  const { record } = desk
  const view = await returns(actor, record.id)
  if (!view.ok) return <DeskRefusal answer={view} back={at} />
  const board = await dayBoard(society, day)
  const last = record.publications.at(-1)
  const sheet = last ? await resultSheet(society, day) : null
  const closed = record.status === 'closed'
  const next = await nextSheet(actor, record.id)
  const differs = next.ok ? next.value.differs : []
  // What is published stands while nothing differs; otherwise the prizes of the next sheet are seen before it goes out.
  const isOut = closed && last !== undefined && differs.length === 0
  const where = { society, day }
  const names = new Map(record.entries.map((entry) => [entry.id, fullName(entry)]))
  return (
    <DayFrame room={room} current="result">
      <div className="desk-title">
        <div>
          <p className="sc second">
            Day {record.number} · {record.name}
          </p>
          <h1>Result</h1>
          <p className="lead">
            {last
              ? `Sheet ${last.number}, published ${momentOf(last.publishedAt)}.${closed ? '' : ' The day is open again.'}`
              : closed
                ? 'Closed and counted, not published yet.'
                : 'The day is still open.'}
          </p>
        </div>
        {last ? (
          <p className="acts">
            <Link className="btn" href={`/${society}/days/${day}/result`}>
              The sheet as members see it
            </Link>
          </p>
        ) : null}
      </div>
      {closed ? (
        <Publish record={record} where={where} differs={differs} empty={next.ok ? next.value.empty : []} />
      ) : (
        <CloseDay record={record} where={where} view={view.value} at={at} isAhead={desk.isAhead} />
      )}
      {isOut && sheet?.ok ? (
        <PrizeList sheet={sheet.value.sheet} title={`Prizes on sheet ${sheet.value.sheet.number}`} />
      ) : next.ok && record.status !== 'called' && !record.calledOff ? (
        <PrizeList
          sheet={next.value.sheet}
          title={closed ? `Prizes, before sheet ${next.value.sheet.number} is published` : 'Prizes, if play ended now'}
        />
      ) : null}
      {board.ok
        ? board.value.competitions.map((competition) => (
            <section key={competition.id} className="desk-sheet" aria-labelledby={`standing-${competition.id}`}>
              <h2 id={`standing-${competition.id}`}>{competition.name}</h2>
              <p className="small second">
                {competition.formatName}, {competition.allowance}. {competition.allowanceFrom}. Ties:{' '}
                {competition.tieRule} {competition.moreTerms?.join(' ')}
              </p>
              {competition.notShared?.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              <BoardTable
                board={competition}
                name={(entryId) => names.get(entryId) ?? 'unknown'}
                card={(row) => `/${society}/days/${day}/cards/${row.entryIds[0] ?? row.entrant}`}
              />
              <DivisionTables board={competition} />
            </section>
          ))
        : null}
      {record.status === 'called' || !board.ok ? null : (
        <DayRulings record={record} boards={board.value.competitions} where={where} />
      )}
      {record.publications.length > 0 ? <Sheets record={record} society={society} day={day} /> : null}
    </DayFrame>
  )
}

function Sheets({
  record,
  society,
  day,
}: {
  readonly record: { readonly publications: readonly { number: number; publishedAt: Date; reason: string | null }[] }
  readonly society: string
  readonly day: string
}) {
  return (
    <section className="desk-sheet" aria-labelledby="sheets-h">
      <h2 id="sheets-h">All sheets</h2>
      <ol className="ledger rulings">
        {record.publications.toReversed().map((one) => (
          <li key={one.number}>
            <p className="in-margin fig">{one.number}</p>
            <p>
              <Link href={`/${society}/days/${day}/result/${one.number}`}>Sheet {one.number}</Link>, published{' '}
              {momentOf(one.publishedAt)}. {one.reason}
            </p>
          </li>
        ))}
      </ol>
    </section>
  )
}
