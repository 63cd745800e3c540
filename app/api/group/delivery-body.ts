// The body of a delivery, with a limit: one phone's scores of a day are far below it.

const MOST_BYTES = 128 * 1024

export async function bodyOf(request: Request): Promise<{ readonly json: unknown } | 'too-long' | 'not-json'> {
  if (Number(request.headers.get('content-length') ?? 0) > MOST_BYTES) return 'too-long'
  const bytes = await request.arrayBuffer()
  if (bytes.byteLength > MOST_BYTES) return 'too-long'
  try {
    return { json: JSON.parse(new TextDecoder().decode(bytes)) }
  } catch {
    return 'not-json'
  }
}
