import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { DayAddress } from '@/app/desk/_form/answer-for-day'
import { Send } from '@/app/desk/_form/field'
import { SeenDay } from '@/app/desk/_form/seen-day'
import { playTheDayAhead } from '@/app/desk/[society]/days/[day]/lifecycle-actions'
import { dateInWords } from '@/lib/boards/dates-in-words'
import type { DeskDay } from '@/lib/boards/desk-views'
import { glanceOf } from './day-glance'

/** Where cards are entered and results made: the day has not come, and what pressing on would mean. */
export function DayAhead({ desk, where }: { readonly desk: DeskDay; readonly where: DayAddress }) {
  const { record, daysToGo } = desk
  if (!desk.isAhead || record.calledOff) return null
  return (
    <Notice kind="waits" word="This day has not come yet">
      <ActForm action={playTheDayAhead.bind(null, where)} label="Enter cards before the day">
        <SeenDay id={record.id} version={record.version} glance={glanceOf(record)} />
        <p>
          It is on {dateInWords(record.date)}, {daysToGo === 1 ? 'tomorrow' : `${daysToGo} days from now`}. No card can
          be entered and no result published before then. If the date is wrong, change the day. If it really is being
          played early, say so here: it stands in the record, and results can then be published before the date.
        </p>
        <p className="acts">
          <Send kind="grave">Played early: enter cards before {dateInWords(record.date)}</Send>
        </p>
      </ActForm>
    </Notice>
  )
}
