import { runParts } from './run-parts.mjs'

process.exitCode = await runParts(['types', 'style', 'imports', 'unused', 'unit'])
