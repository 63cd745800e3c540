import { type ComponentProps, type ReactNode, useId } from 'react'

type ChoiceProps = Omit<ComponentProps<'input'>, 'type'> & {
  type: 'radio' | 'checkbox'
  children: ReactNode
  hint?: ReactNode
}

/** One choice, laid out with its words; a list that fits on the page is never folded into a menu. */
export function Choice({ children, hint, ...input }: ChoiceProps) {
  return (
    <label className="choice">
      <input {...input} />
      <span>
        {children}
        {hint ? <span className="hint">{hint}</span> : null}
      </span>
    </label>
  )
}

/** A question and its choices, read out together. */
export function Choices({
  question,
  wrong,
  children,
}: {
  question: ReactNode
  wrong?: ReactNode
  children: ReactNode
}) {
  const id = useId()
  return (
    <fieldset className={wrong ? 'field wrong' : 'field'} aria-describedby={wrong ? `${id}-why` : undefined}>
      <legend>{question}</legend>
      <div>{children}</div>
      {wrong ? (
        <p className="why" id={`${id}-why`}>
          {wrong}
        </p>
      ) : null}
    </fieldset>
  )
}
