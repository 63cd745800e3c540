// Promise: the version is the same wherever it stands, and the pages about threats and accessibility name only tests there are.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { describe, expect, it, vi } from 'vitest'
import { GET as health } from '@/app/api/health/route'

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }

describe('the version', () => {
  it('stands first in the list of changes, and is built into the pages', async () => {
    const [, first] = /^## (\d+\.\d+\.\d+), /m.exec(readFileSync('CHANGELOG.md', 'utf8')) ?? []
    expect(first).toBe(version)
    const config = (await import(pathToFileURL(join(process.cwd(), 'next.config.js')).href)) as {
      default: { env: Record<string, string> }
    }
    expect(config.default.env).toMatchObject({ DAYBOOK_VERSION: version })
    const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { version: string }
    expect(lock.version).toBe(version)
  })

  it('is told by the health address', async () => {
    vi.stubEnv('DAYBOOK_VERSION', version)
    expect(await health().json()).toEqual({ alive: true, version })
    vi.unstubAllEnvs()
  })
})

it.each(['docs/threats.md', 'docs/accessibility.md', 'docs/releasing.md'])('%s names only what exists', (page) => {
  const text = readFileSync(page, 'utf8')
  const named = [...text.matchAll(/\b(?:tests|lib|app)\/[\w./[\]-]+\.(?:tsx?|js)\b/g)].map(([path]) => path)
  const pages = [...text.matchAll(/\]\(([\w./-]+\.md)\)/g)].map(([, path]) => `docs/${path}`)
  expect(named.length).toBeGreaterThan(0)
  expect([...named, ...pages].filter((path) => !existsSync(path))).toEqual([])
})
