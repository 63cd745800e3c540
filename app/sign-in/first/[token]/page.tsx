import type { Metadata } from 'next'
import Link from '@/app/_parts/link'
import '@/app/desk/desk.css'
import '@/app/desk/forms.css'
import { RunningHead } from '@/app/_parts/running-head'
import { foundingLink } from '@/lib/society/first-start'
import { foundYourSociety } from '../../one-time-actions'
import { FoundForm } from './found-form'

export const metadata: Metadata = { title: 'Found your society', robots: { index: false } }

export default async function FirstStart({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params
  const open = await foundingLink(token)
  return (
    <div className="page desk">
      <RunningHead society="Daybook" href="/" place="First start" />
      <main id="main">
        <div className="title">
          <h1>{open ? 'Found your society' : 'This link has ended'}</h1>
          <p className="lead">
            {open === 'first'
              ? 'The book is empty. Name the society and yourself: you hold the duty of secretary and let the others in.'
              : open === 'further'
                ? 'Name the society and yourself: you hold the duty of secretary and let the others in. It shares this installation with others and sees nothing of theirs. If you sign in here already, write the same e-mail and your present password.'
                : 'It was used, has run out, or a later start printed a newer one. Look at what the server printed last.'}
          </p>
        </div>
        {open ? (
          <FoundForm action={foundYourSociety.bind(null, token)} />
        ) : (
          <p className="acts">
            <Link className="btn" href="/sign-in">
              To the sign-in page
            </Link>
          </p>
        )}
      </main>
    </div>
  )
}
