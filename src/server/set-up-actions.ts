'use server'

import { notFound, redirect, unstable_rethrow } from 'next/navigation'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { sentenceOf } from '#server/action'
import { type FormReply, fewProblems, parseFields, readForm, typedOf } from '#server/form'
import { logFault } from '#server/log'
import { type Founded, setUpClub } from '#server/set-up'
import { setUpInput } from '#server/set-up-input'
import { openSession } from '#server/sign-in'

/** Founds the club and signs its administrator in. The one door that nobody is signed in for but with the code of the start. */
export async function setUp(_previous: FormReply, form: FormData): Promise<FormReply> {
  const result = await run(form)
  if (!result.ok) {
    // The password is typed anew: it is not sent back to lie about in a page.
    const { password: _, ...typed } = typedOf(form)
    return { status: 'refused', problems: fewProblems(result.reasons), typed }
  }
  const { clubId, personId, loginId } = result.value
  try {
    await openSession({ loginId, as: { clubId, personId } })
  } catch (error) {
    // The club stands; its administrator can sign in with what was just chosen.
    logFault('first session not opened', error)
    redirect('/')
  }
  redirect('/club')
}

async function run(form: FormData): Promise<Result<Founded, Problem>> {
  try {
    const fields = readForm(form)
    if (!fields.ok) return fields
    const input = parseFields(setUpInput, fields.value)
    return input.ok ? await setUpClub(input.value) : input
  } catch (error) {
    unstable_rethrow(error)
    if (error instanceof AppError && error.code === 'notFound') notFound()
    return refuse({ path: '', message: sentenceOf(error) })
  }
}
