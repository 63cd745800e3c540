// A body is counted while it comes in: what its sender says of its length may be wrong, or missing.

/** The bytes of a body of `most` bytes at the longest; what is longer is not read to the end. */
export async function readAtMost(request: Request, most: number): Promise<Uint8Array<ArrayBuffer> | 'too-long'> {
  if (Number(request.headers.get('content-length') ?? 0) > most) return 'too-long'
  if (!request.body) return new Uint8Array()
  const reader = request.body.getReader()
  const pieces: Uint8Array[] = []
  let length = 0
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    length += read.value.byteLength
    if (length > most) {
      await reader.cancel()
      return 'too-long'
    }
    pieces.push(read.value)
  }
  const whole = new Uint8Array(length)
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.byteLength
  }
  return whole
}
