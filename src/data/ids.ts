import 'server-only'
import { v7, validate } from 'uuid'

/** A new id. Ids of one process grow with time (RFC 9562, version 7), so rows written together lie together. */
export function newId(): string {
  return v7()
}

/** False for what cannot be an id at all: the text of an address may hold anything, and is then simply not found. */
export function isId(text: string): boolean {
  return validate(text)
}
