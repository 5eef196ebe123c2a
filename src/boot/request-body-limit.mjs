/**
 * How much of a body is taken, by the beginning of the address. Anything else is a page with a form, which may carry a
 * file. A little more than each door's own limit, so that the door can say it in its own words.
 */
const limits = [
  ['/api/pitch/', 8_500_000],
  ['/api/', 100_000],
  ['/', 12_600_000],
]

/** @param {{ method?: string, url?: string }} request @returns {number} in bytes */
export function bodyLimit({ method = 'GET', url = '/' }) {
  if (method === 'GET' || method === 'HEAD') return 0
  return limits.find(([beginning]) => url.startsWith(beginning))?.[1] ?? 0
}

/**
 * Lets no more of a body in than the limit. What is longer, whether it says so or simply does not end, is heard no further.
 *
 * @param {import('node:http').IncomingMessage} request
 * @param {number} most in bytes
 * @param {() => void} onTooMuch once
 * @returns {boolean} false: it says itself that it is too long, and nothing of it is to be read.
 */
export function limitBody(request, most, onTooMuch) {
  const said = Number(request.headers['content-length'] ?? 0)
  if (said > most) {
    onTooMuch()
    return false
  }
  let taken = 0
  let isOver = false
  // Not by listening: whoever listens makes the body flow before the page is there to read it.
  const push = request.push.bind(request)
  request.push = (chunk, ...rest) => {
    if (isOver) return true
    taken += chunk?.length ?? 0
    if (taken <= most) return push(chunk, ...rest)
    isOver = true
    onTooMuch()
    return true
  }
  return true
}
