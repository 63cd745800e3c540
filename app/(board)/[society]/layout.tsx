import type { Metadata } from 'next'
import type { ReactNode } from 'react'
import { DemoMark } from '@/app/_parts/demo-mark'
import { isDemo } from '@/lib/society/found-society'
import { privacyNotice } from '@/lib/society/keep-privacy'

interface Props {
  readonly children: ReactNode
  readonly params: Promise<{ society: string }>
}

/** Names stand on these pages: search engines may list them only where the society said so. */
export async function generateMetadata({ params }: Pick<Props, 'params'>): Promise<Metadata> {
  const notice = await privacyNotice((await params).society)
  return { robots: notice.ok && notice.value.settings.searchEngines ? null : { index: false, follow: false } }
}

export default async function SocietyLayout({ children, params }: Props) {
  const { society } = await params
  return (
    <>
      {(await isDemo(society)) ? <DemoMark /> : null}
      {children}
    </>
  )
}
