// Promise: while the disk is full, a form of the desk says in one sentence that nothing was saved and gives back what was
// typed; with space again the same press saves it.
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { FRESH } from '@/app/desk/_form/act-state'
import { renewLink } from '@/app/desk/[society]/days/[day]/draw/actions'
import { keepMember } from '@/app/desk/[society]/members/actions'
import { readMembersIn } from '@/app/desk/[society]/members/import/actions'
import { memberList } from '@/lib/society/keep-person'
import { signInWithPassword } from '@/lib/society/sign-in'
import { book } from '@/lib/store/client'
import { ownBook } from '../setup/copy'
import { got, type World, world } from '../society/setup/world'

const asked = vi.hoisted(() => ({ headers: new Headers() }))
vi.mock('next/headers', () => ({ headers: async () => asked.headers }))
vi.mock('next/cache', () => ({ refresh: () => {} }))
vi.mock('next/navigation', () => ({
  redirect: (to: string) => {
    throw new Error(`goes to ${to}`)
  },
}))

const SENTENCE = 'The server cannot save at the moment: its disk may be full. Tell whoever runs it, then press again.'
let close: () => Promise<void>
let w: World
beforeAll(async () => {
  close = (await ownBook()).close
  w = await world()
  const from = new Headers({ host: 'daybook.test' })
  const signed = await signInWithPassword(from, {
    email: 'secretary-fernbrake@example.org',
    password: 'a long enough password',
  })
  const cookie = got(signed).cookies.map((one) => `${one.name}=${encodeURIComponent(one.value)}`)
  asked.headers = new Headers({ host: 'daybook.test', cookie: cookie.join('; ') })
})
afterAll(() => close())

/** As many pages as the book has and no more: SQLite answers as it does on a full disk. */
async function full<T>(work: () => Promise<T>): Promise<T> {
  await book().$queryRaw`PRAGMA freelist_count`
  const [{ page_count: pages } = { page_count: 0n }] = await book().$queryRaw<
    { page_count: bigint }[]
  >`PRAGMA page_count`
  await book().$queryRawUnsafe(`PRAGMA max_page_count = ${Number(pages)}`)
  try {
    return await work()
  } finally {
    await book().$queryRawUnsafe('PRAGMA max_page_count = 1073741823')
  }
}

function formOf(fields: Record<string, string | Blob>): FormData {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.set(name, value)
  return form
}

const member = {
  firstName: 'Wren',
  familyName: 'Aldermoor',
  gender: 'women',
  kind: 'member',
  handicapSource: 'home-club',
  indexTenths: '18.4',
  phone: '01632 960 123',
}

describe('on a full disk', () => {
  it('the form of a member keeps what was typed, and saves it with space again', async () => {
    const tries = 400
    let refused = FRESH
    let saved = 0
    await full(async () => {
      // What is left on the last pages is filled by members who go in.
      for (let n = 0; n < tries && refused.refused === null; n++)
        refused = await keepMember(
          'fernbrake',
          FRESH,
          formOf({ ...member, familyName: `Aldermoor${'x'.repeat(60)}${n}` }),
        ).catch((cause: Error) => {
          if (!cause.message.startsWith('goes to')) throw cause
          saved++
          return FRESH
        })
    })
    expect(refused.refused).toEqual({ code: 'cannot-save', sentence: SENTENCE, faults: [] })
    const lost = `Aldermoor${'x'.repeat(60)}${saved}`
    expect(refused.typed).toMatchObject({ firstName: ['Wren'], familyName: [lost], phone: ['01632 960 123'] })
    const names = async () => got(await memberList(w.actor)).map((one) => one.familyName)
    expect(await names()).not.toContain(lost)
    const again = formOf(Object.fromEntries(Object.entries(refused.typed).map(([name, [value]]) => [name, value!])))
    await expect(keepMember('fernbrake', refused, again)).rejects.toThrow('goes to /desk/fernbrake/members')
    expect(await names()).toContain(lost)
  })

  it('an import and a new link say the same', async () => {
    const cannot = vi
      .spyOn(book(), '$transaction')
      .mockRejectedValue(new Error('SQLITE_FULL: database or disk is full'))
    try {
      const where = { society: 'fernbrake', day: 'none' }
      const list = new Blob(['Name,Index,Sex\nIvo Hollow,12.0,M'])
      const seen = await readMembersIn(
        'fernbrake',
        { attempt: 0, refused: null, preview: null },
        formOf({ file: list }),
      )
      const sent = formOf({ file: list, digest: seen.preview?.digest ?? '' })
      sent.set('then', 'import')
      const imported = await readMembersIn('fernbrake', seen, sent)
      expect(imported.refused).toMatchObject({ code: 'cannot-save', sentence: SENTENCE })
      expect(imported.preview).not.toBeNull()
      const link = await renewLink(where, FRESH, formOf({ dayId: 'd', groupId: 'g' }))
      expect(link.refused?.sentence).toBe(SENTENCE)
    } finally {
      cannot.mockRestore()
    }
  })
})
