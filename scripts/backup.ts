// One checked copy of the whole book, also while a server works with it: npm run backup
import { copiesFolder, makeCopy } from '../lib/store/copies'
import { bookOrStop } from './settings-or-stop'

bookOrStop()
const copy = await makeCopy('asked', new Date())
console.log(`${copiesFolder()}/${copy.fileName}: ${copy.bytes} bytes, checked, sha-256 ${copy.sha256}`)
