import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { memberPage } from '@/lib/society/read-member'
import { memberOf } from '@/lib/society/who-is-asking'
import { MemberScreen } from '../_member/member-screen'
import '../_member/member.css'

interface Props {
  params: Promise<{ key: string }>
}

// A private link: it must not be found by a search, nor told to the next site by the browser.
export const metadata: Metadata = {
  title: 'Your page',
  robots: { index: false, follow: false, nocache: true },
}

export default async function MemberRoute({ params }: Props) {
  const { key } = await params
  const actor = await memberOf(key)
  if (!actor.ok) notFound()
  const page = await memberPage(actor.value)
  if (!page.ok) notFound()
  return <MemberScreen page={page.value} dataAt={`/member/${encodeURIComponent(key)}/data`} />
}
