import { CouldNot } from '#cli/could-not'
import { runCommand } from '#cli/run-command'

const faultExitCode = 1

try {
  process.exitCode = await runCommand(process.argv.slice(2), {
    input: process.stdin,
    output: process.stdout,
    errors: process.stderr,
  })
} catch (error) {
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error)
  process.stderr.write(error instanceof CouldNot ? `${error.message}\n` : `turnbook has a fault: ${text}\n`)
  process.exitCode = faultExitCode
}
