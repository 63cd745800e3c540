// Promise: the installation's own secret is its owner's alone; a small spreadsheet that would unpack to gigabytes is never
// unpacked; every field for a password is hidden, may be pasted into, and tells a password manager which one is meant; and
// what is taken away stays in no cache.
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import ExcelJS from 'exceljs'
import JSZip from 'jszip'
import { afterEach, describe, expect, it, vi } from 'vitest'
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

describe('a spreadsheet', () => {
  const small = async () => {
    const workbook = new ExcelJS.Workbook()
    workbook.addWorksheet('Members').addRow(['Family name', 'First name'])
    return Buffer.from((await workbook.xlsx.writeBuffer()) as ArrayBuffer)
  }

  it('that unpacks to more than is allowed is refused before it is unpacked, whatever its directory says', async () => {
    const zip = await JSZip.loadAsync(await small())
    zip.file('xl/more.xml', new Uint8Array(60 * 1024 * 1024))
    const bytes = await zip.generateAsync({ type: 'nodebuffer', compression: 'DEFLATE' })
    expect(bytes.byteLength).toBeLessThan(100_000)
    // The size of each part in the package's own directory: a thousand bytes, it says.
    for (let at = bytes.indexOf(DIRECTORY); at >= 0; at = bytes.indexOf(DIRECTORY, at + 1))
      bytes.writeUInt32LE(1000, at + 24)
    const unpacks = vi.spyOn(ExcelJS.Workbook.prototype, 'xlsx', 'get')
    expect(await readTable(bytes)).toMatchObject({ ok: false, code: 'file-too-large' })
    expect(unpacks).not.toHaveBeenCalled()
    unpacks.mockRestore()
  })

  it('whose directory points nowhere or lies about a part is no table', async () => {
    for (const [place, value] of [
      [24, 0x7fff_ffff],
      [20, 0x7fff_ffff],
      [42, 0x7fff_ffff],
      [42, 3],
    ] as const) {
      const bytes = await small()
      bytes.writeUInt32LE(value, bytes.indexOf(DIRECTORY) + place)
      expect(await readTable(bytes), `${place}`).toMatchObject({ ok: false, code: 'not-a-table' })
    }
    expect(await readTable(await small())).toMatchObject({ ok: true })
  })
})

const DIRECTORY = Buffer.from([0x50, 0x4b, 0x01, 0x02])

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
