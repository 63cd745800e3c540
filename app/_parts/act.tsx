import type { ComponentProps, ReactNode } from 'react'
import Link from '@/app/_parts/link'

export type ActKind = 'first' | 'plain' | 'grave'

function classOf(kind?: ActKind, wide?: boolean): string {
  return ['btn', kind, wide && 'wide'].filter(Boolean).join(' ')
}

interface ActProps extends Omit<ComponentProps<'button'>, 'disabled' | 'className'> {
  kind?: ActKind
  wide?: boolean
  /** Why it cannot be pressed yet. It stays in the tab order, is dashed, and says so in its own label. */
  why?: string
}

/** A button: its label says the act and the number, "Freeze 27 handicaps". */
export function Act({ kind, wide, why, children, type = 'submit', ...button }: ActProps) {
  if (why) {
    // A plain button without its handler: pressing it does nothing, and it can still be reached and read.
    return (
      <button type="button" className={classOf(kind === 'first' ? undefined : kind, wide)} aria-disabled="true">
        {children}: {why}
      </button>
    )
  }
  return (
    <button {...button} type={type} className={classOf(kind, wide)}>
      {children}
    </button>
  )
}

/** The same, when pressing leads to another page. */
export function ActLink({
  kind,
  wide,
  href,
  children,
  ...link
}: Omit<ComponentProps<typeof Link>, 'className'> & { kind?: ActKind; wide?: boolean; children: ReactNode }) {
  return (
    <Link {...link} href={href} className={classOf(kind, wide)}>
      {children}
    </Link>
  )
}
