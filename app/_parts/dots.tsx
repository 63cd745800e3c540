/** Strokes received as filled dots; strokes a plus player gives back as open ones. Nothing for none. */
export function Dots({ strokes, spoken = true }: { strokes: number; spoken?: boolean }) {
  if (strokes === 0) return spoken ? <span className="unseen">no stroke</span> : null
  const count = Math.abs(strokes)
  const words = `${count} ${count === 1 ? 'stroke' : 'strokes'} ${strokes > 0 ? 'received' : 'given back'}`
  const hearing = spoken ? { role: 'img', 'aria-label': words } : { 'aria-hidden': true as const }
  return (
    <span className={strokes > 0 ? 'dots' : 'dots back'} {...hearing}>
      {Array.from({ length: count }, (_, dot) => dot + 1).map((dot) => (
        <i key={dot} />
      ))}
    </span>
  )
}

/** A tally of what is only on this phone: one stroke each, at most five drawn. */
export function Tally({ count }: { count: number }) {
  return (
    <span className="tally" aria-hidden="true">
      {Array.from({ length: Math.min(count, 5) }, (_, stroke) => stroke + 1).map((stroke) => (
        <i key={stroke} />
      ))}
    </span>
  )
}
