// Where this installation is reached from outside: what a QR code on paper has to say.

import { settingsOfInstallation } from '@/lib/store/settings'

/** The address that was set, or the one the request came to. */
export function ownAddress(headers: Headers): string {
  const set = settingsOfInstallation().DAYBOOK_ORIGIN
  if (set) return set
  const host = headers.get('x-forwarded-host') ?? headers.get('host') ?? 'localhost'
  return `${headers.get('x-forwarded-proto') ?? 'http'}://${host}`
}

/** Does the address mean, on every machine, that machine itself? */
export function isThisMachine(address: string): boolean {
  return /^(localhost|.+\.localhost|127(\.\d+){3}|\[::1\])$/.test(new URL(address).hostname)
}
