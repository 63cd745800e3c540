import type { Metadata } from 'next'
import Link from '@/app/_parts/link'
import '@/app/desk/desk.css'
import '@/app/desk/forms.css'
import { RunningHead } from '@/app/_parts/running-head'
import { ActForm } from '@/app/desk/_form/act-form'
import { Field, Send } from '@/app/desk/_form/field'
import { societyList } from '@/lib/society/found-society'
import { enterDesk } from './actions'
import { nextAddress } from './next-address'
import { PasskeySignIn } from './passkey-sign-in'

export const metadata: Metadata = { title: 'Sign in' }

export default async function SignIn({ searchParams }: { searchParams: Promise<{ next?: string }> }) {
  const next = nextAddress((await searchParams).next)
  const societies = await societyList()
  return (
    <div className="page desk">
      <RunningHead society="Daybook" href="/" place="The desk" />
      <main id="main">
        <div className="title">
          <h1>Sign in at the desk</h1>
          <p className="lead">
            For the officers of a society. Players need no account: their link or code opens the card.
          </p>
        </div>
        <ActForm action={enterDesk} label="Sign in" className="sheet-form">
          <input type="hidden" name="next" value={next} />
          <Field name="email" label="E-mail" type="email" autoComplete="username" required />
          <Field name="password" label="Password" type="password" autoComplete="current-password" required />
          <p className="acts">
            <Send kind="first">Sign in</Send>
          </p>
        </ActForm>
        <PasskeySignIn next={next} />
        <details className="rule-all">
          <summary>Forgotten your password?</summary>
          <p>
            <b>Another officer of your society</b> can make you a link for a new one: under Officers, “Change” beside
            your name, “Make a link for a new password”. It works once, within seven days.
          </p>
          <p>
            <b>If you are the only officer,</b> ask whoever runs the server of your society. There the command{' '}
            <code>npm run password-link -- your@e-mail</code> prints such a link.
          </p>
        </details>
        {societies.length > 0 ? (
          <p className="small second">
            What is held about you and for how long:{' '}
            {societies.map((one, at) => (
              <span key={one.slug}>
                {at > 0 ? ', ' : null}
                <Link href={`/${one.slug}/privacy`}>privacy notice of {one.name}</Link>
              </span>
            ))}
            .
          </p>
        ) : null}
      </main>
    </div>
  )
}
