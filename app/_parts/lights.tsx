'use client'

import { useId, useSyncExternalStore } from 'react'
import { LIGHT_KEPT_AS } from './light-kept'

const CHOICES = [
  { value: 'system', words: 'as this device' },
  { value: 'light', words: 'light' },
  { value: 'dark', words: 'dark' },
] as const
type Light = (typeof CHOICES)[number]['value']

function chosenLight(): Light {
  const set = document.documentElement.dataset.theme
  return set === 'light' || set === 'dark' ? set : 'system'
}

function onChange(changed: () => void) {
  const observer = new MutationObserver(changed)
  observer.observe(document.documentElement, { attributeFilter: ['data-theme'] })
  return () => observer.disconnect()
}

function choose(light: Light) {
  if (light === 'system') delete document.documentElement.dataset.theme
  else document.documentElement.dataset.theme = light
  try {
    if (light === 'system') localStorage.removeItem(LIGHT_KEPT_AS)
    else localStorage.setItem(LIGHT_KEPT_AS, light)
  } catch {
    // Storage may be forbidden on this device: the light then holds for this page only.
  }
}

/** Light or dark, kept on this device and told to nobody. */
export function Lights() {
  const name = useId()
  const light = useSyncExternalStore<Light>(onChange, chosenLight, () => 'system')
  return (
    <fieldset className="lights">
      <legend className="unseen">Light of the page</legend>
      {CHOICES.map((choice) => (
        <label key={choice.value} className="choice">
          <input
            type="radio"
            name={name}
            value={choice.value}
            checked={light === choice.value}
            onChange={() => choose(choice.value)}
          />
          <span>{choice.words}</span>
        </label>
      ))}
    </fieldset>
  )
}
