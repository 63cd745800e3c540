import { createContext } from 'react'

/** The tees a player of the day may stand on, as a term names them; null where the course is not known. */
export const TeesOfDay = createContext<readonly string[] | null>(null)
