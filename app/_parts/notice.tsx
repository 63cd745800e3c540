import type { ReactNode } from 'react'
import type { Refused } from '@/lib/result'

interface NoticeProps {
  /** Nothing: to know. `waits`: gorse. `differs`: rowan, also for refusals. */
  kind?: 'waits' | 'differs'
  word: string
  children: ReactNode
  /** At most two. */
  acts?: ReactNode
  /** Read out when it appears. */
  announced?: boolean
}

/** A bar in the margin, a word, a sentence, at most two acts. */
export function Notice({ kind, word, children, acts, announced }: NoticeProps) {
  return (
    <div
      className={kind ? `notice ${kind}` : 'notice'}
      role={announced ? (kind === 'differs' ? 'alert' : 'status') : undefined}
    >
      <p className="sc">{word}</p>
      <div>{children}</div>
      {acts ? <div className="acts">{acts}</div> : null}
    </div>
  )
}

/** A refusal as it came back: its sentence, each fault with its place, and what is kept. */
export function Refusal({ refused, kept, acts }: { refused: Refused; kept?: string; acts?: ReactNode }) {
  return (
    <Notice kind="differs" word="Refused" announced acts={acts}>
      <p>
        <b>{refused.sentence}</b> {kept}
      </p>
      {refused.faults.length > 0 ? (
        <ul>
          {refused.faults.map((fault) => (
            <li key={`${fault.place} ${fault.sentence}`}>
              {fault.place ? <b>{fault.place}: </b> : null}
              {fault.sentence}
            </li>
          ))}
        </ul>
      ) : null}
    </Notice>
  )
}
