import { runNamedParts } from './run-parts.mjs'

process.exitCode = await runNamedParts(process.argv.slice(2))
