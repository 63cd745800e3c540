'use server'

import { headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { groupLinkOfCode } from '@/lib/society/who-is-asking'

export interface CodeState {
  readonly code: string
  readonly sentence: string | null
}

/** Where the request comes from, as the proxy in front tells it; without one, this machine. */
async function from(): Promise<string> {
  const forwarded = (await headers()).get('x-forwarded-for')
  return forwarded?.split(',')[0]?.trim() || 'local'
}

export async function openByCode(_before: CodeState, form: FormData): Promise<CodeState> {
  const typed = form.get('code')
  const code = typeof typed === 'string' ? typed.slice(0, 60) : ''
  if (!code.trim()) return { code, sentence: 'Type the code first: a word and six figures.' }
  const found = await groupLinkOfCode(code, await from())
  if (!found.ok) return { code, sentence: found.sentence }
  redirect(`/card/${encodeURIComponent(found.value.linkKey)}`)
}
