import { writeFlagRegistry } from './flag-registry.mjs'
import { runParts } from './run-parts.mjs'
import { parts, quickUnit } from './test-parts.mjs'

writeFlagRegistry()
const { types, style, imports, unused } = parts
process.exitCode = await runParts([types, style, imports, unused, quickUnit])
