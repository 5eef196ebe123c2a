import { CouldNot } from '#cli/could-not'
import { NotDecided } from '#solver/not-decided'

/** A search that came to no answer in its time is no fault of the program: for `catch`. */
export function orCouldNotDecide(error: unknown): never {
  if (error instanceof NotDecided) throw new CouldNot(`${error.message} Let it take longer, or ask for less.`)
  throw error
}
