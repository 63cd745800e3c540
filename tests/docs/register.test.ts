// The register in the docs says what the code says.
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { registerPage } from '@/scripts/register-page'

it('is the register of the code: run "npm run docs" when this fails', () => {
  expect(readFileSync('docs/register.md', 'utf8')).toBe(registerPage())
})
