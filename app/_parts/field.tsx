import { type ComponentProps, type ReactNode, useId } from 'react'

interface AroundField {
  label: ReactNode
  name: string
  hint?: ReactNode
  /** What is wrong with what was typed, in words, with a guess at what was meant. */
  wrong?: ReactNode
}

function useWiring({ hint, wrong }: Pick<AroundField, 'hint' | 'wrong'>) {
  const id = useId()
  const described = [hint && `${id}-hint`, wrong && `${id}-why`].filter(Boolean).join(' ')
  return {
    id,
    control: { id, 'aria-describedby': described || undefined, 'aria-invalid': wrong ? (true as const) : undefined },
  }
}

function Around({ id, label, hint, wrong, children }: Omit<AroundField, 'name'> & { id: string; children: ReactNode }) {
  return (
    <div className={wrong ? 'field wrong' : 'field'}>
      <label htmlFor={id}>{label}</label>
      {hint ? (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {children}
      {wrong ? (
        <p className="why" id={`${id}-why`}>
          {wrong}
        </p>
      ) : null}
    </div>
  )
}

/** One line to write on. */
export function Field({ label, hint, wrong, ...input }: AroundField & Omit<ComponentProps<'input'>, 'id' | 'name'>) {
  const { id, control } = useWiring({ hint, wrong })
  return (
    <Around id={id} label={label} hint={hint} wrong={wrong}>
      <input {...input} {...control} />
    </Around>
  )
}

/** Several lines. */
export function Area({ label, hint, wrong, ...area }: AroundField & Omit<ComponentProps<'textarea'>, 'id' | 'name'>) {
  const { id, control } = useWiring({ hint, wrong })
  return (
    <Around id={id} label={label} hint={hint} wrong={wrong}>
      <textarea {...area} {...control} />
    </Around>
  )
}

/** One of a list that is too long to lay out. */
export function Select({
  label,
  hint,
  wrong,
  children,
  ...select
}: AroundField & Omit<ComponentProps<'select'>, 'id' | 'name'>) {
  const { id, control } = useWiring({ hint, wrong })
  return (
    <Around id={id} label={label} hint={hint} wrong={wrong}>
      <select {...select} {...control}>
        {children}
      </select>
    </Around>
  )
}
