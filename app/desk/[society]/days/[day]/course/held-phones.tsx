import { ActForm } from '@/app/desk/_form/act-form'
import { Send } from '@/app/desk/_form/field'
import { timeOf } from '@/app/desk/_frame/moments'
import { count } from '@/app/desk/_frame/words'
import type { DayId } from '@/lib/facts/ids'
import type { HeldPhone } from '@/lib/society/on-the-course'
import { takeTheLate } from './actions'

interface Props {
  readonly held: readonly HeldPhone[]
  readonly where: { readonly society: string; readonly dayId: DayId }
}

/** Phones whose link is over or was renewed, with what they brought: nothing of it counts until the desk says so. */
export function HeldPhones({ held, where }: Props) {
  if (held.length === 0) return null
  return (
    <section className="held" aria-labelledby="held-h">
      <h2 id="held-h">Came after their link had ended</h2>
      {held.map((phone) => (
        <div className="notice waits" key={phone.deviceId}>
          <p className="sc">Held</p>
          <div>
            <p>
              A phone of {phone.groupNumber === null ? 'a group that is no more' : `group ${phone.groupNumber}`} brought{' '}
              {count(phone.lines.length, 'line')} at {timeOf(phone.broughtAt)}. Nothing of it counts yet.
            </p>
            <details>
              <summary>See what it brought</summary>
              <ul>
                {phone.lines.map((line, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place in the phone's own order
                  <li key={at}>{line}</li>
                ))}
              </ul>
            </details>
          </div>
          <ActForm action={takeTheLate.bind(null, { ...where, deviceId: phone.deviceId })} label="Take these scores in">
            <p className="acts">
              <Send>Take them in</Send>
            </p>
          </ActForm>
        </div>
      ))}
    </section>
  )
}
