import { runParts } from './run-parts.mjs'

process.exitCode = await runParts(process.argv.slice(2))
