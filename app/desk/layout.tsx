import type { Metadata } from 'next'
import type { ReactNode } from 'react'
import './desk.css'
import './forms.css'
import './imports.css'
import './lists.css'
import './draw.css'
import './returns.css'
import './unsaved.css'
import { UnsavedWork } from './_form/unsaved-work'

export const metadata: Metadata = { title: 'The desk', robots: { index: false } }

export default function DeskLayout({ children }: { children: ReactNode }) {
  return <UnsavedWork>{children}</UnsavedWork>
}
