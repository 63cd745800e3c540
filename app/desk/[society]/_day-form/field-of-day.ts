import { createContext } from 'react'

/** Playing handicaps of those entered so far, by the name of the competition: what divisions are proposed from. */
export const FieldOfDay = createContext<Readonly<Record<string, readonly number[]>>>({})
