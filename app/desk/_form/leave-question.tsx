'use client'

import { useRouter } from 'next/navigation'
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react'
import type { UnsavedForm } from './unsaved'

/** How the page is left once the officer says so. */
type WayOut = { readonly leave: () => void }

const FETCHED = 4_000

/** Leaving with something unsaved is asked once: by a link, by Back, by another form, and by the browser for the rest. */
export function LeaveQuestion({ forms }: { readonly forms: readonly UnsavedForm[] }) {
  const router = useRouter()
  const dialog = useRef<HTMLDialogElement>(null)
  const [way, setWay] = useState<WayOut | null>(null)
  const letGo = useRef(false)
  const staying = useRef<(() => void) | null>(null)
  const lost = forms.filter((one) => !one.keeps)
  const asks = lost.length > 0

  const ask = useCallback((leave: () => void) => setWay({ leave }), [])

  useEffect(() => {
    if (way) dialog.current?.showModal()
    else dialog.current?.close()
  }, [way])

  // With the words that say so, not after them: whoever reads "not saved" is asked.
  useLayoutEffect(() => {
    if (forms.length === 0) return
    const onUnload = (event: BeforeUnloadEvent) => {
      if (!letGo.current) event.preventDefault()
    }
    window.addEventListener('beforeunload', onUnload)
    return () => window.removeEventListener('beforeunload', onUnload)
  }, [forms.length])

  useEffect(() => {
    if (!asks) return
    letGo.current = false
    const onClick = (event: MouseEvent) => {
      if (letGo.current || event.defaultPrevented || event.button !== 0) return
      if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return
      const link = event.target instanceof Element ? event.target.closest('a') : null
      if (!link?.href || (link.target !== '' && link.target !== '_self') || link.hasAttribute('download')) return
      const to = new URL(link.href)
      // A place on this page, or another site: the browser asks there.
      if (to.origin !== location.origin || isSamePage(to)) return
      event.preventDefault()
      event.stopPropagation()
      ask(() => {
        // In place of the entry that was added for Back.
        router.replace(`${to.pathname}${to.search}${to.hash}`)
      })
    }
    const onSubmit = (event: SubmitEvent) => {
      const form = event.target
      if (letGo.current || !(form instanceof HTMLFormElement) || form.closest('[data-desk-form]') !== null) return
      event.preventDefault()
      event.stopPropagation()
      const { submitter } = event
      ask(() => form.requestSubmit(submitter))
    }
    document.addEventListener('click', onClick, true)
    document.addEventListener('submit', onSubmit, true)
    return () => {
      document.removeEventListener('click', onClick, true)
      document.removeEventListener('submit', onSubmit, true)
    }
  }, [asks, ask, router])

  // Back cannot be refused, only answered: an entry of the same page takes the first press.
  useEffect(() => {
    if (!asks) return
    const here = location.href
    let state: unknown = null
    let onTop = false
    let ended = false
    const add = () => {
      if (ended || letGo.current || location.href !== here) return
      state = history.state
      history.pushState(state, '', here)
      onTop = true
    }
    // Going back takes its time: an entry added meanwhile would be the one that goes, and the next step back leave the page.
    if (goingBack) void goingBack.then(add)
    else add()
    const onBack = (event: PopStateEvent) => {
      if (!onTop || letGo.current || location.href !== here) return
      // The page has not changed, so the router need not hear of it.
      event.stopImmediatePropagation()
      onTop = false
      ask(() => history.back())
    }
    window.addEventListener('popstate', onBack, true)
    staying.current = () => {
      if (!onTop) add()
    }
    return () => {
      ended = true
      window.removeEventListener('popstate', onBack, true)
      staying.current = null
      // Saved: the added entry goes again, unless the page has been left meanwhile.
      if (!onTop || letGo.current || location.href !== here) return
      goBackQuietly()
    }
  }, [asks, ask])

  const stay = () => {
    setWay(null)
    staying.current?.()
  }
  return (
    <dialog
      ref={dialog}
      className="leave-question"
      aria-labelledby="leave-h"
      onCancel={(event) => {
        event.preventDefault()
        stay()
      }}
    >
      <h2 id="leave-h">Leave without saving?</h2>
      <p>
        {lost.map((one) => `${one.label}${one.what ? `: ${one.what}` : ''}`).join('; ')}. It is not saved, and it is
        gone if you leave this page.
      </p>
      <p className="acts">
        <button type="button" className="btn first" onClick={stay}>
          Stay on this page
        </button>
        <button
          type="button"
          className="btn"
          onClick={() => {
            letGo.current = true
            // A file that is fetched leaves the page where it is: from then on it asks again.
            setTimeout(() => {
              letGo.current = false
            }, FETCHED)
            way?.leave()
            setWay(null)
          }}
        >
          Leave without saving
        </button>
      </p>
    </dialog>
  )
}

/** The step back that is on its way, while there is one. */
let goingBack: Promise<void> | null = null

function goBackQuietly(): void {
  goingBack = new Promise((resolve) => {
    const quiet = (event: PopStateEvent) => {
      event.stopImmediatePropagation()
      goingBack = null
      resolve()
    }
    window.addEventListener('popstate', quiet, { capture: true, once: true })
  })
  history.back()
}

const isSamePage = (to: URL) => to.pathname === location.pathname && to.search === location.search
