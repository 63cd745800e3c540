// Brings the book up to date. A book that has something to lose is copied first.
import { bookFile } from '../lib/store/client'
import { holdBook } from '../lib/store/held'
import { migrateSafely } from '../lib/store/migrate-safely'
import { settingsOrStop } from './settings-or-stop'

settingsOrStop()
try {
  // A copy that is being put back is waited for; none is put back meanwhile.
  holdBook(bookFile())
  const { applied, copy } = await migrateSafely(new Date())
  if (copy) console.log(`Copied to ${copy} first.`)
  console.log(applied.length === 0 ? 'The book is up to date.' : `Applied ${applied.join(', ')}.`)
} catch (fault) {
  // A full disk, a copy that cannot be made, another start at work: the book is as it was before the step that failed.
  console.error(fault instanceof Error ? fault.message : fault)
  process.exit(1)
}
