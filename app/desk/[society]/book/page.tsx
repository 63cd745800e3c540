import { Empty } from '@/app/_parts/empty'
import { Notice } from '@/app/_parts/notice'
import { DeskFrame, DeskRefusal, societyTabs } from '@/app/desk/_frame/desk-frame'
import { officerOr } from '@/app/desk/_frame/officer'
import { count } from '@/app/desk/_frame/words'
import { deskHome } from '@/lib/society/desk-day'
import { type CopyLine, copies } from '@/lib/society/keep-copies'
import { copyTheBook } from './actions'
import { CopyForm } from './copy-form'

const WHY: Readonly<Record<CopyLine['kind'], string>> = {
  asked: 'asked for',
  scheduled: 'by the clock',
  'before-migration': 'before a new version',
}

const size = (bytes: number) =>
  bytes < 1_000_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`

export default async function TheBook({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params
  const at = `/desk/${society}/book`
  const actor = await officerOr(society, at)
  const home = await deskHome(actor)
  if (!home.ok) return <DeskRefusal answer={home} back="/desk" />
  const kept = await copies(actor)
  if (!kept.ok) return <DeskRefusal answer={kept} back={`/desk/${society}`} />
  const { copies: list, old, everyHours, unreadable } = kept.value
  return (
    <DeskFrame
      societySlug={society}
      societyName={home.value.societyName}
      tabs={societyTabs(society)}
      current="book"
      folio={home.value.seasons[0]?.name ?? ''}
    >
      <div className="desk-title">
        <div>
          <h1>The book</h1>
          <p className="lead">
            Taking your society’s book away, and the copies that are kept in case the server breaks.
          </p>
        </div>
      </div>
      <section className="oxford" aria-labelledby="take-h">
        <h2 id="take-h">Take it away</h2>
        <p>
          Everything of {home.value.societyName} as tables for a spreadsheet, with a day file for each day: members,
          handicaps, every score and signature, the published sheets. Another installation can read it in again. No
          password, no link and nothing of another society is in it. It holds names, addresses and telephone numbers:
          keep it as carefully as the book.
        </p>
        <p className="acts after">
          <a className="btn first" href={`${at}/export`} download>
            Download the whole book
          </a>
        </p>
      </section>
      <section className="oxford" aria-labelledby="copies-h">
        <h2 id="copies-h">Copies on the server</h2>
        <p>
          A copy holds the whole installation, so it stays where the server is; whoever runs the server can put one
          back.{' '}
          {everyHours > 0
            ? `The server makes one by itself every ${count(everyHours, 'hour')} and keeps them for days, weeks and months.`
            : 'The server makes none by itself: that is switched off in its settings.'}
        </p>
        {old ? (
          <Notice kind="waits" word="Old">
            <p>The last copy is older than two days. Make one now, and tell whoever runs the server.</p>
          </Notice>
        ) : null}
        {unreadable.length > 0 ? (
          <Notice kind="waits" word="Not readable">
            <p>
              Passed over, because they cannot be read: {unreadable.map((path) => path.split('/').at(-1)).join(', ')}.
              Whoever runs the server should look at them or remove them.
            </p>
          </Notice>
        ) : null}
        <CopyForm action={copyTheBook.bind(null, society)} />
        {list.length === 0 ? (
          <Empty first="No copy yet.">The first one takes a second or two.</Empty>
        ) : (
          <div className="scroll" role="group" aria-label="Copies of the book">
            <table className="desk-table copies">
              <caption className="unseen">Copies of the book, newest first</caption>
              <thead>
                <tr>
                  <th scope="col">Made</th>
                  <th scope="col">Why</th>
                  <th scope="col" className="num">
                    Size
                  </th>
                </tr>
              </thead>
              <tbody>
                {list.map((copy) => (
                  <tr key={copy.fileName}>
                    <th scope="row">
                      {copy.age}
                      <span className="under second small">
                        <time dateTime={copy.madeAt}>{copy.made}</time>
                      </span>
                    </th>
                    <td>{WHY[copy.kind]}</td>
                    <td className="num fig">{size(copy.bytes)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        )}
      </section>
    </DeskFrame>
  )
}
