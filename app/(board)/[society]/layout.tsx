import type { ReactNode } from 'react'
import { DemoMark } from '@/app/_parts/demo-mark'
import { isDemo } from '@/lib/society/found-society'

interface Props {
  readonly children: ReactNode
  readonly params: Promise<{ society: string }>
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
