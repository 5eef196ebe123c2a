// Only what the oldest Node still reads may stand here: it has to live long enough to say that it is too old.
const [major, minor] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Turnbook needs Node 20.19 or newer; this is Node ${process.versions.node}.`)
  process.exit(1)
}

// A club of one's own instead of the demo.
if (process.argv.includes('--own-club')) process.env.TURNBOOK_DEMO = '0'

const { supervise } = await import('./supervise.mjs')
process.exit(await supervise())
