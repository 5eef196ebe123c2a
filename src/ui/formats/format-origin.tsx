import { andList } from '#common/and-list'
import type { MatchFormat } from '#match/format/match-format'
import { changedWords, sourceText } from '#ui/formats/source-text'

type FormatOriginProps = {
  readonly format: MatchFormat
  /** Parts that the club has changed since it took the format over; null: it wrote the format itself. */
  readonly changed: readonly (keyof MatchFormat)[] | null
  readonly mayChange: boolean
}

/** Who says so, and what the club has made of it. */
export function FormatOrigin({ format, changed, mayChange }: FormatOriginProps) {
  const { source } = format
  const from = source ? sourceText(source) : 'No body is named: it is the club’s own.'
  const own =
    changed && changed.length > 0
      ? ` Changed by the club since it was taken over: ${andList(changedWords(changed))}.`
      : ''
  return (
    <p className="max-w-prose wrap-anywhere">
      {from}
      {own} Your league’s own rules come first: where they say otherwise,{' '}
      {mayChange ? 'change it here.' : 'the head coach changes it here.'}
    </p>
  )
}
