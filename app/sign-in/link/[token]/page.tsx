import type { Metadata } from 'next'
import Link from '@/app/_parts/link'
import '@/app/desk/desk.css'
import '@/app/desk/forms.css'
import { RunningHead } from '@/app/_parts/running-head'
import { ActForm } from '@/app/desk/_form/act-form'
import { Field, Send } from '@/app/desk/_form/field'
import { behindLink } from '@/lib/society/set-first-password'
import { setOwnPassword } from '../../one-time-actions'

// A one-time link: not to be found by a search, nor told to the next site by the browser.
export const metadata: Metadata = { title: 'Set your password', robots: { index: false } }

export default async function SetPassword({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params
  const behind = await behindLink(token)
  return (
    <div className="page desk">
      <RunningHead society="Daybook" href="/" place="The desk" />
      <main id="main">
        {behind.ok ? (
          <>
            <div className="title">
              <h1>Welcome, {behind.value.name}</h1>
              <p className="lead">
                You have a duty at the desk of {behind.value.societyName}. Set a password, and sign in with{' '}
                {behind.value.email} from then on.
              </p>
            </div>
            <ActForm action={setOwnPassword.bind(null, token)} label="Set your password" className="sheet-form">
              <input type="hidden" name="email" autoComplete="username" value={behind.value.email} readOnly />
              <Field
                name="password"
                label="Password"
                type="password"
                autoComplete="new-password"
                minLength={12}
                maxLength={128}
                hint="At least 12 characters; several words are easier to remember than signs."
                required
              />
              <p className="acts">
                <Send kind="first">Set the password and sign in</Send>
              </p>
            </ActForm>
          </>
        ) : (
          <div className="title">
            <h1>This link has ended</h1>
            <p className="lead">{behind.sentence}</p>
            <p className="acts">
              <Link className="btn" href="/sign-in">
                To the sign-in page
              </Link>
            </p>
          </div>
        )}
      </main>
    </div>
  )
}
