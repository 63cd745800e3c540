import Link from '@/app/_parts/link'
import { Notice } from '@/app/_parts/notice'
import { calledOffSentence } from '@/lib/boards/called-off'
import type { DayRecord } from '@/lib/facts/day-record'

/** On every page of a day that was called off, above everything else. */
export function CalledOffNotice({ record, at }: { readonly record: DayRecord; readonly at: string }) {
  if (!record.calledOff) return null
  return (
    <Notice
      kind="differs"
      word="Called off"
      acts={
        <Link className="btn" href={`${at}#call-off`}>
          Put it back on
        </Link>
      }
    >
      <p>
        <b>{calledOffSentence(record.calledOff.reason)}</b> Nothing can be entered, keyed or published until the day is
        put back on. Members read the reason on the fixture list.
      </p>
    </Notice>
  )
}
