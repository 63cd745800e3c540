import type { ReactNode } from 'react'
import Link from '@/app/_parts/link'

interface OpensProps {
  href: string
  /** The whole of it for those who hear the page: "2 points, hole 11: open the working". */
  label: string
  children: ReactNode
  className?: string
}

/** A figure that opens into its working. The dotted heather underline means this and nothing else. */
export function Opens({ href, label, children, className }: OpensProps) {
  return (
    <Link href={href} className={className ? `opens ${className}` : 'opens'} aria-label={label}>
      {children}
    </Link>
  )
}
