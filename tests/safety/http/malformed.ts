// Requests no phone and no desk of ours would send, drawn from a seed: the same seed sends the same ones.
import type { BuiltAction } from './client'
import type { Targets } from './prepared'

export interface Malformed {
  readonly method: string
  readonly path: string
  readonly headers: Readonly<Record<string, string>>
  readonly body?: Buffer
  /** As it stands on the wire, for what no client library would let through. */
  readonly raw?: Buffer
}

/** Numbers from a seed (mulberry32). */
export function dice(seed: number) {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  const below = (n: number) => Math.floor(next() * n)
  return { below, of: <T>(list: readonly T[]): T => list[below(list.length)]!, chance: (p: number) => next() < p }
}
type Dice = ReturnType<typeof dice>

const WORDS = [
  '',
  '..',
  '%2e%2e',
  '%00',
  '%ff%fe',
  '%E0%A4%A',
  '%',
  '__proto__',
  'constructor',
  'toString',
  'null',
  'undefined',
  'NaN',
  '-1',
  '0',
  '99999999999999999999',
  "'%20OR%201=1--",
  '%3Cscript%3Ealert(1)%3C/script%3E',
  '%F0%9F%98%80',
  'Ł%C3%B3d%C5%BA',
  '$%7B7*7%7D',
  '{{7*7}}',
  'a'.repeat(300),
  '%2f%2f',
  ';',
  'index.php',
  '.env',
  '[society]',
  '$1',
]

const VALUES: readonly unknown[] = [
  null,
  true,
  -1,
  0,
  1e308,
  '',
  '\u0000',
  '\ud800',
  'x'.repeat(5000),
  [],
  [[[[]]]],
  {},
  { __proto__: null },
  { toString: 1 },
  { $ne: null },
  '2026-13-45',
  '😀',
  '=1+1',
]

const METHODS = ['GET', 'GET', 'POST', 'POST', 'POST', 'PUT', 'PATCH', 'DELETE', 'HEAD', 'OPTIONS', 'PROPFIND', 'TRACE']

const KINDS = [
  'application/json',
  'text/plain',
  'multipart/form-data',
  'multipart/form-data; boundary=x',
  'application/x-www-form-urlencoded',
  'text/x-component',
  'image/png',
  '',
  'a/b; charset=utf-16',
  'application/json; charset=nonsense',
]

function jsonText(d: Dice, shape: unknown): string {
  switch (d.below(9)) {
    case 0:
      return '{"facts":[{'
    case 1:
      return '['.repeat(20_000)
    case 2:
      return `{"a":${'{"a":'.repeat(3000)}1${'}'.repeat(3000)}}`
    case 3:
      return `\uFEFF${JSON.stringify(shape)}`
    case 4:
      return `{"__proto__":{"admin":true},"constructor":{"prototype":{}},"facts":${JSON.stringify(d.of(VALUES))}}`
    case 5:
      return JSON.stringify(d.of(VALUES)) ?? 'undefined'
    default:
      return JSON.stringify(spoil(d, shape))
  }
}

/** One value of a right thing made wrong. */
function spoil(d: Dice, value: unknown): unknown {
  if (Array.isArray(value) && value.length > 0 && d.chance(0.7)) {
    const at = d.below(value.length)
    return value.map((one, n) => (n === at ? spoil(d, one) : one))
  }
  if (typeof value === 'object' && value !== null && d.chance(0.8)) {
    const keys = Object.keys(value)
    const key = keys.length > 0 ? d.of(keys) : 'x'
    if (d.chance(0.15)) return { ...value, [d.of(['__proto__', 'constructor', 'length', ' '])]: d.of(VALUES) }
    return { ...value, [key]: spoil(d, (value as Record<string, unknown>)[key]) }
  }
  return d.of(VALUES)
}

function bodyOf(d: Dice, shape: unknown): Buffer {
  switch (d.below(8)) {
    case 0:
      return Buffer.alloc(0)
    case 1:
      return Buffer.from(Array.from({ length: 1 + d.below(400) }, () => d.below(256)))
    case 2:
      return Buffer.from(jsonText(d, shape), 'utf16le')
    case 3:
      return Buffer.alloc(d.chance(0.05) ? 200_000 : 3000, 0x41)
    default:
      return Buffer.from(jsonText(d, shape))
  }
}

function multipart(d: Dice, fields: readonly (readonly [string, string])[]): Buffer {
  const parts = fields.map(([name, value]) => {
    const quoted = d.chance(0.1) ? name.replace('_', '"\r\nx: ') : name
    const file = d.chance(0.1) ? '; filename="../../x.csv"\r\nContent-Type: text/csv' : ''
    return `--x\r\nContent-Disposition: form-data; name="${quoted}"${file}\r\n\r\n${value}\r\n`
  })
  return Buffer.from(`${parts.join('')}${d.chance(0.8) ? '--x--\r\n' : d.of(['--x', '', '--y--\r\n'])}`)
}

export interface Ground {
  readonly targets: Targets
  readonly actions: readonly BuiltAction[]
  readonly cookies: readonly string[]
}

export function malformed(d: Dice, { targets, actions, cookies }: Ground): Malformed {
  const junk = () =>
    d.chance(0.5) ? d.of(WORDS) : d.of([targets.slug, targets.daySlug, targets.entryId, targets.dayId, 'desk'])
  const routes = [
    () => `/${junk()}`,
    () => `/${junk()}/days/${junk()}`,
    () =>
      `/${targets.slug}/days/${targets.daySlug}/${d.of(['bar', 'start', 'result', 'match', `result/${junk()}`, `cards/${junk()}`])}`,
    () => `/${targets.slug}/days/${junk()}/cards/${junk()}`,
    () => `/card/${junk()}`,
    () => `/member/${junk()}`,
    () => `/desk/${junk()}/${d.of(['members', 'courses', 'new-day', 'officers', 'record', 'book', 'privacy'])}`,
    () =>
      `/desk/${targets.slug}/days/${junk()}/${d.of(['change', 'entries', 'draw', 'handicaps', 'returns', 'result', 'print', 'export', 'course'])}`,
    () => `/sign-in/${d.of(['link', 'first'])}/${junk()}`,
    () => `/api/${d.of(['board', 'live'])}/${junk()}/${junk()}`,
    () => `/api/group/${d.chance(0.4) ? targets.link : junk()}${d.of(['', '/facts', '/facts', '/live'])}`,
    () =>
      `/api/auth/${d.of(['sign-in/email', 'sign-up/email', 'get-session', 'change-password', 'list-sessions', 'passkey/verify-authentication', junk()])}`,
    () => `/api/${d.of(['health', 'ready', junk()])}`,
    () => `/_next/${d.of(['static', 'image', 'data'])}/${junk()}`,
  ]
  let path = d.of(routes)()
  if (d.chance(0.4))
    path += `?${d.of(['c', 'hole', 'a', 'season', 'kept', 'next', '_rsc', '__proto__', 'x'])}=${d.of(WORDS)}&c=${d.of(WORDS)}`
  // A live stream never ends by itself: asked for by a method that gets none.
  const isStream = /\/live(\/|\?|$)/.test(path)
  const method = isStream ? d.of(['POST', 'PUT', 'OPTIONS']) : d.of(METHODS)
  const headers: Record<string, string> = {}
  if (d.chance(0.5))
    headers.cookie = d.chance(0.6)
      ? d.of(cookies)
      : `better-auth.session_token=${d.of(WORDS)}; a=${'b'.repeat(d.below(3000))}`
  if (d.chance(0.3)) headers.origin = d.of(['null', 'https://elsewhere.example', 'http://127.0.0.1', ''])
  if (d.chance(0.2)) headers['x-forwarded-for'] = d.of(['', '::1', '999.1.1.1', 'a'.repeat(2000), "1.2.3.4', 5"])
  if (d.chance(0.1)) headers['x-forwarded-host'] = d.of(['elsewhere.example', '%00', 'a b'])
  if (d.chance(0.1)) headers['x-nonce'] = d.of(["'unsafe-inline'", 'x'])
  if (d.chance(0.15)) headers.rsc = '1'
  if (d.chance(0.1)) headers['next-router-state-tree'] = d.of(['%5B', 'null', '%7B%7D', 'a'.repeat(500), '["",{}]'])
  if (d.chance(0.1)) headers['next-router-prefetch'] = d.of(['1', '2', 'x'])
  if (d.chance(0.05)) headers['accept-language'] = 'x'.repeat(4000)
  if (d.chance(0.05)) headers.range = 'bytes=99-1'
  if (d.chance(0.05)) headers['if-none-match'] = d.of(['*', 'W/"', '"'.repeat(50)])
  if (d.chance(0.03)) return { method, path, headers, raw: rawOf(d, path) }
  if (method === 'GET' || method === 'HEAD' || method === 'OPTIONS' || method === 'TRACE')
    return { method, path, headers }
  if (method === 'POST' && d.chance(0.25)) return action(d, path, headers, actions)
  if (method === 'POST' && d.chance(0.35)) return almostRight(d, targets, cookies, actions)
  headers['content-type'] = d.of(KINDS)
  return { method, path, headers, body: bodyOf(d, delivery(targets)) }
}

function delivery(targets: Targets): unknown {
  const fact = {
    kind: 'score',
    seq: 1,
    cardId: 'no-such-card',
    writer: targets.entryId,
    writtenAt: '2031-06-14T10:00:00.000Z',
    hole: 4,
    score: 4,
  }
  return {
    deviceId: 'malformed-device-0001',
    facts: [fact, { ...fact, seq: 2, kind: 'signature', role: 'player', scores: Array(18).fill(4) }],
  }
}

const REFERENCES = [
  '$K1',
  '$K9',
  '$F1',
  '$T',
  '$Q1',
  '$W1',
  '$@1',
  '$1',
  '$undefined',
  '$D2026',
  '$n12',
  '$ACTION_0',
  '$B1',
  '$o1',
  '$i1',
  '$-Infinity',
  '$h1',
  '$R1',
]

function action(d: Dice, path: string, headers: Record<string, string>, actions: readonly BuiltAction[]): Malformed {
  const { id } = d.of(actions)
  const bound = d.of<unknown>([[], [{}], ['x'], [null], [[{ society: 'x', day: 'y' }]], [d.of(VALUES)]])
  const fields: [string, string][] = [
    ['0', JSON.stringify([...(bound as unknown[]), d.of<unknown>([{}, null, 1, d.of(REFERENCES)]), d.of(REFERENCES)])],
  ]
  for (let n = d.below(4); n > 0; n--)
    fields.unshift([
      `_1_${d.of(['name', 'dayId', 'version', 'groups', 'course', 'email', '__proto__', 'file'])}`,
      String(d.of(WORDS)),
    ])
  if (d.chance(0.25)) fields[fields.length - 1]![1] = d.of(['{', '', '[', 'null', '1', '"$K1"', '['.repeat(2000)])
  if (d.chance(0.3)) {
    // As a form without script sends it.
    fields.push(
      [`$ACTION_REF_${d.below(3)}`, ''],
      ['$ACTION_1:0', d.of([`{"id":"${id}","bound":"$@1"}`, '{', '{}', `{"id":"x"}`])],
      ['$ACTION_1:1', d.of(['[]', '["x"]', '[', 'null'])],
      [`$ACTION_ID_${d.chance(0.5) ? id : 'x'}`, ''],
    )
    return {
      method: 'POST',
      path,
      headers: { ...headers, 'content-type': 'multipart/form-data; boundary=x' },
      body: multipart(d, fields),
    }
  }
  headers['next-action'] = d.chance(0.8) ? id : d.of(['x', '', '0'.repeat(42), '__proto__', `${id}0`])
  if (d.chance(0.3)) {
    headers['content-type'] = d.of(['text/plain;charset=UTF-8', 'application/json', ''])
    return {
      method: 'POST',
      path,
      headers,
      body: Buffer.from(
        d.of(['[]', '{', '', '[null]', '["$K1"]', '["$F1"]', '[{"a":1},{}]', '[["x"],"$T"]', '['.repeat(5000)]),
      ),
    }
  }
  headers['content-type'] = 'multipart/form-data; boundary=x'
  return { method: 'POST', path, headers, body: multipart(d, fields) }
}

/** Gets past the door and into the act: as many arguments as it takes, from somebody who is signed in, on a page of the desk. */
function almostRight(
  d: Dice,
  targets: Targets,
  cookies: readonly string[],
  actions: readonly BuiltAction[],
): Malformed {
  const { id } = d.of(actions)
  const used = (Number.parseInt(id.slice(0, 2), 16) >> 1) & 0b111111
  const takes = [6, 5, 4, 3, 2, 1].find((place) => (used >> (6 - place)) & 1) ?? 1
  const known = [targets.slug, targets.daySlug, targets.dayId, targets.entryId]
  const where = { society: targets.slug, day: targets.daySlug, dayId: targets.dayId }
  const words = VALUES.filter((value) => typeof value !== 'object' || value === null)
  const bound = Array.from({ length: Math.max(0, takes - 2) }, (_, at) =>
    d.chance(0.6)
      ? d.of<unknown>(at === 0 ? [targets.slug, where] : known)
      : d.of<unknown>([...words, where, {}, { society: -1 }]),
  )
  const state = d.of<unknown>([
    { attempt: 0, refused: null, changed: [], said: null, kept: null, typed: {} },
    {},
    { attempt: 'x' },
  ])
  const args = takes === 1 ? ['$K1'] : [...bound, state, '$K1']
  const fields: [string, string][] = [['0', JSON.stringify(args)]]
  for (let n = d.below(7); n > 0; n--)
    fields.unshift([
      `_1_${d.of(['name', 'dayId', 'version', 'groups', 'course', 'email', 'cardId', 'kind', 'reason', 'then', 'hole-1', 'personId', 'indexTenths', 'was', 'seen', 'terms', 'competitions', 'file', 'password', 'duty', 'to', 'slug'])}`,
      d.chance(0.5) ? d.of(known) : d.chance(0.5) ? String(d.of(WORDS)) : jsonText(d, where).slice(0, 3000),
    ])
  const page = d.of([
    '',
    '/members',
    '/officers',
    '/privacy',
    '/book',
    `/days/${targets.daySlug}/returns`,
    `/days/${targets.daySlug}/draw`,
  ])
  return {
    method: 'POST',
    path: d.chance(0.8)
      ? `/desk/${targets.slug}${page}`
      : d.of(['/sign-in', '/card', '/desk/account', `/member/${d.of(WORDS)}`]),
    headers: { cookie: d.of(cookies), 'next-action': id, 'content-type': 'multipart/form-data; boundary=x' },
    body: multipart(d, fields),
  }
}

function rawOf(d: Dice, path: string): Buffer {
  const lines = [
    `GET ${path} HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n`,
    `GET ${path} HTTP/9.9\r\nHost: a\r\n\r\n`,
    `BREW ${path} HTTP/1.1\r\nHost: a\r\n\r\n`,
    `GET /a b c HTTP/1.1\r\nHost: a\r\n\r\n`,
    `GET ${path} HTTP/1.1\r\nHost: a\r\nX: \x00\x01\r\n\r\n`,
    `POST /api/group/x/facts HTTP/1.1\r\nHost: a\r\nContent-Length: -5\r\n\r\n`,
    `POST /api/group/x/facts HTTP/1.1\r\nHost: a\r\nContent-Length: 3\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
    `POST /api/group/x/facts HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n`,
    `GET http://elsewhere.example/ HTTP/1.1\r\nHost: a\r\n\r\n`,
    `GET //elsewhere.example/%2e%2e HTTP/1.1\r\nHost: a\r\n\r\n`,
    `GET /\\elsewhere.example HTTP/1.1\r\nHost: a\r\n\r\n`,
    `GET ${path} HTTP/1.1\r\n\r\n`,
    '\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03',
  ]
  return Buffer.from(d.of(lines).replace('\r\n\r\n', '\r\nConnection: close\r\n\r\n'), 'latin1')
}
