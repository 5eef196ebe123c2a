// Loaded into the process of the pages: when the supervisor is killed, the pages do not live on and hold the port.
process.on('disconnect', () => process.exit(0))
