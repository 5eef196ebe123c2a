import 'server-only'
import type { core } from 'zod'

/** What is said of an issue that its schema has no words for. Only what no page sends comes to the last of them. */
export function plainIssue(issue: core.$ZodRawIssue): string {
  if (issue.code === 'too_small' && isNumber(issue.origin)) return `must be ${issue.minimum} or more`
  if (issue.code === 'too_big' && isNumber(issue.origin)) return `must be ${issue.maximum} or less`
  if (issue.code === 'too_big' && issue.origin === 'string')
    return `can be ${issue.maximum} letters at most; yours is longer, so say it shorter`
  if (issue.code === 'too_big') return `can hold ${issue.maximum} at most`
  if (issue.code === 'unrecognized_keys')
    return 'holds something that this page does not know; reload the page and send it again'
  return 'is missing or cannot be read; reload the page and send it again'
}

function isNumber(origin: string | undefined): boolean {
  return origin === 'number' || origin === 'int'
}
