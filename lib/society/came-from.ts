// Where a request comes from, as the server or the proxy in front of it says; undefined when nobody says.

export function cameFrom(headers: Headers): string | undefined {
  return headers.get('x-forwarded-for')?.split(',')[0]?.trim() || headers.get('x-real-ip')?.trim() || undefined
}
