// The public addresses, in one place.

const seg = encodeURIComponent

export const societyAt = (society: string, season?: string) =>
  `/${seg(society)}${season === undefined ? '' : `?season=${seg(season)}`}`
export const dayAt = (society: string, day: string) => `/${seg(society)}/days/${seg(day)}`
export const startAt = (society: string, day: string) => `${dayAt(society, day)}/start`
export const barAt = (society: string, day: string) => `${dayAt(society, day)}/bar`
export const resultAt = (society: string, day: string, number?: number) =>
  `${dayAt(society, day)}/result${number === undefined ? '' : `/${number}`}`
export const countAt = (society: string) => `/${seg(society)}/how-we-count`

export function boardAt(
  society: string,
  day: string,
  asked: { c?: number; d?: string | null; v?: string; e?: string; open?: string } = {},
): string {
  const query = new URLSearchParams()
  if (asked.c && asked.c > 1) query.set('c', String(asked.c))
  if (asked.d) query.set('d', asked.d)
  if (asked.v && asked.v !== 'leaders') query.set('v', asked.v)
  if (asked.e) query.set('e', asked.e)
  if (asked.open) query.set('open', asked.open)
  const text = query.toString()
  return `${dayAt(society, day)}${text ? `?${text}` : ''}${asked.open ? `#row-${asked.open}` : ''}`
}

/** The whole card; with a hole, the working of that hole's figure; with 'all', the working of the total. */
export function cardAt(
  society: string,
  day: string,
  entry: string,
  asked: { c?: number; hole?: number | 'all' } = {},
): string {
  const query = new URLSearchParams()
  if (asked.c !== undefined) query.set('c', String(asked.c))
  if (asked.hole !== undefined) query.set('hole', String(asked.hole))
  const text = query.toString()
  return `${dayAt(society, day)}/cards/${seg(entry)}${text ? `?${text}` : ''}`
}

/** The card read under another format; with a hole, that hole's working in it. */
export function readAsAt(society: string, day: string, entry: string, format: string, hole?: number): string {
  const query = new URLSearchParams({ as: format, ...(hole === undefined ? {} : { hole: String(hole) }) })
  return `${cardAt(society, day, entry)}?${query}${hole === undefined ? '' : '#working'}`
}

/** The points of a team in competition `c`, or in all the matches of the day. */
export function teamAt(society: string, day: string, team: string, c?: number): string {
  return `${dayAt(society, day)}/working?${new URLSearchParams({ ...(c ? { c: String(c) } : {}), team })}`
}

/** Who stands in a division of competition `c`, and why. */
export function divisionAt(society: string, day: string, c: number, division: string): string {
  return `${dayAt(society, day)}/working?${new URLSearchParams({ c: String(c), d: division })}`
}

/** Any two cards; with partners any four. */
export function matchAt(
  society: string,
  day: string,
  a?: string,
  b?: string,
  more: { a2?: string | undefined; b2?: string | undefined; hole?: number | undefined } = {},
): string {
  const query = new URLSearchParams()
  if (a) query.set('a', a)
  if (b) query.set('b', b)
  if (more.a2) query.set('a2', more.a2)
  if (more.b2) query.set('b2', more.b2)
  return opened(`${dayAt(society, day)}/match`, query, more.hole)
}

/** A match of competition `c`, from 1, by its id; with a hole, that hole opened. */
export function matchOfAt(society: string, day: string, c: number, match: string, hole?: number): string {
  return opened(`${dayAt(society, day)}/match`, new URLSearchParams({ c: String(c), m: match }), hole)
}

function opened(path: string, query: URLSearchParams, hole: number | undefined): string {
  if (hole !== undefined) query.set('hole', String(hole))
  const text = query.toString()
  return `${path}${text ? `?${text}` : ''}${hole === undefined ? '' : '#working'}`
}
