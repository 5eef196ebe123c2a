import { describe, expect, it } from 'vitest'
import { fileSizeProblem } from '#common/file-size'

describe('the size of a file', () => {
  it.each([0, 1, 10 * 1024 * 1024])('of %d bytes is taken', (bytes) => {
    expect(fileSizeProblem(bytes)).toBeNull()
  })

  it('above ten megabytes is told, with what to do', () => {
    expect(fileSizeProblem(11 * 1024 * 1024)?.message).toBe(
      'The file has 11.0 MB; at most 10 MB can be taken. Split it by term or squad.',
    )
  })
})
