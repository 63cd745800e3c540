import 'server-only'
import { hashPassword } from 'better-auth/crypto'

/** Slow on purpose: never inside a transaction. */
export const hashOfPassword = (password: string): Promise<string> => hashPassword(password)
