import NextLink from 'next/link'
import type { ComponentProps } from 'react'

/**
 * A link inside Daybook. Nothing is fetched before it is followed: every page is made from the newest scores, so a page
 * fetched ahead would be thrown away, and a desk page with ten rooms in its bar would cost ten others, a phone its signal.
 */
export default function Link(props: ComponentProps<typeof NextLink>) {
  return <NextLink {...props} prefetch={false} />
}
