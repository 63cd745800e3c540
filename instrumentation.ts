// Next calls these when a server of ours starts, and when an answer of it fails.

export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs' || process.env.NEXT_PHASE === 'phase-production-build') return
  const { beginServing } = await import('./lib/society/serving')
  beginServing()
}

export async function onRequestError(cause: unknown, _request: unknown, context: { routePath: string }): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return
  const { tellFault } = await import('./lib/society/serving')
  tellFault(`answering ${context.routePath}`, cause)
}
