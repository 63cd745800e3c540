// Drawing by hairlines, as an engraver would: the paths behind the course, the hole and the match.

const toTenth = (n: number) => Math.round(n * 10) / 10

/** One engraved bar: five strokes, the middle one longest; a negative height hangs below the line. */
export function engravedBar(x: number, baseline: number, height: number, gap = 2.6): string {
  if (height === 0) return ''
  const way = height > 0 ? -1 : 1
  const size = Math.abs(height)
  return [-2, -1, 0, 1, 2]
    .map((stroke) => {
      const length = Math.max(1, size - Math.abs(stroke) * 0.9)
      return `M${toTenth(x + stroke * gap)} ${baseline}v${toTenth(way * length)}`
    })
    .join('')
}

/** Middle of each hole's place on a strip, with a breath between the nines. */
export function placesOnStrip(count: number, width: number, breath = 6): number[] {
  const nines = count > 9
  const step = (width - (nines ? breath : 0)) / count
  return Array.from({ length: count }, (_, i) => toTenth(step * (i + 0.5) + (nines && i >= 9 ? breath : 0)))
}

/** The ground line under a strip, broken between the nines. */
export function groundLine(count: number, width: number, y: number, breath = 6): string {
  if (count <= 9) return `M0 ${y}H${width}`
  const half = toTenth(((width - breath) / count) * 9)
  return `M0 ${y}H${half}M${toTenth(half + breath)} ${y}H${width}`
}

/** Fairway hachures from the tee to the green: a rise in the middle, a dip, and the green's own small rise. */
export function hachures(fromX: number, greenX: number, baseline: number, spacing = 2.8): string {
  const length = greenX - fromX
  let path = ''
  for (let x = greenX - 9; x > fromX + 8; x -= spacing) {
    const along = (x - fromX) / length
    const rise = 3 + 9.5 * Math.sin(Math.PI * Math.min(1, along / 0.86)) ** 1.4
    const green = 5.5 * Math.exp(-(((along - 0.93) / 0.045) ** 2))
    path += `M${toTenth(x)} ${baseline}v${toTenth(-Math.max(2, rise * (along < 0.86 ? 1 : 0.55) + green))}`
  }
  return path
}

export function flagPath(x: number, y: number, size = 12): string {
  return `M${toTenth(x)} ${toTenth(y)}l${size} ${toTenth(size * 0.4)}l${-size} ${toTenth(size * 0.42)}z`
}
