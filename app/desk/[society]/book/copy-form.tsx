'use client'

import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Send } from '@/app/desk/_form/field'

export function CopyForm({ action }: { readonly action: FormAction }) {
  return (
    <ActForm action={action} label="Copy the book">
      <p className="acts after">
        <Send>Make a copy now</Send>
      </p>
    </ActForm>
  )
}
