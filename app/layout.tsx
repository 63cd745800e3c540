import type { Metadata, Viewport } from 'next'
import { headers } from 'next/headers'
import type { ReactNode } from 'react'
import './styles/house.css'
import { NONCE_HEADER } from '@/lib/facts/content-policy'
import { LIGHT_KEPT_AS } from './_parts/light-kept'
import { fontVariables } from './styles/fonts'

export const metadata: Metadata = {
  title: { default: 'Daybook', template: '%s · Daybook' },
  description: 'The book in which a golf society keeps its days.',
  formatDetection: { telephone: false, date: false, address: false, email: false },
}

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  viewportFit: 'cover',
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f6f1e5' },
    { media: '(prefers-color-scheme: dark)', color: '#161d23' },
  ],
}

// Runs before the first paint, so that a light chosen on this device never flashes the other one.
const lightBeforePaint = `try{var l=localStorage.getItem('${LIGHT_KEPT_AS}');if(l==='light'||l==='dark')document.documentElement.dataset.theme=l}catch(e){}`

export default async function RootLayout({ children }: { children: ReactNode }) {
  const nonce = (await headers()).get(NONCE_HEADER) ?? undefined
  return (
    <html lang="en-GB" className={fontVariables} suppressHydrationWarning>
      <head>
        {/* A module that runs at once: unlike a plain script it keeps neither the sheets nor the rest of the page waiting. */}
        <script
          type="module"
          async
          blocking="render"
          nonce={nonce}
          suppressHydrationWarning
          // biome-ignore lint/security/noDangerouslySetInnerHtml: a fixed line of our own, nothing anybody typed
          dangerouslySetInnerHTML={{ __html: lightBeforePaint }}
        />
      </head>
      <body>{children}</body>
    </html>
  )
}
