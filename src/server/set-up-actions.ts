'use server'

import { notFound } from 'next/navigation'
import { AppError } from '#common/app-error'
import { goTo } from '#server/action'
import { logFault } from '#server/log'
import { openAction } from '#server/open-action'
import { setUpClub } from '#server/set-up'
import { setUpInput } from '#server/set-up-input'
import { openSession } from '#server/sign-in'

/** Founds the club and signs its administrator in. The one door that nobody is signed in for but with the code of the start. */
export const setUp = openAction(setUpInput, async (input) => {
  const founded = await setUpClub(input).catch((error) => {
    throw error instanceof AppError && error.code === 'notFound' ? notFound() : error
  })
  if (!founded.ok) return founded
  const { clubId, personId, loginId } = founded.value
  try {
    await openSession({ loginId, as: { clubId, personId } })
  } catch (error) {
    // The club stands; its administrator can sign in with what was just chosen.
    logFault('first session not opened', error)
    return goTo('/')
  }
  return goTo('/club')
})
