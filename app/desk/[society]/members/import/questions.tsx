'use client'

import { Choice, Choices } from '@/app/_parts/choice'
import type { PartProps } from './part-props'

const GENDER = [
  ['men', 'All of them men; I change single ones below'],
  ['women', 'All of them women; I change single ones below'],
  ['each', 'I say it for each of them'],
] as const

const HANDICAP = [
  ['home-club', 'Handicap indexes from their home clubs'],
  ['society', 'Society handicaps: our own'],
] as const

/** What the whole file leaves open is one question, and stays on the screen with its answer. */
export function Questions({ preview, choices, onChange }: PartProps) {
  const { questions } = preview
  const open = (about: string) => questions.find((one) => one.about === about)?.sentence
  const names = open('names')
  const gender = open('gender') ?? (choices.gender === null ? null : 'Who plays from which tees?')
  const handicap = open('handicap') ?? (choices.handicap === null ? null : 'Which kind of handicap does the file have?')
  if (!names && !gender && !handicap) return null
  return (
    <section aria-labelledby="questions-h" className="import-questions">
      <h3 id="questions-h">
        {questions.length === 0
          ? 'About the whole file'
          : questions.length === 1
            ? 'One question'
            : `${questions.length} questions`}
      </h3>
      {names ? <p className="asked-for">{names}</p> : null}
      {gender ? (
        <Choices question={gender}>
          {GENDER.map(([value, words]) => (
            <Choice
              key={value}
              type="radio"
              name="import-gender"
              checked={choices.gender === value}
              onChange={() => onChange({ gender: value })}
            >
              {words}
            </Choice>
          ))}
        </Choices>
      ) : null}
      {handicap ? (
        <Choices question={handicap}>
          {HANDICAP.map(([value, words]) => (
            <Choice
              key={value}
              type="radio"
              name="import-handicap"
              checked={choices.handicap === value}
              onChange={() => onChange({ handicap: value })}
              hint={value === 'home-club' ? 'Whoever has a handicap in the member list keeps its kind.' : undefined}
            >
              {words}
            </Choice>
          ))}
        </Choices>
      ) : null}
    </section>
  )
}
