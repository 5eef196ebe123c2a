import { randomUUID } from 'node:crypto'
import { isKnownHost } from './known-host.mjs'
import { maskedPath } from './masked-path.mjs'
import { bodyLimit, limitBody } from './request-body-limit.mjs'

/** How long a connection may take, and how many there may be. In milliseconds. */
export const patience = {
  /** For the headers of a request: they fit into one packet or two. */
  headersTimeout: 10_000,
  /** For a whole request: the largest file over a slow line. */
  requestTimeout: 120_000,
  connectionsCheckingInterval: 2_000,
  /** Without a byte in either direction. */
  idleTimeout: 120_000,
  connections: 2_000,
}

const lingerMilliseconds = 300
const yearAndMore = 63_072_000
const unlogged = /^\/(?:_next\/static|icons|pictures|api\/health$|api\/ready$)/
/** All that any page or door here answers to. */
const methods = new Set(['GET', 'HEAD', 'POST', 'OPTIONS'])
/** What only a proxy that we know of may say. */
const byProxy = ['x-forwarded-host', 'x-forwarded-proto', 'x-forwarded-port', 'forwarded']

/**
 * Stands before every request, whatever it asks for: gives it a number, turns away what was not meant for here or is
 * too much, and writes one line of what became of it.
 *
 * @param {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => unknown} next
 * @param {{ ownAddress: string, write: (line: string) => void }} settings
 *   ownAddress: TURNBOOK_URL; '' when there is none.
 */
export function frontDoor(next, { ownAddress, write }) {
  const isHttps = ownAddress.startsWith('https:')
  return (request, response) => {
    const id = randomUUID()
    request.headers['x-request-id'] = id
    response.setHeader('x-request-id', id)
    if (isHttps) response.setHeader('strict-transport-security', `max-age=${yearAndMore}; includeSubDomains`)
    noteEnd(request, response, { id, write })
    if (!methods.has(request.method))
      return turnAway(request, response, { status: 405, why: 'Nothing here answers to that.' })
    const hosts = [request.headers.host, request.headers['x-forwarded-host']]
    if (
      ownAddress &&
      !hosts.every((host, index) => (index > 0 && host === undefined) || isKnownHost(host, ownAddress))
    )
      return turnAway(request, response, { status: 421, why: 'This is not the address of this book.' })
    believeProxy(request, ownAddress)
    const tooMuch = () =>
      turnAway(request, response, {
        status: 413,
        why: 'This is more than can be sent here at once, and nothing of it was kept. A file can have 10 MB at most.',
      })
    if (limitBody(request, bodyLimit(request), tooMuch)) next(request, response)
  }
}

/** Everything behind this takes the address from these headers, so they say only what is known. */
function believeProxy({ headers }, ownAddress) {
  for (const name of byProxy) delete headers[name]
  // Who is nearest to us was named last, by the proxy in front; what stands before that anybody could have written.
  const nearest = ownAddress ? headers['x-forwarded-for']?.split(',').at(-1)?.trim() : undefined
  if (nearest) headers['x-forwarded-for'] = nearest
  else delete headers['x-forwarded-for']
  if (!ownAddress) return
  const { host, protocol } = new URL(ownAddress)
  headers['x-forwarded-host'] = host
  headers['x-forwarded-proto'] = protocol.slice(0, -1)
}

function turnAway(request, response, { status, why }) {
  // The page may be answering already, or may never have been told.
  if (response.headersSent) return request.socket?.destroy()
  response.writeHead(status, {
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
    connection: 'close',
  })
  response.end(`${why}\n`)
}

function noteEnd(request, response, { id, write }) {
  // Taken now: a request that was given up by its page has none any more.
  const { method, url = '/', socket } = request
  const start = performance.now()
  response.once('finish', () => {
    // Answered, and still it goes on sending: a moment for the answer to arrive, then no more is heard.
    if (!request.complete) setTimeout(() => socket.destroy(), lingerMilliseconds).unref()
  })
  if (unlogged.test(url)) return
  response.once('close', () => {
    const line = {
      level: 30,
      at: new Date().toISOString(),
      requestId: id,
      method: /^[A-Z]{1,10}$/.test(method ?? '') ? method : '?',
      path: maskedPath(url),
      status: response.writableFinished || response.headersSent ? response.statusCode : 0,
      ms: Math.round(performance.now() - start),
      event: 'request',
    }
    write(`${JSON.stringify(line)}\n`)
  })
}
