'use client'

import { useEffect, useState, useSyncExternalStore } from 'react'
import { type GroupBook, type GroupSnapshot, openGroupBook } from '@/lib/outbox/group-book'
import { thisPhone } from '@/lib/outbox/on-this-phone'

const nothing = () => null
const deaf = () => () => {}

/** The group's book on this phone, opened when the page is and sending while it stays. */
export function useGroup(link: string): { book: GroupBook | null; now: GroupSnapshot | null } {
  const [book, setBook] = useState<GroupBook | null>(null)
  useEffect(() => {
    let stop = () => {}
    let gone = false
    void thisPhone().then((phone) => {
      if (gone) return
      const opened = openGroupBook(link, phone)
      stop = opened.start()
      setBook(opened)
    })
    return () => {
      gone = true
      stop()
    }
  }, [link])
  const now = useSyncExternalStore(book?.subscribe ?? deaf, book?.snapshot ?? nothing, nothing)
  const inPageOnly = (now?.inPageOnly ?? 0) > 0
  useEffect(() => {
    if (!inPageOnly) return
    // What is only in the page would go with it: the browser asks first.
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [inPageOnly])
  return { book, now }
}
