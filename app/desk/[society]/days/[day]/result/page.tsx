import Link from 'next/link'
import { Notice } from '@/app/_parts/notice'
import { DayFrame, dayRoom } from '@/app/desk/_frame/day-room'
import { DeskRefusal } from '@/app/desk/_frame/desk-frame'
import { momentOf } from '@/app/desk/_frame/moments'
import { money } from '@/app/desk/_frame/words'
import type { ResultSheet } from '@/lib/boards/views'
import { fullName } from '@/lib/facts/person-name'
import { dayBoard, resultSheet } from '@/lib/society/read-board'
import { returns } from '@/lib/society/returns'
import { CloseDay, Publish } from './acts'
import { BoardTable } from './board-table'
import { DayRulings } from './day-rulings'

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
  // A card ruled on after the sheet went out: the board says something else than the sheet.
  const moved = Boolean(
    last && board.ok && sheet?.ok && standingOf(board.value) !== standingOf(sheet.value.sheet.board),
  )
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
      {moved ? (
        <Notice kind="differs" word="The sheet and the board differ">
          <p>Something was corrected since sheet {last?.number}. Publish the next sheet with its reason.</p>
        </Notice>
      ) : null}
      {closed ? (
        <Publish record={record} where={where} waiting={moved} />
      ) : (
        <CloseDay record={record} where={where} view={view.value} at={at} isAhead={desk.isAhead} />
      )}
      {sheet?.ok ? <Prizes sheet={sheet.value.sheet} /> : null}
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

const standingOf = (board: ResultSheet['board']) =>
  JSON.stringify(
    board.competitions.map((one) =>
      one.rows.map(({ place, entrant, score, noPlace }) => [place, entrant, score, noPlace]),
    ),
  )

function Prizes({ sheet }: { readonly sheet: ResultSheet }) {
  if (sheet.prizes.length === 0) return null
  return (
    <section className="desk-sheet" aria-labelledby="prizes-h">
      <h2 id="prizes-h">Prizes on sheet {sheet.number}</h2>
      <table>
        <caption className="unseen">Prizes</caption>
        <thead>
          <tr>
            <th scope="col">Prize</th>
            <th scope="col">Winner</th>
            <th scope="col" className="num">
              Score
            </th>
          </tr>
        </thead>
        <tbody>
          {sheet.prizes.map((prize) => (
            <tr key={`${prize.competition} ${prize.name}`}>
              <th scope="row">
                {prize.name}
                <span className="under second small">
                  {prize.competition}
                  {prize.valuePence === null ? '' : `, ${money(prize.valuePence)}`}
                </span>
              </th>
              <td>
                {prize.winner}
                {prize.because ? <span className="under aside">{prize.because}</span> : null}
              </td>
              <td className="num fig">{prize.score}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
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
