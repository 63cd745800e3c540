'use client'

import { Pin } from './_parts/device'

interface Fault {
  error: Error & { digest?: string }
  reset: () => void
}

/** Something of ours went wrong. Says what is safe, how to go on, and the mark under which the fault is logged. */
export default function PageFault({ error, reset }: Fault) {
  return (
    <div className="page front">
      <main id="main" className="title" role="alert">
        <Pin />
        <h1>This page could not be set</h1>
        <p className="lead">
          The fault is ours. Scores on a phone are kept there until they are received, and nothing in the book has been
          changed.
        </p>
        {error.digest ? (
          <p className="small second">
            The log has it under <span className="fig">{error.digest}</span>.
          </p>
        ) : null}
        <p className="acts">
          <button type="button" className="btn" onClick={reset}>
            Try this page again
          </button>
          <a className="btn plain" href="/">
            To the first page
          </a>
        </p>
      </main>
    </div>
  )
}
