import { Choice } from '@/app/desk/_form/field'
import type { CardReturn } from '@/lib/boards/returns-view'

/** The usual paper bears both signatures: one key ticks what is still open, a second press takes it back. */
export function signBoth(form: HTMLFormElement | null) {
  const boxes = [...(form?.querySelectorAll<HTMLInputElement>('input[type="checkbox"][name^="signed-"]') ?? [])]
  const on = boxes.some((box) => !box.checked)
  for (const box of boxes) box.checked = on
}

/**
 * A signature on paper is as good as one on a phone; what is signed already is not asked again. The paper stays signed
 * while its figures are entered anew, so its signatures are sent along with them.
 */
export function PaperSigned({ card }: { readonly card: CardReturn }) {
  const signed = card.signatures.filter((one) => one.covers)
  const roles = ['player', 'marker'] as const
  const open = roles.filter((role) => !signed.some((one) => one.role === role))
  const onPaper = roles.filter((role) => signed.some((one) => one.role === role && one.onPaper))
  return (
    <>
      {onPaper.map((role) => (
        <input key={role} type="hidden" name={`signed-${role}`} value="yes" />
      ))}
      {open.length === 0 ? null : (
        <fieldset className="paper-signed">
          <legend>Signed on paper by</legend>
          {open.map((role) => (
            <Choice key={role} type="checkbox" name={`signed-${role}`}>
              {role === 'player'
                ? `the player, ${card.player}`
                : `the marker${card.marker ? `, ${card.marker.name}` : ''}`}
            </Choice>
          ))}
        </fieldset>
      )}
    </>
  )
}
