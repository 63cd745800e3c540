import type { ReactNode } from 'react'
import { Notice } from '@/app/_parts/notice'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import type { TeamMatesPaired } from '@/lib/boards/team-mates'

interface Props {
  readonly paired: TeamMatesPaired
  readonly action: FormAction
  readonly children: ReactNode
}

/** Team-mates who meet in a match, and the button that pairs the groups anew, team against team. */
export function TeamMates({ paired, action, children }: Props) {
  return (
    <Notice kind="differs" word="Team-mates paired">
      {paired.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>
        The teams were made after the matches. Pairing anew sets team against team inside the groups
        {paired.mixedSides > 0 ? '; a side of two teams is changed under its sides first' : ''}. What was decided at the
        desk stays.
      </p>
      <ActForm action={action} label={`Pair ${paired.name} from the draw`}>
        {children}
        <input type="hidden" name="competitionId" value={paired.competitionId} />
        <p className="acts">
          <Send name="then" value="make">
            Pair {paired.name} from the draw
          </Send>
        </p>
      </ActForm>
    </Notice>
  )
}
