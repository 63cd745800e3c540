'use client'

import type { ReactNode } from 'react'
import { useFormNow } from '@/app/desk/_form/act-form'
import { Send } from '@/app/desk/_form/field'

interface Props {
  readonly many: number
  /** Why the handicaps cannot be frozen yet. */
  readonly why: string | false
  readonly children?: ReactNode
}

/** Freezes; and where the allowance was chosen for another size of field, asks once before it does. */
export function FreezeButtons({ many, why, children }: Props) {
  const { refused } = useFormNow()
  const isAsked = refused?.code === 'field-size'
  return (
    <p className="acts">
      {isAsked ? (
        <Send kind="first" why={why} name="fieldSizeSeen" value={String(many)}>
          Freeze {many} handicaps with this allowance
        </Send>
      ) : (
        <Send kind="first" why={why}>
          Freeze {many} handicaps
        </Send>
      )}
      {children}
    </p>
  )
}
