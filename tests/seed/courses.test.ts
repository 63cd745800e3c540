// Promise: the invented courses are made as real ones are, hole by hole.
import { describe, expect, it } from 'vitest'
import { cardFaults } from '@/lib/society/keep-course'
import { COURSE_DATA, courseOf } from '@/seed/courses'

const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0)
const nines = (values: readonly number[]) => [values.slice(0, 9), values.slice(9)]

/** Par of men and women, yards of white, yellow and red, ratings of the men's yellow and the women's red tee. */
const PUBLISHED = {
  'Aldermoss Park': [72, 73, 6425, 6119, 5385, [692, 125], [709, 125]],
  'Skerrowby Links': [70, 72, 6412, 6044, 5370, [698, 127], [717, 128]],
  'Hollinscar Down': [70, 72, 6181, 5873, 5214, [681, 121], [706, 123]],
  'Withenbrook Heath': [71, 72, 6338, 6022, 5322, [695, 127], [714, 127]],
  'Ravensgarth Moor': [69, 71, 5904, 5651, 5046, [678, 124], [699, 124]],
  'Pellmarsh Court': [72, 73, 6689, 6241, 5431, [704, 129], [717, 128]],
}

describe.each(COURSE_DATA.map((data) => [data.name, data] as const))('%s', (name, data) => {
  it('has the totals and ratings it is known by', () => {
    expect([
      sum(data.parMen),
      sum(data.parWomen),
      sum(data.white),
      sum(data.yellow),
      sum(data.red),
      data.ratings.yellowMen,
      data.ratings.redWomen,
    ]).toEqual(PUBLISHED[name as keyof typeof PUBLISHED])
    expect(
      cardFaults(courseOf(data).tees.map((tee) => ({ ...tee, holes: tee.holes.map((hole) => ({ ...hole })) }))),
    ).toEqual([])
  })

  it.each(['indexMen', 'indexWomen'] as const)(
    '%s: a permutation, odd on one nine, a third in every three holes',
    (which) => {
      const index = data[which]
      expect([...index].sort((a, b) => a - b)).toEqual(Array.from({ length: 18 }, (_, at) => at + 1))
      const [front = [], back = []] = nines(index)
      expect([front.length, back.length]).toEqual([9, 9])
      expect(new Set(front.map((one) => one % 2)).size).toBe(1)
      expect(new Set(back.map((one) => one % 2)).size).toBe(1)
      for (let from = 0; from < 18; from += 3)
        expect(
          index
            .slice(from, from + 3)
            .map((one) => Math.ceil(one / 6))
            .sort(),
        ).toEqual([1, 2, 3])
      expect([index.indexOf(1) % 9, index.indexOf(2) % 9].every((at) => at >= 3 && at <= 5)).toBe(true)
      expect(index.some((one, at) => one <= 6 && (index[at + 1] ?? 18) <= 6)).toBe(false)
    },
  )

  it('is longest from white and shortest from red on every hole, and plausible for its pars', () => {
    data.white.forEach((white, at) => {
      const [yellow, red] = [data.yellow[at]!, data.red[at]!]
      expect(white >= yellow && yellow >= red).toBe(true)
      const [least, most] = { 3: [120, 215], 4: [290, 450], 5: [450, 560] }[data.parMen[at]!] as [number, number]
      expect(yellow >= least && white <= most, `hole ${at + 1}: ${white}, ${yellow}`).toBe(true)
    })
  })
})
