// Promise: after signing in nobody is led anywhere but to the desk, whatever the address says (OWASP ASVS 5.0, 3.7.2).
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { nextAddress } from '@/app/sign-in/next-address'

it.each([
  '//elsewhere.example',
  'https://elsewhere.example',
  '/\\elsewhere.example',
  '/desk\\@elsewhere',
  'javascript:alert(1)',
  '/fernbrake',
  undefined,
  '',
])('leads from %s to the desk', (text) => {
  const led = new URL(nextAddress(text), 'https://daybook.example')
  expect(led.origin).toBe('https://daybook.example')
  expect(led.pathname).toMatch(/^\/desk/)
})

it('keeps an address of the desk', () => {
  expect(nextAddress('/desk/fernbrake/days/spring-cup/returns?card=x')).toBe(
    '/desk/fernbrake/days/spring-cup/returns?card=x',
  )
})

it('stays in this house for any text', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.webUrl(),
        fc.string().map((text) => `/desk${text}`),
      ),
      (text) => {
        const led = new URL(nextAddress(text), 'https://daybook.example')
        expect(led.origin).toBe('https://daybook.example')
        expect(led.pathname.startsWith('/desk')).toBe(true)
      },
    ),
  )
})
