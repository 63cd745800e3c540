// Promise: the installation's own secret is its owner's alone; a small spreadsheet that would unpack to gigabytes is never
// unpacked; every field for a password is hidden, may be pasted into, and tells a password manager which one is meant; and
// what is taken away stays in no cache.
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import ExcelJS from 'exceljs'
import { afterEach, expect, it, vi } from 'vitest'
import { readTable } from '@/lib/society/table-file'
import { sources } from '../architecture/imports'

afterEach(() => vi.unstubAllEnvs())

it('the secret is made once, for its owner to read and nobody else', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'daybook-secret-'))
  try {
    vi.stubEnv('DATABASE_URL', `file:${join(folder, 'book.db')}`)
    vi.stubEnv('DAYBOOK_SECRET', undefined)
    vi.resetModules()
    const { secretOfInstallation } = await import('@/lib/store/settings')
    const secret = secretOfInstallation()
    // 32 random bytes.
    expect(secret).toMatch(/^[\w-]{43}$/)
    expect(statSync(join(folder, 'secret')).mode & 0o777).toBe(0o600)
    vi.resetModules()
    expect((await import('@/lib/store/settings')).secretOfInstallation()).toBe(secret)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})

it('a spreadsheet that says it unpacks to gigabytes is refused before it is unpacked', async () => {
  const workbook = new ExcelJS.Workbook()
  workbook.addWorksheet('Members').addRow(['Family name', 'First name'])
  const bytes = Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer)
  expect(await readTable(bytes)).toMatchObject({ ok: true })
  const entry = bytes.indexOf(Buffer.from([0x50, 0x4b, 0x01, 0x02]))
  expect(entry).toBeGreaterThan(0)
  // The unpacked size of the first part, in the package's own directory.
  bytes.writeUInt32LE(0x7fff_ffff, entry + 24)
  const unpacks = vi.spyOn(ExcelJS.Workbook.prototype, 'xlsx', 'get')
  expect(await readTable(bytes)).toMatchObject({ ok: false, code: 'file-too-large' })
  expect(unpacks).not.toHaveBeenCalled()
  unpacks.mockRestore()
})

const APP = sources('app').map((path) => ({ path, text: readFileSync(path, 'utf8') }))

it('a password is hidden, may be pasted, and is known to a password manager', () => {
  const fields = APP.flatMap(({ path, text }) =>
    [...text.matchAll(/<(?:Field|input)\b[^>]*?(?:type="password"|name="[^"]*password")[^>]*?>/gi)].map(([tag]) => ({
      path,
      tag,
      text,
    })),
  )
  expect(fields.length).toBeGreaterThanOrEqual(5)
  for (const { path, tag, text } of fields) {
    expect(tag, path).toContain('type="password"')
    expect(tag, path).toMatch(/autoComplete="(?:current|new)-password"/)
    expect(text, path).not.toMatch(/onPaste|onCopy/)
  }
})

it('what is taken away is a file to keep, and no cache keeps it', () => {
  const files = APP.filter(({ text }) => text.includes('content-disposition'))
  expect(files.length).toBeGreaterThanOrEqual(4)
  for (const { path, text } of files) {
    expect(text, path).toMatch(/'content-disposition': `attachment; filename="/)
    expect(text, path).toMatch(/'cache-control': '(?:private, )?no-store'/)
  }
})
