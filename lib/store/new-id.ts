import { randomUUID } from 'node:crypto'

/** A fresh id, of the type that its place asks for. */
export const newId = <Id extends string>(): Id => randomUUID() as string as Id
