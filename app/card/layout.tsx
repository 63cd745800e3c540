import type { Metadata } from 'next'
import type { ReactNode } from 'react'
import './card.css'

export const metadata: Metadata = {
  manifest: '/manifest.webmanifest',
  appleWebApp: { capable: true, title: 'The card', statusBarStyle: 'default' },
  referrer: 'no-referrer',
}

export default function CardLayout({ children }: { children: ReactNode }) {
  return (
    <main className="hand" data-daybook-card="">
      {children}
    </main>
  )
}
