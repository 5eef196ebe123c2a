import 'server-only'
import type { Problem } from '#common/problem'

/** What is said where only a sign-in of the last quarter of an hour will do. */
export const signInAgain: Problem = {
  path: '',
  message: 'You signed in some while ago. Sign out, sign in again, and do it within a quarter of an hour.',
}
