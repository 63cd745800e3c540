import 'server-only'
import { randomBytes, randomInt } from 'node:crypto'

/** Short words of the heath and the hedge: easy to read out, to spell and to type. */
const CODE_WORDS = (
  'alder aspen beech birch bramble briar broom burn clover copse crag dale dove fern finch flint glen gorse grove ' +
  'hare hazel heath heron holly ivy juniper kestrel lark larch linnet maple marsh meadow moss oak otter pine plover ' +
  'reed robin rowan sedge sorrel swift teal thorn thrush vale willow wren yarrow'
).split(' ')

/** 192 random bits: an address nobody comes upon by trying. */
export const newLinkKey = (): string => randomBytes(24).toString('base64url')

/**
 * Short, to be typed from paper: "fern 560412", one of 52 million. With the wrong tries that are let through in a day,
 * somebody who guesses hits one of thirty groups once in three months. Whoever draws one looks whether it is free.
 */
export const drawnCode = (): string =>
  `${CODE_WORDS[randomInt(CODE_WORDS.length)]!} ${String(randomInt(1_000_000)).padStart(6, '0')}`
