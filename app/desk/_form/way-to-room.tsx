'use client'

import { usePathname } from 'next/navigation'
import Link from '@/app/_parts/link'
import { roomThatMends } from './rooms-that-mend'

/** Under a refusal: the link to where what is missing is done. */
export function WayToRoom({ code }: { readonly code: string }) {
  const way = roomThatMends(code, usePathname())
  return way ? (
    <p>
      <Link href={way.href}>{way.words}</Link>
    </p>
  ) : null
}
