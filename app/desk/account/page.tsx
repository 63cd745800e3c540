import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import Link from '@/app/_parts/link'
import { RunningHead } from '@/app/_parts/running-head'
import { ActForm } from '@/app/desk/_form/act-form'
import { Field, Send } from '@/app/desk/_form/field'
import { momentOf } from '@/app/desk/_frame/moments'
import { SignOut } from '@/app/desk/_frame/sign-out'
import { askedWithNewCookies } from '@/app/sign-in/keep-cookies'
import { ownAccount } from '@/lib/society/own-account'
import { desksOf } from '@/lib/society/who-is-asking'
import { endOthers, endThisOne, newPassword, takePasskeyAway } from './actions'
import { AddPasskey } from './add-passkey'
import './account.css'

export const metadata: Metadata = { title: 'Your account' }

export default async function Account() {
  const asked = await askedWithNewCookies()
  const account = await ownAccount(asked)
  if (!account.ok) redirect('/sign-in?next=/desk/account')
  const { name, email, sessions, passkeys } = account.value
  const desks = await desksOf(asked)
  return (
    <div className="page desk">
      <RunningHead society="Daybook" href="/desk" place="Your account" />
      <main id="main">
        <div className="desk-title">
          <div>
            <h1>{name}</h1>
            <p className="lead">
              Signs in as {email}:{' '}
              {desks.map((desk) => `${desk.duties.join(', ').replaceAll('-', ' ')} of ${desk.name}`).join('; ')}
            </p>
          </div>
          <div className="acts">
            <Link className="btn" href="/desk">
              To the desk
            </Link>
            <SignOut />
          </div>
        </div>
        <section aria-labelledby="sessions-h">
          <h2 id="sessions-h">Where you are signed in</h2>
          <ul className="account-list">
            {sessions.map((one) => (
              <li key={one.sessionId}>
                <p>
                  <b>{one.device}</b>
                  {one.here ? <span className="second"> this one</span> : null}
                  <span className="under second small">
                    signed in {momentOf(one.since)}
                    {one.from ? `, from the network ${one.from}` : ''}, last seen {momentOf(one.lastSeen)}
                  </span>
                </p>
                {one.here ? null : (
                  <ActForm action={endThisOne} label={`End the session of ${one.device}`}>
                    <input type="hidden" name="sessionId" value={one.sessionId} />
                    <Send>End it</Send>
                  </ActForm>
                )}
              </li>
            ))}
          </ul>
          {sessions.length > 1 ? (
            <ActForm action={endOthers} label="End all other sessions">
              <p className="acts">
                <Send>End all others</Send>
              </p>
            </ActForm>
          ) : null}
        </section>
        <section aria-labelledby="passkeys-h">
          <h2 id="passkeys-h">Passkeys</h2>
          <p>
            With a passkey you sign in by the lock of your device, without typing a password: it cannot be guessed, and
            no other site can ask for it.
          </p>
          <ul className="account-list">
            {passkeys.map((one) => (
              <li key={one.passkeyId}>
                <p>
                  <b>{one.name}</b>
                  {one.since ? <span className="under second small">since {momentOf(one.since)}</span> : null}
                </p>
                <ActForm action={takePasskeyAway} label={`Remove the passkey ${one.name}`}>
                  <input type="hidden" name="passkeyId" value={one.passkeyId} />
                  <Send>Remove it</Send>
                </ActForm>
              </li>
            ))}
          </ul>
          <AddPasskey />
        </section>
        <section aria-labelledby="password-h">
          <h2 id="password-h">Change the password</h2>
          <ActForm action={newPassword} label="Change the password" className="sheet-form" clears>
            <input type="hidden" name="username" autoComplete="username" value={email} readOnly />
            <div className="fields">
              <Field
                name="currentPassword"
                label="Present password"
                type="password"
                autoComplete="current-password"
                required
              />
              <Field
                name="newPassword"
                label="New password"
                type="password"
                autoComplete="new-password"
                minLength={12}
                maxLength={128}
                hint="At least 12 characters. Every other session ends."
                required
              />
            </div>
            <p className="acts">
              <Send>Change it</Send>
            </p>
          </ActForm>
        </section>
      </main>
    </div>
  )
}
