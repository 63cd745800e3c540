import type { Glance } from '@/app/desk/_frame/day-glance'

/** The day as this form saw it: its id, the version the change is made on, and a glance to tell what moved. */
export function SeenDay({
  id,
  version,
  glance,
}: {
  readonly id: string
  readonly version: number
  readonly glance: Glance
}) {
  return (
    <>
      <input type="hidden" name="dayId" value={id} />
      <input type="hidden" name="version" value={version} />
      <input type="hidden" name="seen" value={JSON.stringify(glance)} />
    </>
  )
}
