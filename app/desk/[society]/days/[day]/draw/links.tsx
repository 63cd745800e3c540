'use client'

import type { ReactNode } from 'react'
import Link from '@/app/_parts/link'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'
import { clockInWords } from '@/lib/boards/dates-in-words'
import type { GroupKey } from '@/lib/boards/desk-views'

interface Props {
  readonly renew: FormAction
  readonly groups: readonly GroupKey[]
  readonly children: ReactNode
}

/** The way into each group's card: a link behind the QR code, and a code to type. */
export function Links({ renew, groups, children }: Props) {
  return (
    <div className="scroll group-links" role="group" aria-label="Links and codes">
      <table>
        <caption className="unseen">Link and code of each group</caption>
        <thead>
          <tr>
            <th scope="col" className="lead-col">
              Time
            </th>
            <th scope="col">Group</th>
            <th scope="col">Code</th>
            <th scope="col">Card</th>
            <th scope="col">If the link got into wrong hands</th>
          </tr>
        </thead>
        <tbody>
          {groups.map((group) => (
            <tr key={group.id}>
              <td className="lead-col fig">{clockInWords(group.startTime)}</td>
              <th scope="row">{group.number}</th>
              <td className="fig code">{group.code}</td>
              <td>
                <Link href={`/card/${group.linkKey}`}>Open the card of group {group.number}</Link>
              </td>
              <td>
                <ActForm action={renew} label={`New link for group ${group.number}`} className="renew">
                  {children}
                  <input type="hidden" name="groupId" value={group.id} />
                  <Send kind="plain">New link and code for group {group.number}</Send>
                </ActForm>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
