import type { Problem } from '#common/problem'

const megabyte = 1024 * 1024
const mostMegabytes = 10

/** Why a file of so many bytes is not taken in, or null. */
export function fileSizeProblem(bytes: number): Problem | null {
  return bytes > mostMegabytes * megabyte
    ? {
        path: 'file',
        message: `The file has ${(bytes / megabyte).toFixed(1)} MB; at most ${mostMegabytes} MB can be taken. Split it by term or squad.`,
      }
    : null
}
