import type { Written } from '#squad/written'

/** How much of what was held is written down, and how. */
export type WrittenCount = {
  readonly held: number
  readonly written: number
  readonly asPlanned: number
  /** Enough for the policy to say anything. False when nothing was held. */
  readonly isEnough: boolean
}

type Needed = { readonly writtenShareNeeded: number }

/** `held`: every session that was not cancelled. */
export function countWritten(held: readonly { readonly written: Written }[], policy: Needed): WrittenCount {
  return summedWritten(
    held.map(({ written }) => ({ written, sessions: 1 })),
    policy,
  )
}

/** The same from counts by way of writing. */
export function summedWritten(
  counts: readonly { readonly written: Written; readonly sessions: number }[],
  policy: Needed,
): WrittenCount {
  const sum = (of: (way: Written) => boolean) =>
    counts.reduce((total, { written, sessions }) => total + (of(written) ? sessions : 0), 0)
  const held = sum(() => true)
  const written = sum((way) => way !== 'notWritten')
  return {
    held,
    written,
    asPlanned: sum((way) => way === 'asPlanned'),
    isEnough: written > 0 && written >= policy.writtenShareNeeded * held,
  }
}
