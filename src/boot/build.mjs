import { existsSync, rmSync } from 'node:fs'
import { inProject } from './places.mjs'
import { runQuietly } from './run-quietly.mjs'
import { hashOf, readStamp, writeStamp } from './stamp.mjs'

const stampFile = inProject('.next/turnbook-build')

const sources = [
  'src',
  'public',
  'prisma/schema.prisma',
  'next.config.js',
  'postcss.config.mjs',
  'tsconfig.json',
]
const notOfThePages = ['src/boot', 'src/cli', 'src/data/generated']

const wantedStamp = () => hashOf([...sources, 'package-lock.json'], { except: notOfThePages })

export const buildIsStale = () =>
  !existsSync(inProject('.next/BUILD_ID')) || readStamp(stampFile) !== wantedStamp()

/** Builds the pages. A build that is cut short leaves no stamp, so it is made again. @param {{ signal?: AbortSignal }} how */
export async function buildPages({ signal }) {
  const stamp = wantedStamp()
  rmSync(stampFile, { force: true })
  const env = { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' }
  const failure = 'The pages could not be built:'
  await runQuietly(process.execPath, [inProject('node_modules/next/dist/bin/next'), 'build'], {
    env,
    signal,
    failure,
  })
  writeStamp(stampFile, stamp)
}
