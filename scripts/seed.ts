// Fills a new book: with the invented demonstration society, or, with DAYBOOK_EMPTY=1, with an empty society and its
// first officer. A book that has a society already is left as it is.

import { firstSociety } from '../lib/society/first-start'
import { isBookEmpty } from '../lib/society/found-society'
import { demonstration } from '../seed/demo'
import { OFFICERS, PASSWORD } from '../seed/members'
import { must } from '../seed/must'
import { settingsOrStop } from './settings-or-stop'

const { empty, zone } = settingsOrStop()
if (!(await isBookEmpty())) {
  console.log('The book has a society already: left as it is.')
} else if (empty) {
  const first = must(await firstSociety(), 'the first society')
  if (first?.kind === 'from-settings') console.log(`An empty society is ready. Sign in as ${first.email}`)
  if (first?.kind === 'link') {
    console.log('The book is empty. Found your society behind this link, once, within the next two days:')
    console.log(`  ${process.env.DAYBOOK_ORIGIN ?? ''}${first.path}`)
  }
} else {
  const begun = Date.now()
  await demonstration(new Date(begun), zone)
  console.log(`Fernbrake Golf Society, invented for demonstration, is in the book (${Date.now() - begun} ms).`)
  for (const { email, duty } of OFFICERS) console.log(`Sign in at /sign-in as ${email} (${duty.replace('-', ' ')})`)
  console.log(`Password of all of them: ${PASSWORD}`)
}
process.exit(0)
