// Pages for nobody but their holders are not asked for at all. Whether a society's public pages may be listed stands on each
// of them: a page that is not read could not say so.
import type { MetadataRoute } from 'next'

export default function robots(): MetadataRoute.Robots {
  return { rules: { userAgent: '*', disallow: ['/desk', '/card', '/member', '/sign-in', '/api'] } }
}
