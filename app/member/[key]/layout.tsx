import type { ReactNode } from 'react'
import { DemoMark } from '@/app/_parts/demo-mark'
import { isDemoSociety } from '@/lib/society/found-society'
import { memberOf } from '@/lib/society/who-is-asking'

interface Props {
  readonly children: ReactNode
  readonly params: Promise<{ key: string }>
}

export default async function MemberLayout({ children, params }: Props) {
  const member = await memberOf((await params).key)
  return (
    <>
      {member.ok && (await isDemoSociety(member.value.societyId)) ? <DemoMark /> : null}
      {children}
    </>
  )
}
