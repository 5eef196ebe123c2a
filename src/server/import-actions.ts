'use server'

import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { action, saved, sentenceOf } from '#server/action'
import type { FileCheck } from '#server/file-check'
import { fewProblems, parseFields, readForm } from '#server/form'
import { checkFile, importFile } from '#server/import-file'
import { fileInput } from '#server/import-input'
import { logFault } from '#server/log'
import { getViewer } from '#server/viewer'

/** Looks at a file and says what it would do. Nothing is written, so there is nothing to revalidate. */
export async function checkFileAction(form: FormData): Promise<Result<FileCheck, Problem>> {
  const viewer = await getViewer()
  const fields = readForm(form)
  const input = fields.ok ? parseFields(fileInput, fields.value) : fields
  if (!input.ok) return fewer(input)
  try {
    return fewer(await checkFile(viewer, input.value))
  } catch (error) {
    if (error instanceof AppError) return refuse({ path: '', message: sentenceOf(error) })
    logFault('file check failed', error)
    return refuse({ path: '', message: failed })
  }
}

function fewer<Value>(answer: Result<Value, Problem>): Result<Value, Problem> {
  return answer.ok ? answer : refuse(...fewProblems(answer.reasons))
}

const failed = 'The file could not be looked at. It is still chosen: try again, or reload the page.'

/** Imports a file as it was last looked at. */
export const importFileAction = action(fileInput, async (viewer, input) => {
  const done = await importFile(viewer, input)
  return done.ok ? saved(done.value) : done
})
