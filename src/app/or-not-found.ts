import { notFound, redirect } from 'next/navigation'
import { AppError } from '#common/app-error'
import { logRefusal } from '#server/log-refusal'
import { paths } from '#ui/paths'

/** What is not there and what is not the viewer's look the same from outside, so that no id can be guessed. */
export async function orNotFound<Value>(loading: Promise<Value>): Promise<Value> {
  try {
    return await loading
  } catch (error) {
    if (error instanceof AppError && (error.code === 'notFound' || error.code === 'notAllowed')) {
      logRefusal(error)
      notFound()
    }
    if (error instanceof AppError && error.code === 'noSeason') redirect(paths.noSeason())
    throw error
  }
}
