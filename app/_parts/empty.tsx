import type { ReactNode } from 'react'
import { Pin } from './device'

/** Where nothing is yet: what will be here, and when. */
export function Empty({ first, children, acts }: { first: string; children?: ReactNode; acts?: ReactNode }) {
  return (
    <div className="empty">
      <Pin />
      <p>
        <b>{first}</b> {children}
      </p>
      {acts ? <div className="acts">{acts}</div> : null}
    </div>
  )
}

/** Ruled lines where words will be. Places are numbered at once, so that nothing jumps when the words come. */
export function Skeleton({ rows, label }: { rows: number; label: string }) {
  return (
    <table aria-busy="true" aria-label={label}>
      <tbody>
        {Array.from({ length: rows }, (_, row) => row + 1).map((row) => (
          <tr key={row}>
            <td className="lead-col fig">{row}</td>
            <td aria-hidden="true">
              <span className="skeleton">a name will stand here</span>
            </td>
            <td className="num" aria-hidden="true">
              <span className="skeleton fig">00</span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
