'use client'

import { useEffect, useId, useRef } from 'react'
import { PLAY_CAUTION, PLAY_SIGNALS, PLAY_WORDS, SIGNALS_FROM } from '@/lib/boards/play-in-words'
import { isStopped, type PlayNow } from '@/lib/facts/play-stop'
import type { GroupBook, GroupSnapshot } from '@/lib/outbox/group-book'
import { clock } from './words'

interface Props {
  readonly now: GroupSnapshot
  readonly book: GroupBook
  /** Opened again by hand. */
  readonly reading: boolean
  readonly setReading: (reading: boolean) => void
}

const since = (play: PlayNow) => `${play.kind === 'resume' ? 'Told at' : 'Since'} ${clock(play.toldAt)}: ${play.reason}`

/** Over everything until it is read; after that a line on top for as long as play is stopped. */
export function PlayStopped({ now, book, reading, setReading }: Props) {
  const { play } = now
  if (!play) return null
  const words = PLAY_WORDS[play.kind]
  return (
    <>
      {isStopped(play) && (
        <button type="button" className="c-stop-line" onClick={() => setReading(true)}>
          <b>{words.title}</b>
          <span className="small">{since(play)}. Read it again</span>
        </button>
      )}
      {(!now.playRead || reading) && (
        <StopSheet
          key={play.number}
          play={play}
          onRead={() => {
            setReading(false)
            void book.readPlay(play.number)
          }}
        />
      )}
    </>
  )
}

function StopSheet({ play, onRead }: { readonly play: PlayNow; readonly onRead: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  const words = PLAY_WORDS[play.kind]
  useEffect(() => {
    dialog.current?.showModal()
    navigator.vibrate?.(play.kind === 'stop-at-once' ? [600, 150, 600] : [250, 100, 250])
  }, [play.kind])
  return (
    <dialog
      className={`c-stop ${play.kind}`}
      ref={dialog}
      role="alertdialog"
      aria-labelledby={title}
      aria-describedby={`${title}-orders`}
      onCancel={(event) => {
        event.preventDefault()
        onRead()
      }}
    >
      <div className="c-stop-head">
        <p className="sc">The desk says</p>
        <h2 id={title}>{words.title}</h2>
        <p>{since(play)}.</p>
      </div>
      <div className="c-stop-body" tabIndex={0} role="group" aria-label="What to do">
        <ul id={`${title}-orders`} className="c-orders">
          {words.orders.map((order) => (
            <li key={order}>{order}</li>
          ))}
          <li>The card still takes scores of strokes that were made.</li>
        </ul>
        <p className="small second">{words.clause}</p>
        <ul className="c-caution">
          {PLAY_CAUTION.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <table className="c-signals">
          <caption className="sc">The siren of the course</caption>
          <tbody>
            {PLAY_SIGNALS.map(({ signal, meaning, kind }) => (
              <tr key={kind} className={kind === play.kind ? 'now' : undefined}>
                <th scope="row">{signal}</th>
                <td>{meaning}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="small second">{SIGNALS_FROM}</p>
      </div>
      <p className="c-stop-foot">
        <button type="button" className="btn first wide" onClick={onRead}>
          I have read it
        </button>
      </p>
    </dialog>
  )
}
