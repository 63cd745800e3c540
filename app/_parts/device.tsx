/** The society's own one-ink drawing. It is a file of its own, so that a page does not carry its outline twice. */
export function Device({
  drawing = '/frond.svg#frond',
  className = 'device',
}: {
  drawing?: string
  className?: string
}) {
  return (
    <svg className={className} viewBox="4 2 41 70" aria-hidden="true">
      <use href={drawing} />
    </svg>
  )
}

/** The pin: the ornament of a page where nothing is yet. */
export function Pin({ className = 'orn' }: { className?: string }) {
  return (
    <svg className={className} viewBox="0 0 32 40" aria-hidden="true" fill="none" stroke="currentColor">
      <path d="M12 38V2" strokeWidth="1.6" />
      <path d="M12 3l15 5.5L12 14z" fill="currentColor" stroke="none" />
      <path d="M3 38h26M7 38c3-2.4 16-2.4 19 0" />
    </svg>
  )
}
