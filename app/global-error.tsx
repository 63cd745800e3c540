'use client'

import './styles/layers.css'
import './styles/tokens.css'
import './styles/base.css'
import './styles/parts.css'

/** The last page there is: even the frame could not be set, so it brings its own and uses no face of the house. */
export default function FrameFault({ reset }: { error: Error; reset: () => void }) {
  return (
    <html lang="en-GB">
      <body>
        <title>Daybook</title>
        <div className="page">
          <main className="title" role="alert">
            <h1>The page could not be set</h1>
            <p className="lead">
              The fault is ours. Scores on a phone are kept there until they are received. Try again in a moment.
            </p>
            <p className="acts">
              <button type="button" className="btn" onClick={reset}>
                Try again
              </button>
            </p>
          </main>
        </div>
      </body>
    </html>
  )
}
