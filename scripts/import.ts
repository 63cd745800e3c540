// Reads the plain files of a society into a book that does not have it: npm run import -- <folder or file.zip>
import { importSociety } from '../lib/society/import-society'
import { migrateSafely } from '../lib/store/migrate-safely'
import { readFiles } from './plain-files'
import { settingsOrStop } from './settings-or-stop'

settingsOrStop()
const [from] = process.argv.slice(2)
if (!from) {
  console.error('Name the folder or the .zip file: npm run import -- fernbrake.zip')
  process.exit(1)
}
await migrateSafely(new Date())
const files = await readFiles(from).catch((fault) => {
  console.error(fault instanceof Error ? fault.message : fault)
  process.exit(1)
})
const done = await importSociety(files)
if (!done.ok) {
  for (const fault of done.faults) console.error(`${fault.place}: ${fault.sentence}`)
  console.error(done.faults.length > 0 ? 'Nothing was read in.' : done.sentence)
  process.exit(1)
}
console.log(`${done.value.name} is in the book, ${done.value.rows} rows.`)
for (const { name, email, path } of done.value.officers)
  console.log(
    `${name} (${email}) sets a password within a week at ${process.env.DAYBOOK_ORIGIN ?? 'the address of this installation, '}${path}`,
  )
console.log('Links of members and codes of groups are new: send and print them again.')
process.exit(0)
