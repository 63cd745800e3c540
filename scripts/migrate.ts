import { bookFile } from '../lib/store/client'
import { migrate } from '../lib/store/migrate'

const applied = migrate(bookFile())
console.log(applied.length === 0 ? 'The book is up to date.' : `Applied ${applied.join(', ')}.`)
