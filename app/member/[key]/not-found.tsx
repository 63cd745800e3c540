import { Pin } from '@/app/_parts/device'
import Link from '@/app/_parts/link'

/** A key that opens nothing: never was, not copied whole, or ended. Which of them is not told. */
export default function LinkEnded() {
  return (
    <div className="page front">
      <main id="main" className="title">
        <Pin />
        <h1>This link has ended</h1>
        <p className="lead">
          It was renewed or ended, or it was not copied whole. Ask the secretary of your society for the new one.
        </p>
        <p className="acts">
          <Link className="btn" href="/">
            To the first page
          </Link>
        </p>
      </main>
    </div>
  )
}
