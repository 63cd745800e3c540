// A one-time link behind which a further society is founded on this installation: npm run found-society
import { furtherSociety } from '../lib/society/first-start'
import { bookOrStop } from './settings-or-stop'

const HELP = `npm run found-society

Prints a link behind which one further society is founded on this installation, once, within two days. Give it to the
secretary to be: who opens it names the society, its part of the address, and the account of its first officer.
The server may be running meanwhile. The first society of a new book is founded behind the link the start prints.`

const asked = process.argv.slice(2)
if (asked.length > 0) {
  const isHelp = asked.length === 1 && ['--help', '-h', 'help'].includes(asked[0]!)
  ;(isHelp ? console.log : console.error)(HELP)
  process.exit(isHelp ? 0 : 1)
}
bookOrStop()
const made = await furtherSociety()
if (!made.ok) {
  console.error(made.sentence)
  process.exit(1)
}
console.log(`A further society is founded behind this link, once, within ${made.value.hours} hours:`)
console.log(`  ${process.env.DAYBOOK_ORIGIN ?? ''}${made.value.path}`)
process.exit(0)
