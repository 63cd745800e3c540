import { randomUUID } from 'node:crypto'
import { join } from 'node:path'

/** A name for the next book of a run, in the folder that goes with the run. */
export const nextFile = () => join(process.env.DAYBOOK_TEST_FOLDER!, `run-${randomUUID()}.db`)
