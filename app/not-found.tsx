import Link from '@/app/_parts/link'
import { Pin } from './_parts/device'

/** No such page: what may be wrong with the address, and where to go from here. */
export default function NotFound() {
  return (
    <div className="page front">
      <main id="main" className="title">
        <Pin />
        <h1>Nothing is kept under that address</h1>
        <p className="lead">
          A link from an old start sheet may have been renewed, or a letter got lost on the way from paper to screen.
        </p>
        <p className="acts">
          <Link className="btn" href="/">
            To the first page
          </Link>
          <Link className="btn plain" href="/card">
            Type a card code
          </Link>
        </p>
      </main>
    </div>
  )
}
