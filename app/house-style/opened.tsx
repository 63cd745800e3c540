'use client'

import { useState } from 'react'
import { Dialog } from '@/app/_parts/dialog'

function PublishActs({ onAnswer }: { onAnswer: () => void }) {
  return (
    <>
      <button type="button" className="btn first" onClick={onAnswer}>
        Publish sheet 1
      </button>
      <button type="button" className="btn" onClick={onAnswer}>
        Not yet
      </button>
    </>
  )
}

const WORDS =
  '27 cards are in and agreed. Members get the sheet at once. A correction later is sheet 2, with its reason; sheet 1 stays.'

export function DialogShown() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <div className="dialog">
        <h4>Publish sheet 1?</h4>
        <p>{WORDS}</p>
        <div className="acts">
          <PublishActs onAnswer={() => undefined} />
        </div>
      </div>
      <p className="acts">
        <button type="button" className="btn plain" onClick={() => setOpen(true)}>
          See it over the page
        </button>
      </p>
      <Dialog
        open={open}
        onClose={() => setOpen(false)}
        title="Publish sheet 1?"
        acts={<PublishActs onAnswer={() => setOpen(false)} />}
      >
        <p>{WORDS}</p>
      </Dialog>
    </>
  )
}

export function ToastShown() {
  const [taken, setTaken] = useState(true)
  return (
    <div className="toast" role="status">
      <span>{taken ? 'Taken in: Trevennor, 38 points.' : 'Out again: Trevennor.'}</span>
      <button type="button" className="btn" onClick={() => setTaken(!taken)}>
        {taken ? 'Undo' : 'Take it in'}
      </button>
    </div>
  )
}
