import { timeOf } from '@/app/desk/_frame/moments'
import type { ActLine } from '@/lib/boards/record-of-acts'
import type { RecordDay as Day } from './days-of-record'

/** More changes than these are folded: a first draw moves everybody. */
const SHOWN = 4

/** One day of the record, folded under its heading. */
export function RecordDay({ day: { day, lines, sum, open } }: { readonly day: Day }) {
  return (
    <details className="rule-all record-day" open={open}>
      <summary>
        <span>
          <b>{day}</b>
          <span className="under second small">{sum}</span>
        </span>
      </summary>
      <table className="record">
        <caption className="unseen">What was done on {day}, newest first</caption>
        <thead className="unseen">
          <tr>
            <th scope="col">When</th>
            <th scope="col">Who</th>
            <th scope="col">Did</th>
            <th scope="col">To what, and what changed</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.id}>
              <td className="record-when">
                {timeOf(line.at)}
                {line.from ? <span className="under second small">from {line.from}</span> : null}
              </td>
              <td className="record-who">{line.who}</td>
              <td className="record-did">
                {line.did}
                <span className="under second small">{line.areaName}</span>
              </td>
              <td className="record-subject">
                <b>{line.subject}</b>
                <Changes changes={line.changes} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}

function Changes({ changes }: Pick<ActLine, 'changes'>) {
  if (changes.length === 0) return null
  const list = (some: ActLine['changes']) => (
    <dl className="record-changes">
      {some.map((change) => (
        <div key={change.what}>
          <dt>{change.what}</dt>
          <dd>
            {change.before === null ? null : <del>{change.before}</del>}{' '}
            {change.after === null ? <span className="second">taken out</span> : <span>{change.after}</span>}
          </dd>
        </div>
      ))}
    </dl>
  )
  if (changes.length <= SHOWN) return list(changes)
  return (
    <>
      {list(changes.slice(0, SHOWN - 1))}
      <details className="record-more">
        <summary>and {changes.length - SHOWN + 1} more</summary>
        {list(changes.slice(SHOWN - 1))}
      </details>
    </>
  )
}
