import { create } from 'qrcode'

/** A QR code in the page's own ink, as one path. Its quiet edge of four modules belongs to it: never crop it. */
export function Qr({ text, label }: { text: string; label: string }) {
  const { modules } = create(text, { errorCorrectionLevel: 'M' })
  const { size, data } = modules
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
  return (
    <svg
      className="qr"
      viewBox={`0 0 ${size + 8} ${size + 8}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <path d={`M0 0h${size + 8}v${size + 8}H0z`} className="qr-ground" />
      <path d={runs.join('')} className="qr-ink" />
    </svg>
  )
}
