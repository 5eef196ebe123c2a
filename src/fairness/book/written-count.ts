import type { Written } from '#squad/written'

/** How much of what was held is written down, and how. */
export type WrittenCount = {
  readonly held: number
  readonly written: number
  readonly asPlanned: number
  /** Enough for the policy to say anything. False when nothing was held. */
  readonly isEnough: boolean
}

export function countWritten(
  held: readonly { readonly written: Written }[],
  policy: { readonly writtenShareNeeded: number },
): WrittenCount {
  const written = held.filter((session) => session.written !== 'notWritten').length
  return {
    held: held.length,
    written,
    asPlanned: held.filter((session) => session.written === 'asPlanned').length,
    isEnough: written > 0 && written >= policy.writtenShareNeeded * held.length,
  }
}
