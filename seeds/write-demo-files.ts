import { writeFileSync } from 'node:fs'
import { demoFiles } from './demo-files'

/** Writes the files beside the demo club anew, after a change of the club. */
for (const [name, bytes] of demoFiles()) {
  writeFileSync(new URL(name, import.meta.url), bytes)
  process.stdout.write(`${name}: ${bytes.length} bytes\n`)
}
