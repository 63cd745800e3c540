// Promise: what the checklist of security says is done nowhere in the running program is done nowhere. Numbers are those of
// OWASP ASVS 5.0 where nothing else is named; a file named beside a rule is the one place that has a reason.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { ROOT, sources } from './imports'

const FILES = [...sources('lib'), ...sources('app'), 'proxy.ts', 'instrumentation.ts', 'next.config.js']
  .filter((path) => !path.includes('generated'))
  .map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }))

interface Never {
  readonly number: string
  readonly what: string
  readonly sign: RegExp
  readonly except?: readonly (string | RegExp)[]
}

const NEVER: readonly Never[] = [
  { number: '1.2.5', what: 'starts a program', sign: /child_process|worker_threads|\bexecSync\b/ },
  // Names of people, each sign of them quoted.
  { number: '1.2.9', what: 'makes a pattern', sign: /new RegExp\(/, except: ['lib/boards/shown-names.ts'] },
  { number: '1.3.2', what: 'runs text as a script', sign: /\beval\(|new Function\(|vm['"]/ },
  // The one fixed line that sets the light before the page is painted.
  {
    number: '3.2.2',
    what: 'writes markup as text',
    sign: /dangerouslySetInnerHTML|\.innerHTML\b|document\.write/,
    except: ['app/layout.tsx'],
  },
  {
    number: '1.3.6',
    what: 'asks another server',
    sign: /from ['"](?:node:)?(?:https?|http2|net|tls|dgram|undici|axios)['"]/,
    except: ['lib/society/at-the-door.ts', 'lib/society/request-log.ts'],
  },
  { number: '3.4.2', what: 'lets other origins read', sign: /access-control-allow/i },
  {
    number: '5.3.1',
    what: 'touches files outside the store',
    sign: /from ['"]node:fs/,
    // Reads the version while it builds.
    except: [/^lib\/store\//, 'next.config.js'],
  },
  { number: '11.4.1', what: 'uses a broken hash', sign: /['"](?:md5|sha1|md4|rc4|des)['"]/i },
  // How long a browser waits before it asks again.
  {
    number: '11.5.1',
    what: 'draws secrets from a weak source',
    sign: /Math\.random/,
    except: ['app/(board)/_board/use-live-board.ts', 'lib/outbox/on-this-phone.ts'],
  },
  {
    number: '13.3.1',
    what: 'carries a secret',
    sign: /(?:password|secret|token|key)\s*[:=]\s*['"][A-Za-z0-9+/_-]{20,}['"]/i,
    // Names of headers.
    except: ['next.config.js'],
  },
  {
    number: 'DEVELOPERS.md 51',
    what: 'fetches a page before its link is followed',
    sign: /from 'next\/link'/,
    except: ['app/_parts/link.tsx'],
  },
  { number: '16.2.5', what: 'writes to the console of the server', sign: /console\.(?:log|info|debug)\(/ },
]

describe('nothing in the running program', () => {
  it.each(NEVER)('$what ($number)', ({ sign, except = [] }) => {
    const found = FILES.filter(
      ({ path, text }) =>
        sign.test(text) && !except.some((one) => (typeof one === 'string' ? one === path : one.test(path))),
    )
    expect(found.map((one) => one.path)).toEqual([])
  })

  it('asks by fetch but from a browser, and there only its own house', () => {
    const asks = FILES.filter(({ text }) => /(?<![.\w])fetch\(/.test(text))
    expect(asks.length).toBeGreaterThan(3)
    for (const { path, text } of asks) {
      expect(path).toMatch(/^lib\/outbox\/|^app\/\(board\)\/_board\/|^app\/sign-in\/passkey-request\.ts$/)
      expect(text).not.toMatch(/server-only|https?:\/\/(?!.*w3\.org)[a-z]/)
    }
  })

  it('is looked for in vain: every exception still has its reason', () => {
    for (const { sign, except = [] } of NEVER)
      for (const one of except)
        expect(
          FILES.some(({ path, text }) => (typeof one === 'string' ? one === path : one.test(path)) && sign.test(text)),
        ).toBe(true)
  })
})
