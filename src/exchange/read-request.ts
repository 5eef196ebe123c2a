import type { z } from 'zod'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import { readShape } from '#exchange/shape-problems'

/** A request as it was sent, from parsed JSON: what its numbers mean is looked at where its shape is right. */
export function readRequest<Shape extends z.ZodType>(
  json: unknown,
  asked: {
    readonly shape: Shape
    readonly problemsOf: (request: z.output<Shape>) => readonly Problem[]
  },
): Result<z.output<Shape>, Problem> {
  const { value, problems } = readShape(asked.shape, json, [])
  // Handed on whole: there may be more of them than a call takes.
  if (value === null) return { ok: false, reasons: problems }
  const wrong = asked.problemsOf(value)
  return wrong.length > 0 ? { ok: false, reasons: wrong } : accept(value)
}
