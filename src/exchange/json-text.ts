import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { findJsonFault } from '#exchange/json-fault'
import { quote } from '#exchange/json-path'

/** Parses a text as JSON; a byte order mark in front is passed over. Refused with the line and column of the fault. */
export function parseJsonText(source: string): Result<unknown, Problem> {
  const text = source.replace(/^\uFEFF/, '')
  if (text.trim() === '') return refuse({ path: '$', message: 'is empty; JSON would be right' })
  try {
    return accept(JSON.parse(text))
  } catch (error) {
    const fault = findJsonFault(text)
    if (fault === null) throw error
    return refuse({ path: '$', message: sentence(text, fault) })
  }
}

/** JSON as a file of ours has it. */
export function jsonText(json: unknown): string {
  return `${JSON.stringify(json, null, 1)}\n`
}

function sentence(text: string, fault: { readonly offset: number; readonly expected: string }): string {
  const before = text.slice(0, fault.offset).split('\n')
  const column = (before.at(-1)?.length ?? 0) + 1
  const rest = text.slice(fault.offset)
  const found = rest === '' ? 'the text ends' : `${quote(rest.slice(0, 12))} stands`
  return `is not JSON: in line ${before.length}, column ${column}, ${found}; ${fault.expected} would be right`
}
