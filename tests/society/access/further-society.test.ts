// Promise: a further society is founded behind a link that only a command on the server makes, once and in time; its
// secretary sees nothing of the others; and where it cannot be, one sentence says why.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { firstSociety, foundFirstSociety, foundingLink, furtherSociety } from '@/lib/society/first-start'
import { foundSociety, societyList } from '@/lib/society/found-society'
import { memberList } from '@/lib/society/keep-person'
import { signInWithPassword } from '@/lib/society/sign-in'
import { officerAt } from '@/lib/society/who-is-asking'
import type { Book } from '@/lib/store/client'
import { FOLDER } from '../../setup/book'
import { ownBook } from '../../setup/copy'
import { got, world } from '../setup/world'

let own: { book: Book; file: string; close: () => Promise<void> }
beforeAll(async () => {
  own = await ownBook()
})
afterAll(() => own.close())

const password = 'a long enough password'
const input = (name: string, slug: string, email = 'jago@example.org') => ({
  name,
  slug,
  officer: { name: 'Jago Trevennor', email, password },
})
const tokenOf = (path: string) => path.split('/').at(-1)!

function command(file: string, ...args: string[]) {
  const run = spawnSync(
    process.execPath,
    ['--conditions=react-server', '--import', 'tsx', 'scripts/found-society.ts', ...args],
    {
      env: { ...process.env, DATABASE_URL: `file:${file}`, DAYBOOK_ORIGIN: 'https://days.example.org' },
      encoding: 'utf8',
    },
  )
  return { code: run.status, out: run.stdout, said: run.stderr.trim().split('\n') }
}

describe('a further society', () => {
  it('is refused while there is no first one, whose own link stays good', async () => {
    const first = got(await firstSociety())
    expect(await furtherSociety()).toMatchObject({ ok: false, code: 'book-empty' })
    expect(first?.kind === 'link' && (await foundingLink(tokenOf(first.path)))).toBe('first')
  })

  it('is founded behind its link, once and in time, and sees nothing of the first', async () => {
    await world()
    const now = new Date()
    const [one, two] = [got(await furtherSociety(now)), got(await furtherSociety(now))]
    expect(await foundingLink(tokenOf(one.path))).toBe('further')
    expect(await foundingLink(tokenOf(one.path), new Date(now.getTime() + 49 * 3_600_000))).toBeNull()
    const token = tokenOf(one.path)
    expect(await foundFirstSociety(token, input('Again', 'fernbrake'))).toMatchObject({ code: 'address-taken' })
    expect(await foundFirstSociety(token, input('Desk', 'desk'))).toMatchObject({ code: 'address-taken' })
    const both = await Promise.all([
      foundFirstSociety(token, input('Gorse Hill', 'gorse-hill')),
      foundFirstSociety(token, input('Gorse Hill', 'gorse-hill-2')),
    ])
    expect(both.filter((done) => done.ok)).toHaveLength(1)
    expect(await foundingLink(token)).toBeNull()
    // The other link is another society's.
    expect(await foundingLink(tokenOf(two.path))).toBe('further')
    const slugs = (await societyList()).map((society) => society.slug)
    expect(slugs).toHaveLength(2)
    const slug = slugs.find((known) => known !== 'fernbrake')!
    const signed = await signInWithPassword(new Headers({ host: 'daybook.test' }), {
      email: 'jago@example.org',
      password,
    })
    const cookie = got(signed)
      .cookies.map((each) => `${each.name}=${encodeURIComponent(each.value)}`)
      .join('; ')
    const headers = new Headers({ host: 'daybook.test', cookie })
    const secretary = await officerAt(headers, slug)
    expect(got(await memberList(secretary!))).toEqual([])
    expect(await officerAt(headers, 'fernbrake')).toBeNull()
  })

  it('has a command that says what it does, names the link, and stops where there is no book', () => {
    const help = command(own.file, '--help')
    expect([help.code, help.out]).toEqual([0, expect.stringContaining('one further society')])
    const made = command(own.file)
    expect(made.out).toMatch(/^ {2}https:\/\/days\.example\.org\/sign-in\/first\/[\w-]{32}$/m)
    const none = command(join(process.env[FOLDER]!, 'none.db'))
    expect(none.code).toBe(1)
    expect(none.said).toHaveLength(1)
  })

  it('is refused beside the demonstration', async () => {
    const officer = { name: 'Ona Vale', email: 'ona@example.org', password }
    got(await foundSociety({ name: 'Invented', slug: 'invented', isDemo: true, officer }))
    expect(await furtherSociety()).toMatchObject({ ok: false, code: 'demonstration' })
    const made = command(own.file)
    expect(made.code).toBe(1)
    expect(made.said.at(-1)).toContain('demonstration')
  })
})
