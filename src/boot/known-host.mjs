const loopback = new Set(['localhost', '127.0.0.1', '[::1]'])

/**
 * Whether a request was meant for this installation, when it is told its address: a link made from another name would
 * lead a family elsewhere. Who asks this machine by itself, as a proxy or a health check does, is let in.
 *
 * @param {string | undefined} sent a Host or X-Forwarded-Host header
 * @param {string} ownAddress as in TURNBOOK_URL
 */
export function isKnownHost(sent, ownAddress) {
  if (!sent || !URL.canParse(`http://${sent}`)) return false
  const { hostname, username, pathname, search } = new URL(`http://${sent}`)
  if (username !== '' || pathname !== '/' || search !== '') return false
  const own = new URL(ownAddress)
  return (
    loopback.has(hostname) ||
    sent.toLowerCase() === own.host ||
    sent.toLowerCase() === `${own.hostname}:${portOf(own)}`
  )
}

function portOf({ protocol, port }) {
  return port || (protocol === 'https:' ? '443' : '80')
}
