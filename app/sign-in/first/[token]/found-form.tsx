'use client'

import { useState } from 'react'
import { ActForm } from '@/app/desk/_form/act-form'
import type { FormAction } from '@/app/desk/_form/act-state'
import { Field, Send } from '@/app/desk/_form/field'

/** "Fernbrake Golf Society" is offered as "fernbrake". */
function partOf(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\b(golf(ing)?|society|club|the)\b/g, ' ')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40)
}

export function FoundForm({ action }: { readonly action: FormAction }) {
  const [name, setName] = useState('')
  const [slug, setSlug] = useState<string | null>(null)
  return (
    <ActForm action={action} label="Found your society" className="sheet-form">
      <div className="fields">
        <Field
          name="name"
          label="Name of the society"
          value={name}
          onChange={(event) => setName(event.target.value)}
          maxLength={80}
          required
        />
        <Field
          name="slug"
          label="Its part of the address"
          hint="Small letters, figures and hyphens. It stands in every link and stays."
          value={slug ?? partOf(name)}
          onChange={(event) => setSlug(event.target.value)}
          maxLength={40}
          required
        />
        <Field name="foundedYear" label="Founded in" hint="May stay empty." inputMode="numeric" maxLength={4} />
      </div>
      <div className="fields">
        <Field name="officer.name" label="Your name" autoComplete="name" maxLength={80} required />
        <Field name="officer.email" label="Your e-mail" type="email" autoComplete="username" maxLength={120} required />
        <Field
          name="officer.password"
          label="Password"
          type="password"
          autoComplete="new-password"
          hint="At least 12 characters."
          minLength={12}
          maxLength={128}
          required
        />
      </div>
      <p className="acts">
        <Send kind="first">Found the society</Send>
      </p>
    </ActForm>
  )
}
