// Fills a new book: with the invented demonstration society, or, with DAYBOOK_EMPTY=1, with an empty society and its
// first officer. A book that has a society already is left as it is.

import { firstSociety } from '../lib/society/first-start'
import { isBookEmpty } from '../lib/society/found-society'
import { isThisMachine } from '../lib/society/own-address'
import { bookFile } from '../lib/store/client'
import { oneProcess } from '../lib/store/held'
import { demonstration } from '../seed/demo'
import { OFFICERS, PASSWORD } from '../seed/members'
import { must } from '../seed/must'
import { settingsOrStop } from './settings-or-stop'

const { empty, zone, origin } = settingsOrStop()
// Of two starts on one new book one makes the society; the other waits for it and finds it there.
let isOther = true
for (let tries = 0; isOther && tries < 300; tries++) {
  isOther = (await oneProcess(`${bookFile()}-first`, makeFirst)) === 'other'
  if (isOther) await new Promise((resolve) => setTimeout(resolve, 200))
}
if (isOther) {
  console.error('Another start has been making the first society for a minute. Look at its output, then start again.')
  process.exit(1)
}
process.exit(0)

async function makeFirst(): Promise<void> {
  if (!(await isBookEmpty())) {
    console.log('The book has a society already: left as it is.')
    return
  }
  if (empty) await emptySociety()
  else if (isPublic(origin)) {
    console.error(
      `The demonstration has a printed password and is not put behind ${origin}. Set DAYBOOK_EMPTY=1 for a society of your own.`,
    )
    process.exit(1)
  } else await invented()
}

/** Would strangers reach this installation? */
function isPublic(origin: string | undefined): boolean {
  if (origin === undefined) return false
  return new URL(origin).protocol === 'https:' || !isThisMachine(origin)
}

async function emptySociety(): Promise<void> {
  const first = must(await firstSociety(), 'the first society')
  if (first?.kind === 'from-settings') console.log(`An empty society is ready. Sign in as ${first.email}`)
  if (first?.kind === 'link') {
    console.log('The book is empty. Found your society behind this link, once, within the next two days:')
    console.log(`  ${process.env.DAYBOOK_SHOWN_AT ?? origin ?? ''}${first.path}`)
  }
}

async function invented(): Promise<void> {
  const begun = Date.now()
  await demonstration(new Date(begun), zone)
  console.log(`Fernbrake Golf Society, invented for demonstration, is in the book (${Date.now() - begun} ms).`)
  for (const { email, duty } of OFFICERS) console.log(`Sign in at /sign-in as ${email} (${duty.replace('-', ' ')})`)
  console.log(`Password of all of them: ${PASSWORD}`)
}
