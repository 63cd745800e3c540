// A browser's half of a form: signs in, sends a server action as the page's own script would, reads what came back.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

export interface Answer {
  readonly status: number
  readonly text: string
  /** The refusal's code, or 'done'. */
  readonly outcome: string
}

export interface BuiltAction {
  readonly id: string
  readonly name: string
  readonly file: string
}

/** Every server action of the build. */
export function builtActions(): readonly BuiltAction[] {
  const manifest = join(process.env.DAYBOOK_BUILD ?? '.next', 'server/server-reference-manifest.json')
  const { node } = JSON.parse(readFileSync(manifest, 'utf8')) as {
    node: Record<string, { exportedName?: string; filename?: string }>
  }
  return Object.entries(node).map(([id, { exportedName = '', filename = '' }]) => ({
    id,
    name: exportedName,
    file: filename,
  }))
}

const WINDOW_S = 60

export async function signIn(base: string, email: string, password: string): Promise<string> {
  const ask = () =>
    fetch(`${base}/api/auth/sign-in/email`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: base },
      body: JSON.stringify({ email, password }),
    })
  let answer = await ask()
  // All the tests come from one address and share its limit; the server says how long to wait, never more than its window.
  const wait = Number(answer.headers.get('x-retry-after'))
  if (answer.status === 429 && wait > 0 && wait <= WINDOW_S) {
    await new Promise((resolve) => setTimeout(resolve, (wait + 1) * 1000))
    answer = await ask()
  }
  if (!answer.ok) throw new Error(`${email} cannot sign in: ${answer.status} ${await answer.text()}`)
  return answer.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0])
    .join('; ')
}

const FRESH = { attempt: 0, refused: null, changed: [], said: null, kept: null, typed: {}, preview: null }

/** The arguments as React writes them: the form is part 1, its fields carry that number. */
export async function sendAction(
  base: string,
  page: string,
  id: string,
  bound: readonly unknown[],
  form: Readonly<Record<string, string | Blob>>,
  cookie?: string,
): Promise<Answer> {
  const body = new FormData()
  for (const [name, value] of Object.entries(form)) body.append(`_1_${name}`, value)
  body.append('0', JSON.stringify([...bound, FRESH, '$K1']))
  const answer = await fetch(`${base}${page}`, {
    method: 'POST',
    redirect: 'manual',
    headers: { 'next-action': id, accept: 'text/x-component', origin: base, ...(cookie ? { cookie } : {}) },
    body,
  })
  const text = await answer.text()
  const redirect = answer.headers.get('x-action-redirect') ?? undefined
  return { status: answer.status, text, outcome: outcomeOf({ status: answer.status, redirect }, text) }
}

/** What a form was answered: 'done', the code of a refusal, or a status from 400 upwards. */
export function outcomeOf(answer: { readonly status: number; readonly redirect: string | undefined }, text: string) {
  if (answer.status >= 400) return String(answer.status)
  if (answer.status >= 300 || answer.redirect !== undefined) return 'done'
  const code = /"refused":\{[^{}]*?"code":"([a-z-]+)"/.exec(text)?.[1]
  if (code) return code
  // The forms that hand out a link answer with a sentence only.
  if (!/"refused":true/.test(text)) return 'done'
  if (/That is for the/.test(text)) return 'not-allowed'
  if (/no longer signed in/.test(text)) return 'signed-out'
  return /There is no such/.test(text) ? 'not-found' : 'refused'
}

export async function get(base: string, path: string, cookie?: string): Promise<Answer> {
  const answer = await fetch(`${base}${path}`, { redirect: 'manual', headers: cookie ? { cookie } : {} })
  const text = await answer.text()
  // A page that only puts more into its own address, such as the card it shows, is read there.
  const onward = new URL(answer.headers.get('location') ?? path, base)
  if (answer.status === 307 && onward.pathname === path && onward.search !== '')
    return get(base, `${onward.pathname}${onward.search}`, cookie)
  return { status: answer.status, text, outcome: String(answer.status) }
}

export async function postJson(base: string, path: string, body: unknown): Promise<Answer> {
  const answer = await fetch(`${base}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: base },
    body: JSON.stringify(body),
  })
  const text = await answer.text()
  return { status: answer.status, text, outcome: /"code":"([a-z-]+)"/.exec(text)?.[1] ?? String(answer.status) }
}
