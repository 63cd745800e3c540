// Puts a copy in the place of the book: npm run restore -- data/copies/<file>.db
import { restoreCopy } from '../lib/store/restore'
import { settingsOrStop } from './settings-or-stop'

settingsOrStop()
const [copy] = process.argv.slice(2)
if (!copy) {
  console.error('Name the copy: npm run restore -- data/copies/<file>.db')
  process.exit(1)
}
const done = await restoreCopy(copy, new Date())
if (!done.ok) {
  console.error(done.sentence)
  process.exit(1)
}
if (done.value.aside) console.log(`The book as it was is kept in ${done.value.aside}.`)
if (done.value.migrated.length > 0) console.log(`Applied ${done.value.migrated.join(', ')}.`)
console.log(`The book is what ${copy} holds.`)
