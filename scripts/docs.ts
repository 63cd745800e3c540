// Remakes the pages of docs/ that are made from the code.
import { writeFileSync } from 'node:fs'
import { exportPage } from './export-page'
import { licencesPage } from './licences-page'
import { registerPage } from './register-page'

const PAGES = { 'register.md': registerPage, 'export.md': exportPage, 'licences.md': licencesPage }

for (const [name, page] of Object.entries(PAGES)) {
  writeFileSync(`docs/${name}`, page())
  console.log(`docs/${name} is made anew.`)
}
