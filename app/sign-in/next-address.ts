/** Only addresses of this desk: a link in a message must not send an officer elsewhere after signing in. */
export function nextAddress(next: string | null | undefined): string {
  return next && /^\/desk(\/[\w/?=&.-]*)?$/.test(next) ? next : '/desk'
}
