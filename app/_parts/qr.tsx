import { create } from 'qrcode'
import { cache } from 'react'

// A group's square stands on each of its cards: it is worked out once a page.
const square = cache((text: string) => {
  const { size, data } = create(text, { errorCorrectionLevel: 'M' }).modules
  const runs: string[] = []
  for (let row = 0; row < size; row++) {
    for (let from = 0; from < size; from++) {
      if (!data[row * size + from]) continue
      let to = from
      while (to < size && data[row * size + to]) to++
      runs.push(`M${from + 4} ${row + 4}h${to - from}v1h${from - to}z`)
      from = to
    }
  }
  return { edge: size + 8, path: runs.join('') }
})

/** A QR code as one path. Its quiet edge of four modules belongs to it: never crop it. */
export function Qr({ text, label }: { text: string; label: string }) {
  const { edge, path } = square(text)
  return (
    <svg className="qr" viewBox={`0 0 ${edge} ${edge}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <path d={`M0 0h${edge}v${edge}H0z`} className="qr-ground" />
      <path d={path} className="qr-ink" />
    </svg>
  )
}
