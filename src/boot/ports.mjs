import { createServer } from 'node:net'

/**
 * @param {number} port 0: any
 * @param {string} host
 * @returns {Promise<number | null>} the port, or null when another program has it.
 * @throws when the system refuses for another reason, for one a port below 1024.
 */
export function tryPort(port, host = '127.0.0.1') {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.once('error', (error) => (error.code === 'EADDRINUSE' ? resolve(null) : reject(error)))
    server.listen({ port, host, exclusive: true }, () => {
      const found = server.address().port
      server.close(() => resolve(found))
    })
  })
}
