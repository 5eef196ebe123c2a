import { execFileSync, spawn } from 'node:child_process'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'

function outputOf(work: string): string {
  const script = `
    import { step } from ${JSON.stringify(resolve('src/boot/say.mjs'))}
    const pause = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds))
    await step('boiling the kettle', async () => { ${work} }).catch(() => {})`
  return execFileSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' })
}

describe('a step', () => {
  it('of less than a second is done in silence', () => {
    expect(outputOf('await pause(200)')).toBe('')
  })

  it('of more says what it does and, in the end, how long it took', () => {
    expect(outputOf('await pause(1300)')).toMatch(
      /^… boiling the kettle, 1\.0 s\n✓ boiling the kettle, 1\.[3-9] s\n$/,
    )
  })

  it('that fails late says so', () => {
    expect(outputOf("await pause(1300); throw new Error('dry')")).toMatch(
      /\n✗ boiling the kettle, 1\.[3-9] s\n$/,
    )
  })
})

describe('what is said', () => {
  it('to nobody any more is no reason to end', async () => {
    const script = `
      import { say } from ${JSON.stringify(resolve('src/boot/say.mjs'))}
      const timer = setInterval(() => say('still here'), 20)
      setTimeout(() => { clearInterval(timer); process.exitCode = 7 }, 600)`
    const child = spawn(process.execPath, ['--input-type=module', '--eval', script], {
      stdio: ['ignore', 'pipe', 'ignore'],
    })
    child.stdout.once('data', () => child.stdout.destroy())
    const exitCode = await new Promise((done) => child.once('exit', done))
    expect(exitCode).toBe(7)
  })
})
