// A society's whole book as plain files: npm run export -- <society> <folder or file.zip>
import { societyFiles } from '../lib/society/export-society'
import { writeFiles } from './plain-files'
import { bookOrStop } from './settings-or-stop'

bookOrStop()
const [society, to] = process.argv.slice(2)
if (!society || !to) {
  console.error('Name the society by its address part, and where to write: npm run export -- fernbrake fernbrake.zip')
  process.exit(1)
}
const made = await societyFiles({ slug: society })
if (!made) {
  console.error(`There is no society ${society} in this book.`)
  process.exit(1)
}
try {
  await writeFiles(made.files, to)
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : fault)
  process.exit(1)
}
console.log(`${made.files.size} files of ${society} are in ${to}.`)
process.exit(0)
