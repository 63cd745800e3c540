import type { ReactNode } from 'react'
import Link from '@/app/_parts/link'

export interface Tab {
  href: string
  label: string
  current?: boolean
  /** Behind the label. */
  note?: ReactNode
}

/** Words on a rule. They are links: each tab is a page with its own address. */
export function Tabs({ label, items }: { label: string; items: readonly Tab[] }) {
  return (
    <nav className="tabs" aria-label={label}>
      {items.map((item) => (
        <Link key={item.href} href={item.href} aria-current={item.current ? 'page' : undefined} scroll={false}>
          {item.label}
          {item.note}
        </Link>
      ))}
    </nav>
  )
}
