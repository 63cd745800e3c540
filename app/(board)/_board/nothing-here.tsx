import { Empty } from '@/app/_parts/empty'
import type { Refused } from '@/lib/result'
import { societyAt } from './addresses'

/** A page that exists but has nothing to show: why, and where to go. */
export function NothingHere({ society, refusal }: { society: string; refusal: Refused }) {
  return (
    <div className="page">
      <main id="main">
        <h1 className="title">Not yet</h1>
        <Empty
          first={refusal.sentence}
          acts={
            <a className="btn" href={societyAt(society)}>
              To the fixture card
            </a>
          }
        />
      </main>
    </div>
  )
}
