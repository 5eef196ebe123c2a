import type { MatchFormat } from '#match/format/match-format'
import { formatSentences } from '#ui/formats/format-sentences'

/** A format in sentences, and the note to it. */
export function FormatTable({ format }: { readonly format: MatchFormat }) {
  return (
    <>
      <dl className="max-w-prose">
        {formatSentences(format).map(({ about, text }) => (
          <div key={about} className="border-b border-rule py-2 sm:grid sm:grid-cols-[8rem_1fr] sm:gap-x-4">
            <dt className="font-medium text-soft">{about}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {format.note === '' ? null : (
        <p className="mt-2 max-w-prose whitespace-pre-line text-soft">{format.note}</p>
      )}
    </>
  )
}
