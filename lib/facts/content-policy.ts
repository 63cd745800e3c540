// What a page of ours may load: scripts that carry this answer's own number, sheets, fonts and pictures from this server,
// and nothing from anywhere else.

/** `developing` lets the development server reload parts of a page; it is never set in a built house. */
export function contentPolicy(nonce: string, developing = false): string {
  return [
    `default-src 'self'`,
    // The number makes the page's own scripts run; what they load in turn is trusted by 'strict-dynamic'. 'self' is for
    // browsers that know neither.
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${developing ? " 'unsafe-eval'" : ''}`,
    `script-src-attr 'none'`,
    `style-src 'self' 'nonce-${nonce}'${developing ? " 'unsafe-inline'" : ''}`,
    // Bars and dragged rows are placed by a style attribute; an attribute cannot load a sheet.
    `style-src-attr 'unsafe-inline'`,
    `img-src 'self' data:`,
    `font-src 'self'`,
    `connect-src 'self'${developing ? ' ws:' : ''}`,
    `worker-src 'self'`,
    `manifest-src 'self'`,
    `object-src 'none'`,
    `base-uri 'none'`,
    `form-action 'self'`,
    `frame-src 'none'`,
    `frame-ancestors 'none'`,
  ].join('; ')
}

export const NONCE_HEADER = 'x-nonce'
