import type { Metadata } from 'next'
import { CardApp } from '../_phone/card-app'

export const metadata: Metadata = { title: 'The card', robots: { index: false, follow: false } }

// Nothing of the group is in the page: it is the same for a day and for ever, and the phone can keep it.
export default async function GroupCardPage({ params }: { params: Promise<{ link: string }> }) {
  const { link } = await params
  return <CardApp link={decodeURIComponent(link)} />
}
