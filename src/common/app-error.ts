export type AppErrorCode =
  /** Nobody is signed in. */
  | 'notSignedIn'
  /** Signed in, but this is not for the viewer; pages answer it like notFound so that ids cannot be guessed. */
  | 'notAllowed'
  /** No such thing in the viewer's club. */
  | 'notFound'
  /** The club has no season yet, and what was asked for lies in one. */
  | 'noSeason'
  /** Somebody else wrote the same thing meanwhile. */
  | 'conflict'

/** A request that cannot go on. The text is for the log; people read the sentence their page makes of the code. */
export class AppError extends Error {
  constructor(
    readonly code: AppErrorCode,
    logText: string,
  ) {
    super(logText)
    this.name = 'AppError'
  }
}
