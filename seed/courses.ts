// Six invented courses. Checked by tests/seed: each stroke index a permutation, odd on one nine and even on the other,
// one of each third in every three holes, the two hardest in the middle of their nines, no two of six or less in a row;
// white at least yellow at least red on every hole.

import type { KeepCourse } from '@/lib/facts/commands'

interface CourseData {
  readonly name: string
  readonly place: string
  readonly parMen: readonly number[]
  readonly parWomen: readonly number[]
  readonly white: readonly number[]
  readonly yellow: readonly number[]
  readonly red: readonly number[]
  readonly indexMen: readonly number[]
  readonly indexWomen: readonly number[]
  /** Course rating in tenths and slope rating of each set. */
  readonly ratings: {
    readonly whiteMen: readonly [number, number]
    readonly yellowMen: readonly [number, number]
    readonly redMen: readonly [number, number]
    readonly yellowWomen: readonly [number, number]
    readonly redWomen: readonly [number, number]
  }
}

export const COURSE_DATA: readonly CourseData[] = [
  {
    name: 'Aldermoss Park',
    place: 'in the park',
    parMen: [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 4, 5, 4, 3, 4, 5],
    parWomen: [4, 5, 3, 4, 4, 5, 4, 3, 4, 4, 4, 3, 5, 5, 4, 3, 4, 5],
    white: [364, 498, 161, 408, 339, 521, 374, 176, 387, 351, 394, 146, 429, 486, 358, 188, 333, 512],
    yellow: [348, 479, 146, 389, 326, 502, 355, 162, 371, 337, 377, 134, 408, 468, 339, 171, 318, 489],
    red: [312, 428, 127, 338, 281, 439, 309, 133, 331, 298, 329, 112, 392, 417, 291, 142, 274, 432],
    indexMen: [5, 11, 17, 1, 13, 7, 9, 15, 3, 10, 4, 18, 2, 14, 8, 12, 16, 6],
    indexWomen: [7, 3, 15, 9, 17, 1, 11, 13, 5, 12, 6, 16, 14, 2, 8, 10, 18, 4],
    ratings: {
      whiteMen: [706, 128],
      yellowMen: [692, 125],
      redMen: [659, 116],
      yellowWomen: [748, 132],
      redWomen: [709, 125],
    },
  },
  {
    name: 'Skerrowby Links',
    place: 'by the sea',
    parMen: [4, 4, 3, 4, 5, 4, 3, 4, 4, 4, 3, 4, 4, 5, 4, 4, 3, 4],
    parWomen: [4, 4, 3, 5, 5, 4, 3, 4, 4, 4, 3, 5, 4, 5, 4, 4, 3, 4],
    white: [371, 402, 168, 431, 509, 338, 201, 383, 356, 399, 152, 424, 441, 533, 374, 329, 184, 417],
    yellow: [352, 384, 151, 406, 487, 324, 178, 364, 337, 379, 138, 402, 417, 508, 352, 311, 163, 391],
    red: [311, 342, 122, 396, 431, 287, 143, 323, 301, 338, 116, 388, 357, 448, 312, 274, 132, 349],
    indexMen: [8, 4, 16, 2, 12, 14, 10, 6, 18, 3, 17, 7, 1, 11, 13, 15, 9, 5],
    indexWomen: [10, 4, 18, 12, 2, 14, 16, 6, 8, 5, 15, 9, 1, 7, 13, 17, 11, 3],
    ratings: {
      whiteMen: [713, 131],
      yellowMen: [698, 127],
      redMen: [666, 119],
      yellowWomen: [754, 135],
      redWomen: [717, 128],
    },
  },
  {
    name: 'Hollinscar Down',
    place: 'on the chalk downs',
    parMen: [4, 3, 4, 4, 3, 4, 4, 4, 5, 4, 4, 4, 3, 5, 4, 3, 4, 4],
    parWomen: [4, 3, 5, 4, 3, 4, 4, 4, 5, 4, 4, 4, 3, 5, 4, 3, 4, 5],
    white: [409, 176, 423, 322, 141, 392, 327, 401, 493, 338, 364, 358, 192, 478, 406, 151, 390, 420],
    yellow: [400, 155, 407, 309, 128, 383, 307, 387, 462, 319, 344, 341, 183, 469, 373, 142, 357, 407],
    red: [307, 119, 399, 283, 114, 329, 275, 343, 444, 274, 314, 278, 131, 424, 318, 120, 343, 399],
    indexMen: [3, 13, 7, 17, 9, 1, 15, 5, 11, 8, 6, 16, 10, 18, 2, 12, 14, 4],
    indexWomen: [3, 9, 17, 7, 13, 1, 15, 5, 11, 12, 14, 6, 10, 18, 2, 8, 4, 16],
    ratings: {
      whiteMen: [695, 124],
      yellowMen: [681, 121],
      redMen: [649, 113],
      yellowWomen: [744, 129],
      redWomen: [706, 123],
    },
  },
  {
    name: 'Withenbrook Heath',
    place: 'on the heath',
    parMen: [5, 4, 4, 4, 4, 3, 5, 4, 3, 4, 4, 3, 4, 4, 4, 5, 3, 4],
    parWomen: [5, 4, 5, 4, 4, 3, 5, 4, 3, 4, 4, 3, 4, 4, 4, 5, 3, 4],
    white: [513, 346, 425, 351, 412, 183, 540, 339, 159, 330, 327, 145, 402, 408, 417, 534, 164, 343],
    yellow: [504, 327, 408, 334, 396, 163, 531, 311, 150, 321, 316, 129, 377, 391, 398, 517, 133, 316],
    red: [452, 299, 400, 320, 306, 149, 452, 297, 135, 298, 302, 115, 308, 315, 311, 442, 119, 302],
    indexMen: [7, 17, 5, 15, 1, 9, 3, 13, 11, 18, 6, 10, 14, 2, 12, 4, 16, 8],
    indexWomen: [5, 9, 17, 1, 13, 7, 3, 11, 15, 4, 12, 16, 8, 2, 14, 6, 10, 18],
    ratings: {
      whiteMen: [709, 130],
      yellowMen: [695, 127],
      redMen: [663, 119],
      yellowWomen: [752, 133],
      redWomen: [714, 127],
    },
  },
  {
    name: 'Ravensgarth Moor',
    place: 'in the hills',
    parMen: [4, 3, 5, 3, 4, 4, 3, 4, 4, 4, 4, 4, 3, 4, 4, 4, 3, 5],
    parWomen: [4, 3, 5, 3, 4, 4, 3, 4, 5, 4, 4, 4, 3, 4, 5, 4, 3, 5],
    white: [401, 144, 533, 194, 334, 390, 138, 355, 440, 350, 333, 377, 154, 364, 431, 324, 147, 495],
    yellow: [383, 134, 524, 185, 311, 377, 129, 346, 431, 333, 308, 362, 132, 342, 415, 315, 138, 486],
    red: [291, 119, 452, 152, 297, 293, 115, 325, 400, 315, 294, 332, 118, 310, 400, 293, 124, 416],
    indexMen: [8, 14, 4, 12, 16, 2, 18, 10, 6, 7, 15, 5, 13, 9, 1, 17, 11, 3],
    indexWomen: [16, 10, 6, 8, 18, 2, 12, 4, 14, 9, 15, 3, 7, 1, 17, 5, 13, 11],
    ratings: {
      whiteMen: [692, 127],
      yellowMen: [678, 124],
      redMen: [646, 116],
      yellowWomen: [737, 130],
      redWomen: [699, 124],
    },
  },
  {
    name: 'Pellmarsh Court',
    place: 'by the marsh',
    parMen: [5, 4, 3, 4, 5, 3, 4, 4, 4, 5, 3, 4, 4, 3, 5, 4, 4, 4],
    parWomen: [5, 4, 3, 4, 5, 3, 4, 5, 4, 5, 3, 4, 4, 3, 5, 4, 4, 4],
    white: [492, 421, 187, 369, 513, 162, 411, 429, 396, 538, 182, 400, 347, 167, 548, 419, 370, 338],
    yellow: [462, 400, 171, 350, 500, 127, 386, 406, 369, 506, 150, 387, 326, 141, 519, 388, 348, 305],
    red: [448, 304, 151, 336, 430, 113, 280, 397, 335, 452, 136, 306, 284, 116, 452, 308, 313, 270],
    indexMen: [17, 3, 11, 9, 1, 13, 7, 15, 5, 8, 14, 4, 18, 12, 2, 10, 6, 16],
    indexWomen: [5, 15, 7, 1, 17, 11, 13, 9, 3, 10, 14, 4, 18, 12, 2, 8, 6, 16],
    ratings: {
      whiteMen: [718, 132],
      yellowMen: [704, 129],
      redMen: [672, 121],
      yellowWomen: [755, 134],
      redWomen: [717, 128],
    },
  },
]

export function courseOf(data: CourseData): KeepCourse {
  const tee = (
    name: string,
    gender: 'men' | 'women',
    [courseRatingTenths, slopeRating]: readonly [number, number],
    yards: readonly number[],
  ) => ({
    name,
    gender,
    courseRatingTenths,
    slopeRating,
    holes: yards.map((length, at) => ({
      hole: at + 1,
      par: (gender === 'men' ? data.parMen : data.parWomen)[at]!,
      strokeIndex: (gender === 'men' ? data.indexMen : data.indexWomen)[at]!,
      yards: length,
    })),
  })
  return {
    name: data.name,
    place: data.place,
    tees: [
      tee('White', 'men', data.ratings.whiteMen, data.white),
      tee('Yellow', 'men', data.ratings.yellowMen, data.yellow),
      tee('Red', 'men', data.ratings.redMen, data.red),
      tee('Yellow', 'women', data.ratings.yellowWomen, data.yellow),
      tee('Red', 'women', data.ratings.redWomen, data.red),
    ],
  }
}
