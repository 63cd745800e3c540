'use client'

import { useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'
import { dateInWords } from '@/lib/boards/dates-in-words'
import { ask, correct, leave, renewOwnLink } from './own-actions'

interface Props {
  readonly pageKey: string
  readonly email: string | null
  readonly phone: string | null
  readonly leftOn: string | null
  readonly leaversShownAs: 'name' | 'initials' | 'former-member'
}

const SHOWN = [
  { value: 'name', label: 'by name' },
  { value: 'initials', label: 'by initials' },
  { value: 'former-member', label: 'as “Former member”' },
] as const

export function OwnDetails({ pageKey, email, phone, leftOn, leaversShownAs }: Props) {
  const [sure, setSure] = useState(false)
  const offered = SHOWN.slice(SHOWN.findIndex((one) => one.value === leaversShownAs))
  return (
    <>
      <section aria-labelledby="correct-h">
        <h2 id="correct-h">Put it right</h2>
        <ActForm action={correct.bind(null, pageKey)} label="Change your contact details" className="sheet-form">
          <div className="fields">
            <Field name="email" label="E-mail" type="email" initial={email} maxLength={120} autoComplete="email" />
            <Field name="phone" label="Telephone" type="tel" initial={phone} maxLength={40} autoComplete="tel" />
          </div>
          <p className="acts">
            <Send>Keep these contact details</Send>
          </p>
        </ActForm>
        <ActForm action={ask.bind(null, pageKey)} label="Ask for a correction" className="sheet-form" clears>
          <Field
            name="what"
            label="Anything else that is wrong"
            hint="A name, a figure, a score: the officers read it and put it right, or say why not."
            maxLength={400}
            required
          />
          <p className="acts">
            <Send>Ask the officers</Send>
          </p>
        </ActForm>
      </section>
      <section aria-labelledby="link-h">
        <h2 id="link-h">Your private link</h2>
        <ActForm action={renewOwnLink.bind(null, pageKey)} label="Renew your link" className="sheet-form">
          <p>Has somebody else got the link of your page? A new one is made at once, and the old one ends.</p>
          <p className="acts">
            <Send>Make a new link</Send>
          </p>
        </ActForm>
      </section>
      <section aria-labelledby="leave-h">
        <h2 id="leave-h">Leave the society</h2>
        {leftOn ? (
          <p>You left on {dateInWords(leftOn)}. Your contact details go when the time in the privacy notice is over.</p>
        ) : (
          <ActForm action={leave.bind(null, pageKey)} label="Leave the society" className="sheet-form">
            <p>
              The results of days you played stay, because they are other people’s results too. From then on you are
              shown on them as you choose here; no figure changes.
            </p>
            <SelectField
              name="shownAs"
              label="Shown on the sheets"
              initial={leaversShownAs}
              options={offered.map((one) => ({ ...one }))}
            />
            <Choice type="checkbox" name="sure" checked={sure} onChange={(event) => setSure(event.target.checked)}>
              I want to leave
            </Choice>
            <p className="acts">
              <Send kind="grave" why={!sure && 'tick the line above first'}>
                Leave the society
              </Send>
            </p>
          </ActForm>
        )}
      </section>
    </>
  )
}
