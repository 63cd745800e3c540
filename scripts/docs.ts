// Remakes docs/register.md.
import { writeFileSync } from 'node:fs'
import { registerPage } from './register-page'

writeFileSync('docs/register.md', registerPage())
console.log('docs/register.md is made anew.')
