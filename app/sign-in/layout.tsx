import type { ReactNode } from 'react'
import { DemoMark } from '@/app/_parts/demo-mark'
import { hasDemo } from '@/lib/society/found-society'

export default async function SignInLayout({ children }: { readonly children: ReactNode }) {
  return (
    <>
      {(await hasDemo()) ? <DemoMark /> : null}
      {children}
    </>
  )
}
