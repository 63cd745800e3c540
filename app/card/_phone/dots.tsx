/** Strokes received as filled dots, strokes a plus player gives back as open ones. */
export function Dots({ strokes }: { strokes: number }) {
  if (strokes === 0) return null
  const count = Math.abs(strokes)
  const words = `${count} ${count === 1 ? 'stroke' : 'strokes'}${strokes < 0 ? ' given back' : ''}`
  return (
    <span className={strokes < 0 ? 'dots back' : 'dots'} role="img" aria-label={words}>
      {Array.from({ length: count }, (_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: dots are all alike
        <i key={index} />
      ))}
    </span>
  )
}
