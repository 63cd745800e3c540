import { Choice } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'

/** The usual paper bears both signatures: one key ticks what is still open, a second press takes it back. */
export function signBoth(form: HTMLFormElement | null) {
  const boxes = [...(form?.querySelectorAll<HTMLInputElement>('input[name^="signed-"]') ?? [])]
  const on = boxes.some((box) => !box.checked)
  for (const box of boxes) box.checked = on
}

/** A signature on paper is as good as one on a phone; what is signed already is not asked again. */
export function PaperSigned({ card }: { readonly card: CardReturn }) {
  const open = (['player', 'marker'] as const).filter(
    (role) => !card.signatures.some((one) => one.role === role && one.covers),
  )
  if (open.length === 0) return null
  return (
    <fieldset className="paper-signed">
      <legend>On the paper stands the signature of</legend>
      {open.map((role) => (
        <Choice key={role} type="checkbox" name={`signed-${role}`}>
          {role === 'player' ? card.name : (card.marker?.name ?? 'the marker')}, {role}
        </Choice>
      ))}
    </fieldset>
  )
}
