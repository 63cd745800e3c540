import { headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { Empty } from '@/app/_parts/empty'
import Link from '@/app/_parts/link'
import { RunningHead } from '@/app/_parts/running-head'
import { signedInUser } from '@/lib/society/sign-in'
import { desksOf } from '@/lib/society/who-is-asking'
import { SignOut } from './_frame/sign-out'

/** Straight to the only desk there is; a choice for somebody who is an officer of several societies. */
export default async function Desks() {
  const asked = await headers()
  const user = await signedInUser(asked)
  if (!user) redirect('/sign-in?next=/desk')
  const desks = await desksOf(asked)
  const [only] = desks
  if (only && desks.length === 1) redirect(`/desk/${only.slug}`)
  return (
    <div className="page desk">
      <RunningHead society="Daybook" href="/" place="The desk" />
      <main id="main">
        <div className="title">
          <h1>Which desk, {user.name}?</h1>
        </div>
        {desks.length === 0 ? (
          <Empty first="No desk is yours at present." acts={<SignOut />}>
            Ask the secretary of your society to give you a duty.
          </Empty>
        ) : (
          <ul className="desks">
            {desks.map((desk) => (
              <li key={desk.slug}>
                <Link href={`/desk/${desk.slug}`}>{desk.name}</Link>{' '}
                <span className="second">{desk.duties.join(', ').replaceAll('-', ' ')}</span>
              </li>
            ))}
          </ul>
        )}
      </main>
    </div>
  )
}
