import { Details } from '#ui/page/details'

/** Taps that were kept and change nothing, each with why. */
export function TapsAside({ sentences }: { readonly sentences: readonly string[] }) {
  return sentences.length === 0 ? null : (
    <Details summary="Taps that change nothing">
      <ul className="list-disc space-y-1 pl-5">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Details>
  )
}
