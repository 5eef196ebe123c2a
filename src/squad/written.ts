/** How a session was written down. As planned is even by construction; not written says nothing. */
export const writtenWays = ['tapped', 'roundByRound', 'asPlanned', 'typedLater', 'notWritten'] as const
export type Written = (typeof writtenWays)[number]

/** The ways in which a session can have been written down. */
export const waysWritten = writtenWays.filter((way) => way !== 'notWritten')
