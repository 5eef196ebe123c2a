import type { Instrumentation } from 'next'

/** Once, as the server of the pages starts. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return
  const { quietConsole } = await import('#server/quiet-console')
  quietConsole()
}

/** A page, route or action that threw. What was asked for is told by its route, never by its address. */
export const onRequestError: Instrumentation.onRequestError = async (error, request, context) => {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return
  const { logFault } = await import('#server/log')
  const requestId = request.headers['x-request-id']
  logFault('request failed', error, {
    route: context.routePath,
    kind: context.routeType,
    ...(typeof requestId === 'string' && { requestId }),
  })
}
