import 'server-only'
import { zoneOfInstallation } from '@/lib/store/settings'

/** The zone whose clock hangs on the societies' wall: times on public pages are told by it, wherever the reader is. */
export function houseZone(): string {
  return zoneOfInstallation()
}
