'use client'

import { useState } from 'react'
import { CopyField } from '@/app/_parts/copy-field'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import { type FormAction, FRESH } from '@/app/desk/_form/act-state'
import { Choice, Field, SelectField, Send } from '@/app/desk/_form/field'
import type { UserId } from '@/lib/facts/ids'
import { endTheDuty, giveTheDuty, handTheDutyOver, type LinkState, newLink, signThemOut } from './actions'

const NO_LINK: LinkState = { path: null, sentence: null, refused: false }

/** An act that may answer with a link: the link goes to its place on the screen, a refusal to the form. */
const withLink =
  (act: (form: FormData) => Promise<LinkState>, show: (link: LinkState) => void): FormAction =>
  async (before, form) => {
    const link = await act(form)
    const { sentence, refused } = link
    if (refused)
      return {
        ...before,
        attempt: before.attempt + 1,
        refused: { code: 'refused', sentence: sentence ?? '', faults: [] },
      }
    show(link)
    return { ...FRESH, attempt: before.attempt + 1 }
  }

/** A one-time link, shown once: it is not kept anywhere it could be read again. */
function OneTimeLink({ state, origin }: { readonly state: LinkState; readonly origin: string }) {
  if (state.path === null)
    return state.sentence ? (
      <p role={state.refused ? 'alert' : 'status'} className={state.refused ? 'why' : 'said'}>
        {state.sentence}
      </p>
    ) : null
  return (
    <Notice word="Shown once" announced>
      <p>{state.sentence}</p>
      <CopyField label="One-time link" value={`${origin}${state.path}`} />
    </Notice>
  )
}

interface Props {
  readonly society: string
  readonly origin: string
  readonly line: {
    readonly dutyId: string
    readonly userId: UserId
    readonly name: string
    readonly duty: string
    readonly canSignIn: boolean
    readonly mine: boolean
  }
  readonly mayEndSessions: boolean
  readonly others: readonly { readonly name: string; readonly email: string }[]
}

export function DutyForms({ society, origin, line, mayEndSessions, others }: Props) {
  const [handed, setHanded] = useState<LinkState>(NO_LINK)
  const [link, setLink] = useState<LinkState>(NO_LINK)
  const [to, setTo] = useState('')
  return (
    <details className="rule-all">
      <summary>
        Change<span className="unseen"> the duty of {line.name}</span>
      </summary>
      <div className="answered">
        <ActForm
          action={withLink((form) => handTheDutyOver(society, line.dutyId, NO_LINK, form), setHanded)}
          label={`Hand over: ${line.duty}, ${line.name}`}
        >
          <h3>Hand it over</h3>
          {others.length > 0 ? (
            <p className="acts">
              {others.map((one) => (
                <Send key={one.email} name="to" value={`${one.email} ${one.name}`}>
                  To {one.name}
                </Send>
              ))}
            </p>
          ) : null}
          <details open={to !== '' || others.length === 0}>
            <summary>To somebody new</summary>
            <div className="fields">
              <div className="field">
                <label htmlFor={`name-${line.dutyId}`}>Name</label>
                <input id={`name-${line.dutyId}`} name="name" maxLength={80} onChange={(e) => setTo(e.target.value)} />
              </div>
              <div className="field">
                <label htmlFor={`email-${line.dutyId}`}>E-mail to sign in with</label>
                <input id={`email-${line.dutyId}`} name="email" type="email" maxLength={120} />
              </div>
              <p className="acts">
                <Send>Hand it over</Send>
              </p>
            </div>
          </details>
          <OneTimeLink state={handed} origin={origin} />
        </ActForm>
        <ActForm action={endTheDuty.bind(null, society, line.dutyId)} label={`End: ${line.duty}, ${line.name}`}>
          <h3>End it</h3>
          {mayEndSessions && !line.mine ? (
            <Choice type="checkbox" name="endSessions">
              Sign {line.name} out everywhere too
            </Choice>
          ) : null}
          <p className="acts">
            <Send kind="grave">End the duty today</Send>
          </p>
        </ActForm>
        {mayEndSessions && !line.mine ? (
          <ActForm action={signThemOut.bind(null, society, line.userId)} label={`Sign out ${line.name}`}>
            <p className="acts">
              <Send>Only sign {line.name} out everywhere</Send>
            </p>
          </ActForm>
        ) : null}
        {line.mine ? null : (
          <ActForm
            action={withLink((form) => newLink(society, line.userId, NO_LINK, form), setLink)}
            label={`New link for ${line.name}`}
          >
            {line.canSignIn ? (
              <>
                <h3>Password forgotten</h3>
                <p>
                  {line.name} sets a new password behind the link. The old one works until then; afterwards {line.name}{' '}
                  is signed out everywhere else.
                </p>
              </>
            ) : null}
            <p className="acts">
              <Send>{line.canSignIn ? 'Make a link for a new password' : 'Make a new one-time link'}</Send>
            </p>
            <OneTimeLink state={link} origin={origin} />
          </ActForm>
        )}
      </div>
    </details>
  )
}

export function GiveForm({ society, origin }: { readonly society: string; readonly origin: string }) {
  const [link, setLink] = useState<LinkState>(NO_LINK)
  return (
    <>
      <ActForm
        action={async (before, form) => {
          const { state, link: made } = await giveTheDuty(society, before, form)
          setLink(made)
          return state
        }}
        label="Give a duty"
        className="sheet-form"
        clears
      >
        <div className="fields">
          <Field name="name" label="Name" maxLength={80} required />
          <Field name="email" label="E-mail to sign in with" type="email" maxLength={120} required />
          <SelectField
            name="duty"
            label="Duty"
            initial="committee"
            options={[
              { value: 'secretary', label: 'secretary (full duty)' },
              { value: 'captain', label: 'captain' },
              { value: 'handicap-secretary', label: 'handicap secretary' },
              { value: 'treasurer', label: 'treasurer' },
              { value: 'committee', label: 'committee (reads, rules on cards)' },
            ]}
          />
        </div>
        <p className="acts">
          <Send kind="first">Give the duty</Send>
        </p>
      </ActForm>
      <OneTimeLink state={link} origin={origin} />
    </>
  )
}
