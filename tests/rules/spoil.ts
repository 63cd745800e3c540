// Spoils a day file in one or several places, from a seed: keys dropped, renamed or doubled, values of the wrong kind,
// figures out of all bounds, ids that point elsewhere, lists cut short, and keys that every object has by nature.
import type { Chance } from './reference/chance'

type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

const ODD_VALUES: readonly Json[] = [
  null,
  true,
  false,
  0,
  -1,
  1.5,
  1e308,
  -1e308,
  9007199254740992,
  2147483648,
  0.1,
  '',
  ' ',
  '0',
  '-1',
  'NaN',
  'Infinity',
  '-Infinity',
  '1e9',
  '0x12',
  '１８.４',
  '18,4',
  '+-2.1',
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'x',
  'X',
  '\u0000',
  '\uD800',
  '*',
  [],
  [[]],
  [null],
  {},
  { length: 18 },
  { toString: 1, valueOf: 1 },
]

/** Ids that mean something somewhere in the files that are spoilt. */
const IDS = [
  'p1',
  'p2',
  'p3',
  's1',
  's2',
  'yellow',
  'red',
  'haldane',
  'first',
  'cup',
  'medal',
  'match',
  'm1',
  'four-ball-par',
]

const ODD_KEYS = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  '',
  '0',
  'length',
  'hole ',
  'Id',
]

interface Spot {
  readonly holder: Json[] | { [key: string]: Json }
  readonly key: string
}

/** A place in the file, by walking down at random: shallow and deep places are both met. */
function spot(file: Json, chance: Chance): Spot {
  let holder = file as Spot['holder']
  for (;;) {
    const keys = Object.keys(holder)
    const key = chance.pick(keys.length === 0 ? ['none'] : keys)
    const inside = (holder as Record<string, Json>)[key]
    if (inside === null || typeof inside !== 'object' || Object.keys(inside).length === 0 || chance.oneIn(4)) {
      return { holder, key }
    }
    holder = inside
  }
}

/** Sets a key as JSON.parse would, so that "__proto__" is a key like any other. */
function put(holder: Spot['holder'], key: string, value: Json): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
}

export function spoil(file: Json, chance: Chance): void {
  if (file === null || typeof file !== 'object') return
  const { holder, key } = spot(file, chance)
  const record = holder as Record<string, Json>
  const value = record[key] ?? null
  switch (chance.between(1, 10)) {
    case 1:
      if (Array.isArray(holder)) holder.splice(Number(key), 1)
      else delete record[key]
      break
    case 2:
      if (!Array.isArray(holder)) {
        put(holder, chance.pick([...ODD_KEYS, key.toUpperCase(), `${key}s`, `${key} `]), value)
        if (chance.oneIn(2)) delete record[key]
      } else holder.push(structuredClone(value))
      break
    case 3:
      put(holder, key, structuredClone(chance.pick(ODD_VALUES)))
      break
    case 4:
      if (typeof value === 'number')
        put(holder, key, chance.pick([-value, value * 10, value + 0.5, value * 1e6, value + 1, value - 1]))
      else put(holder, key, structuredClone(chance.pick(ODD_VALUES)))
      break
    case 5:
      put(holder, key, chance.pick(IDS))
      break
    case 6: {
      const other = spot(file, chance)
      put(holder, key, structuredClone((other.holder as Record<string, Json>)[other.key] ?? null))
      break
    }
    case 7:
      if (Array.isArray(value)) value.splice(chance.between(0, value.length))
      else put(holder, key, JSON.stringify(value))
      break
    case 8:
      if (Array.isArray(value)) value.push(...structuredClone(value))
      else put(holder, key, [value])
      break
    case 9:
      if (Array.isArray(value)) value.reverse()
      else put(holder, key, { [key]: value })
      break
    default:
      if (typeof value === 'string')
        put(holder, key, chance.pick([`${value} `, value.toUpperCase(), value.repeat(300), value.slice(1)]))
      else if (!Array.isArray(holder)) put(holder, chance.pick(ODD_KEYS), structuredClone(chance.pick(ODD_VALUES)))
  }
}

export type { Json }
