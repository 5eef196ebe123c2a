// Loaded into the process of the pages, before them.
import http from 'node:http'
import { frontDoor, patience } from './front-door.mjs'

// When the supervisor is killed, the pages do not live on and hold the port.
process.on('disconnect', () => process.exit(0))

const createServer = http.createServer

// The framework makes its server by this call, and has no setting for any of these.
http.createServer = (...given) => {
  const listener = given.find((one) => typeof one === 'function')
  const ownAddress = process.env.TURNBOOK_URL ?? ''
  const write = (line) => process.stdout.write(line)
  const server = createServer.call(http, patience, frontDoor(listener, { ownAddress, write }))
  server.maxConnections = patience.connections
  server.setTimeout(patience.idleTimeout)
  return server
}
