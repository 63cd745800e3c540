// Fills a new book: with the invented demonstration society, or, with DAYBOOK_EMPTY=1, with an empty society and its
// first officer. A book that has a society already is left as it is.

import { firstSociety } from '../lib/society/first-start'
import { isBookEmpty } from '../lib/society/found-society'
import { demonstration } from '../seed/demo'
import { OFFICERS, PASSWORD } from '../seed/members'
import { must } from '../seed/must'
import { settingsOrStop } from './settings-or-stop'

const { empty, today, zone } = settingsOrStop()
if (!(await isBookEmpty())) {
  console.log('The book has a society already: left as it is.')
} else if (empty) {
  const officer = must(await firstSociety(), 'the first society')
  console.log('An empty society is ready.')
  if (officer) {
    console.log(`Sign in as ${officer.email}`)
    if (officer.oneTimePassword)
      console.log(`One-time password: ${officer.oneTimePassword} (change it after signing in)`)
  }
} else {
  const begun = Date.now()
  await demonstration(today, zone)
  console.log(`Fernbrake Golf Society, invented for demonstration, is in the book (${Date.now() - begun} ms).`)
  for (const { email, duty } of OFFICERS) console.log(`Sign in at /sign-in as ${email} (${duty.replace('-', ' ')})`)
  console.log(`Password of all of them: ${PASSWORD}`)
}
process.exit(0)
