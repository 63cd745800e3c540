import type { Metadata } from 'next'
import type { ReactNode } from 'react'
import { TextSize } from './_phone/text-size'
// In this order: the sizes come last and change what stands before them.
import './card.css'
import './card-sheets.css'
import './card-stop.css'
import './card-balls.css'
import './card-sizes.css'

export const metadata: Metadata = {
  manifest: '/manifest.webmanifest',
  appleWebApp: { capable: true, title: 'The card', statusBarStyle: 'default' },
}

export default function CardLayout({ children }: { children: ReactNode }) {
  return (
    <main className="hand" data-daybook-card="">
      <TextSize />
      {children}
    </main>
  )
}
