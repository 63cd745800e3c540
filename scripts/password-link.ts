// A one-time link for an officer who has forgotten the password: npm run password-link -- secretary@example.org
import { passwordLink } from '../lib/society/reset-password'
import { bookOrStop } from './settings-or-stop'

bookOrStop()
const [email] = process.argv.slice(2)
if (!email) {
  console.error('Name the e-mail address of the officer: npm run password-link -- secretary@example.org')
  process.exit(1)
}
const made = await passwordLink(email)
if (!made.ok) {
  console.error(made.sentence)
  process.exit(1)
}
const { name, path, days } = made.value
console.log(`${name} sets a new password behind this link, once, within ${days} days:`)
console.log(`  ${process.env.DAYBOOK_ORIGIN ?? ''}${path}`)
process.exit(0)
