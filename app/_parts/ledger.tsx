import type { ReactNode } from 'react'

/** The double rule down the left. Give it rows whose margin holds what orders them: a time, a date, a hole. */
export function Ledger({ children, className }: { children: ReactNode; className?: string }) {
  return <ol className={className ? `ledger ${className}` : 'ledger'}>{children}</ol>
}

export function LedgerRow({
  margin,
  children,
  className,
}: {
  margin: ReactNode
  children: ReactNode
  className?: string
}) {
  return (
    <li className={className}>
      <div className="in-margin fig">{margin}</div>
      {children}
    </li>
  )
}

/** Front nine from back nine, the hole from the group, results from prizes. Nothing else. */
export function Fold() {
  return <div className="fold" aria-hidden="true" />
}
